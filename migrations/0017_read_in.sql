-- Orders that were read in from a dossier. What another log sealed keeps its place, proof and key of that log: nothing is
-- numbered or sealed anew, and nothing is added to it here. Personal texts lie in `opening`, under the owner's key.
CREATE TABLE read_in_log (
	order_id text PRIMARY KEY REFERENCES repair_order,
	-- Name of the log, entries of its tree, and its signed note, exactly as it was.
	origin text NOT NULL,
	size bigint NOT NULL CHECK (size > 0),
	checkpoint text NOT NULL,
	-- As in a receipt (records/receipt.ts): keys, earlier checkpoints and time stamps with their proofs.
	keys jsonb NOT NULL,
	earlier jsonb NOT NULL,
	time_stamps jsonb NOT NULL,
	-- Of the file that was read.
	dossier_sha256 text NOT NULL CHECK (dossier_sha256 ~ '^[0-9a-f]{64}$'),
	read_in_at timestamptz NOT NULL DEFAULT clock_timestamp()
);
SELECT guard_sealed_table('read_in_log');

CREATE TABLE read_in_entry (
	order_id text NOT NULL REFERENCES read_in_log,
	-- In the log that sealed it.
	index bigint NOT NULL CHECK (index >= 0),
	entry_bytes bytea NOT NULL CHECK (length(entry_bytes) > 0),
	statement_bytes bytea CHECK (length(statement_bytes) > 0),
	leaf_sha256 text NOT NULL CHECK (leaf_sha256 = encode(sha256('\x00'::bytea || entry_bytes), 'hex')),
	statement_sha256 text CHECK (statement_sha256 = encode(sha256(statement_bytes), 'hex')),
	-- Inclusion proof in the checkpoint's tree, from the leaf upward.
	proof text[] NOT NULL,
	-- What the bytes say, for queries.
	kind text NOT NULL,
	subject text NOT NULL,
	by_id text NOT NULL,
	sealed_at timestamptz NOT NULL,
	PRIMARY KEY (order_id, index),
	CHECK ((statement_bytes IS NULL) = (statement_sha256 IS NULL))
);
SELECT guard_sealed_table('read_in_entry');
