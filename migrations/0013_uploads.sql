-- Files that are brought piece by piece, and go on after a lost network where they were.
CREATE TABLE exhibit_upload (
	id text PRIMARY KEY,
	-- Owner of the order, under whose key the file is.
	party_id text NOT NULL REFERENCES party,
	order_id text NOT NULL REFERENCES repair_order,
	-- What it is brought to: a record, or a leg's recordings.
	record_id text REFERENCES state_record,
	consignment_id text REFERENCES consignment,
	size_bytes bigint NOT NULL CHECK (size_bytes > 0),
	-- What is on disk and acknowledged; the bytes behind the last whole segment stand in `tail`, under the party's key.
	offset_bytes bigint NOT NULL DEFAULT 0 CHECK (offset_bytes BETWEEN 0 AND size_bytes),
	tail bytea NOT NULL,
	-- The file's name and its own key.
	personal bytea NOT NULL,
	brought_by text NOT NULL,
	expires_at timestamptz NOT NULL,
	-- Of the whole file, noted before it gets its place in the store.
	sha256 text CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	stored_sha256 text CHECK (stored_sha256 ~ '^[0-9a-f]{64}$'),
	crc32 bigint,
	media_type text,
	-- Set with the exhibit's own rows.
	finished_at timestamptz,
	recording_id text REFERENCES transit_recording,
	CHECK ((record_id IS NULL) <> (consignment_id IS NULL)),
	CHECK ((sha256 IS NULL) = (stored_sha256 IS NULL) AND (sha256 IS NULL) = (crc32 IS NULL) AND (sha256 IS NULL) = (media_type IS NULL)),
	CHECK (finished_at IS NULL OR sha256 IS NOT NULL)
);
CREATE INDEX ON exhibit_upload (order_id);
CREATE INDEX ON transit_recording (order_id);

-- CRC-32 of the content, as archives ask for it; null in rows of before, which are read for it once.
ALTER TABLE exhibit ADD COLUMN crc32 bigint;

-- A long recording that is being read, or could not be: how far, and when that was last said.
CREATE TABLE recording_read (
	recording_id text PRIMARY KEY REFERENCES transit_recording,
	reading jsonb NOT NULL,
	bytes_read bigint NOT NULL DEFAULT 0,
	heard_at timestamptz NOT NULL,
	-- Code, members and facts of the fault that ended it; null while it is read.
	refusal jsonb
);
