-- What recorders noted on the way. The file is an exhibit of the order's owner; kept beside it are its impacts with their
-- traces, and pyramids of the whole trip: numbers and times, which are about no person.
CREATE TABLE transit_recording (
	id text PRIMARY KEY,
	consignment_id text NOT NULL REFERENCES consignment,
	order_id text NOT NULL REFERENCES repair_order,
	sha256 text NOT NULL,
	party_id text NOT NULL,
	-- The file's name.
	personal bytea NOT NULL,
	brought_by text NOT NULL,
	brought_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	-- How it was read, as a person confirmed it, and what was found; both null until then.
	reading jsonb,
	trip jsonb,
	-- Levels of pyramids as doubles, little-endian; `trip` says which begin where.
	pyramids bytea,
	CHECK ((reading IS NULL) = (trip IS NULL) AND (reading IS NULL) = (pyramids IS NULL)),
	FOREIGN KEY (sha256, party_id) REFERENCES exhibit
);
CREATE INDEX ON transit_recording (consignment_id);

CREATE TABLE transit_event (
	recording_id text NOT NULL REFERENCES transit_recording,
	-- In order of time, from 1.
	number integer NOT NULL CHECK (number > 0),
	facts jsonb NOT NULL,
	-- Samples of one axis after the other as singles, little-endian, in gn.
	trace bytea NOT NULL,
	PRIMARY KEY (recording_id, number)
);

-- How files with a header line were read: their columns and units, by the line's SHA-256, since a line may name a device.
CREATE TABLE recorder_mapping (
	header_sha256 text PRIMARY KEY CHECK (header_sha256 ~ '^[0-9a-f]{64}$'),
	mapping jsonb NOT NULL
);
