-- Personal data is encrypted with a key per party, a file outside the database: a deleted row stays in the heap and in the
-- WAL, a deleted key does not. Columns `personal` hold `database/vault.ts` bytes; after an erasure what is left, in plain.
DO $$ BEGIN
	IF EXISTS (SELECT FROM party) THEN
		RAISE EXCEPTION 'this database was filled by a version that kept personal data in plain: go on with that version, or begin with an empty database';
	END IF;
END $$;

ALTER TABLE party DROP COLUMN name, DROP COLUMN email, DROP COLUMN address,
	ADD COLUMN personal bytea NOT NULL,
	ADD COLUMN erased_at timestamptz;
ALTER TABLE item DROP COLUMN maker, DROP COLUMN model, DROP COLUMN serial_number, DROP COLUMN details,
	ADD COLUMN owner_id text NOT NULL REFERENCES party,
	ADD COLUMN personal bytea NOT NULL;
-- Under the owner's key, as everything about an order.
ALTER TABLE repair_order DROP COLUMN terms, ADD COLUMN personal bytea NOT NULL;
ALTER TABLE consignment DROP COLUMN facts, ADD COLUMN personal bytea NOT NULL;
ALTER TABLE state_record DROP COLUMN content, ADD COLUMN personal bytea,
	ADD CHECK ((state = 'draft') = (personal IS NOT NULL));
ALTER TABLE opening DROP COLUMN salt, DROP COLUMN value_json,
	ADD COLUMN party_id text NOT NULL REFERENCES party,
	ADD COLUMN personal bytea NOT NULL;
CREATE INDEX ON opening (party_id);

-- The same file may be brought to orders of two owners: each owner's copy is under the owner's key.
DROP TABLE exhibit_use;
DROP TABLE exhibit;
CREATE TABLE exhibit (
	-- Of the file as it was brought; statements name it.
	sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	party_id text NOT NULL REFERENCES party,
	-- Of the encrypted file, which lies in the exhibit folder under this name; null once the party is erased.
	stored_sha256 text UNIQUE CHECK (stored_sha256 ~ '^[0-9a-f]{64}$'),
	size_bytes bigint NOT NULL CHECK (size_bytes > 0),
	media_type text NOT NULL,
	stored_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (sha256, party_id)
);
-- Which record an exhibit was brought to, and under which name: decides who may fetch it.
CREATE TABLE exhibit_use (
	sha256 text NOT NULL,
	party_id text NOT NULL,
	record_id text NOT NULL REFERENCES state_record,
	order_id text NOT NULL REFERENCES repair_order,
	personal bytea NOT NULL,
	brought_by text NOT NULL,
	brought_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (sha256, record_id),
	FOREIGN KEY (sha256, party_id) REFERENCES exhibit
);
CREATE INDEX ON exhibit_use (order_id);
GRANT SELECT, INSERT, UPDATE, DELETE ON exhibit, exhibit_use TO handover_service;
