-- Time stamps by an authority that the shop chose (RFC 3161), each over one checkpoint's note. Working material: a row
-- waits, is tried, and is filled. A token proves itself, so nothing here needs a guard.
CREATE TABLE time_stamp (
	size bigint PRIMARY KEY REFERENCES checkpoint,
	-- Of the note's exact UTF-8 bytes: what the authority is asked to stamp.
	note_sha256 text NOT NULL CHECK (note_sha256 ~ '^[0-9a-f]{64}$'),
	-- The TimeStampToken, DER, exactly as it came; null while it is waited for.
	token bytea CHECK (length(token) > 0),
	-- The time that the authority states.
	gen_time timestamptz,
	verified_at timestamptz,
	attempts int NOT NULL DEFAULT 0,
	next_try_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	-- Code of the last failure (operations/time-stamps/stamp-refusal.ts).
	last_error text,
	CHECK ((token IS NULL) = (gen_time IS NULL) AND (token IS NULL) = (verified_at IS NULL))
);
-- The queue is one row long: only the newest checkpoint is worth a stamp, since it covers all before it.
CREATE UNIQUE INDEX one_waiting ON time_stamp ((true)) WHERE token IS NULL;
