-- Orders, consignments, drafts, instruments, openings of commitments, exhibits.
-- What is sealed stands in sealed_entry (0001); the tables here are the working material around it. All may be written
-- by the serving role, none holds anything that a sealed statement relies on, except `opening`: the values behind the
-- commitments of sealed statements, which are added and (with erasure, later) removed, never changed.

CREATE TABLE party (
	id text PRIMARY KEY,
	kind text NOT NULL CHECK (kind IN ('consumer', 'business')),
	country text NOT NULL CHECK (country ~ '^[A-Z]{2}$'),
	name text NOT NULL,
	email text,
	address text,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);

CREATE TABLE item (
	id text PRIMARY KEY,
	class text NOT NULL,
	maker text NOT NULL,
	model text NOT NULL,
	serial_number text,
	-- Facts that only the packaging calculation and the value need; shape: contract/orders.ts, itemInput.
	details jsonb NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);

CREATE TABLE repair_order (
	id text PRIMARY KEY,
	repairer_id text NOT NULL REFERENCES party,
	owner_id text NOT NULL REFERENCES party,
	item_id text NOT NULL REFERENCES item,
	contract_kind text NOT NULL CHECK (contract_kind IN ('repair', 'exchange', 'warranty-return')),
	-- Agreed work, warranty terms, who contracts with the carrier; shape: contract/orders.ts, orderTerms.
	terms jsonb NOT NULL,
	-- Milliseconds, so that a cursor written as RFC 3339 text compares exactly.
	created_at timestamptz NOT NULL DEFAULT date_trunc('milliseconds', clock_timestamp())
);

CREATE TABLE consignment (
	id text PRIMARY KEY,
	order_id text NOT NULL REFERENCES repair_order,
	leg int NOT NULL CHECK (leg >= 1),
	consignor_id text NOT NULL REFERENCES party,
	consignee_id text NOT NULL REFERENCES party,
	-- Carrier, mode, declared value, times, manner; shape: contract/orders.ts, consignmentFacts.
	facts jsonb NOT NULL,
	version int NOT NULL DEFAULT 1,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	UNIQUE (order_id, leg)
);

CREATE TABLE state_record (
	id text PRIMARY KEY,
	order_id text NOT NULL REFERENCES repair_order,
	-- Null for a bench record, which belongs to no leg.
	consignment_id text REFERENCES consignment,
	stage text NOT NULL CHECK (stage IN ('departure', 'arrival', 'bench')),
	depth text NOT NULL CHECK (depth IN ('short', 'full')),
	provenance text NOT NULL CHECK (provenance IN ('recorded-by-holder', 'reported-to')),
	holder_id text NOT NULL REFERENCES party,
	amends text REFERENCES state_record,
	-- Derived from the log (record-sealed, record-discarded) and kept here so that lists are quick.
	state text NOT NULL DEFAULT 'draft' CHECK (state IN ('draft', 'sealed', 'discarded')),
	-- The draft as entered; emptied when it is sealed, since the sealed statement then is the only record.
	content jsonb,
	version int NOT NULL DEFAULT 1,
	opened_by text NOT NULL,
	opened_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	CHECK ((stage = 'bench') = (consignment_id IS NULL)),
	CHECK ((state = 'draft') = (content IS NOT NULL))
);
CREATE INDEX ON state_record (order_id);
CREATE INDEX ON state_record (consignment_id);

-- The value and salt behind a commitment. Deleting a row erases what it says; the commitment in the log still proves
-- that something was said then.
CREATE TABLE opening (
	commitment text PRIMARY KEY CHECK (commitment ~ '^[0-9a-f]{64}$'),
	salt text NOT NULL CHECK (salt ~ '^[0-9a-f]{64}$'),
	-- JSON text of the value, canonical, exactly as hashed.
	value_json text NOT NULL,
	subject text NOT NULL
);
CREATE INDEX ON opening (subject);

CREATE TABLE instrument (
	id text PRIMARY KEY,
	label text NOT NULL,
	-- Accuracy, range, calibration; shape: contract/benches.ts, instrumentFacts.
	facts jsonb NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	retired_at timestamptz
);

CREATE TABLE bench (
	id text PRIMARY KEY,
	label text NOT NULL,
	description text NOT NULL DEFAULT '',
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	retired_at timestamptz
);

-- A file kept as evidence; the bytes lie in the exhibit folder under their SHA-256.
CREATE TABLE exhibit (
	sha256 text PRIMARY KEY CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	size_bytes bigint NOT NULL CHECK (size_bytes > 0),
	media_type text NOT NULL,
	stored_at timestamptz NOT NULL DEFAULT clock_timestamp()
);
-- Which record an exhibit was brought to, and under which name: decides who may fetch it.
CREATE TABLE exhibit_use (
	sha256 text NOT NULL REFERENCES exhibit,
	record_id text NOT NULL REFERENCES state_record,
	order_id text NOT NULL REFERENCES repair_order,
	file_name text NOT NULL,
	brought_by text NOT NULL,
	brought_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (sha256, record_id)
);
CREATE INDEX ON exhibit_use (order_id);

-- A creation that may be asked twice: key and request hash lead to what it made; the answer itself is not kept.
CREATE TABLE idempotent_creation (
	caller_id text NOT NULL,
	key text NOT NULL,
	request_sha256 text NOT NULL CHECK (request_sha256 ~ '^[0-9a-f]{64}$'),
	resource_id text NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (caller_id, key)
);

-- Sealed packaging assessments: which leg each is about. What it says stands in sealed_entry.
CREATE TABLE packaging_assessment (
	id text PRIMARY KEY,
	order_id text NOT NULL REFERENCES repair_order,
	consignment_id text NOT NULL REFERENCES consignment,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);
CREATE INDEX ON packaging_assessment (consignment_id);
