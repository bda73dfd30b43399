-- The log. Sealed entries are added and never changed: the serving role may SELECT and INSERT only, and triggers that
-- fire always (also under session_replication_role = replica) refuse UPDATE, DELETE and TRUNCATE for everyone. Triggers
-- stop accidents; malice is found by verification.
--
-- For later migrations: a new table may be read and written by the serving role (default privileges below). A table
-- that holds sealed bytes must also call  SELECT guard_sealed_table('its_name');

DO $$ BEGIN
	IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'handover_service') THEN
		RAISE EXCEPTION 'the serving role handover_service does not exist; create it before migrating';
	END IF;
END $$;

GRANT USAGE ON SCHEMA public TO handover_service;
ALTER DEFAULT PRIVILEGES IN SCHEMA public GRANT SELECT, INSERT, UPDATE, DELETE ON TABLES TO handover_service;

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
	RAISE EXCEPTION 'table % holds sealed records: % is refused', TG_TABLE_NAME, TG_OP
		USING ERRCODE = 'insufficient_privilege', HINT = 'Amend by a new record that refers to the old one.';
END $$;

CREATE FUNCTION guard_sealed_table(guarded text) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
	EXECUTE format('REVOKE UPDATE, DELETE, TRUNCATE, REFERENCES, TRIGGER ON %I FROM handover_service', guarded);
	EXECUTE format('CREATE TRIGGER sealed_rows BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()', guarded);
	EXECUTE format('CREATE TRIGGER sealed_table BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', guarded);
	EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER sealed_rows', guarded);
	EXECUTE format('ALTER TABLE %I ENABLE ALWAYS TRIGGER sealed_table', guarded);
	EXECUTE format('COMMENT ON TABLE %I IS %L', guarded, 'sealed: rows are added and never changed');
END $$;
REVOKE ALL ON FUNCTION guard_sealed_table(text) FROM PUBLIC;

CREATE TABLE sealed_entry (
	index bigint PRIMARY KEY CHECK (index >= 0),
	-- Exact bytes of the entry and of the statement that it seals (records/entry.ts, records/record-statement.ts).
	entry_bytes bytea NOT NULL CHECK (length(entry_bytes) > 0),
	statement_bytes bytea CHECK (length(statement_bytes) > 0),
	leaf_sha256 text NOT NULL UNIQUE CHECK (leaf_sha256 = encode(sha256('\x00'::bytea || entry_bytes), 'hex')),
	statement_sha256 text CHECK (statement_sha256 = encode(sha256(statement_bytes), 'hex')),
	sealed_at timestamptz NOT NULL,
	CHECK ((statement_bytes IS NULL) = (statement_sha256 IS NULL))
);
SELECT guard_sealed_table('sealed_entry');

-- The order has no gap and time never runs back. The writer holds the log's lock, so the newest row is the one before.
CREATE FUNCTION refuse_gap() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
	newest record;
BEGIN
	SELECT s.index, s.sealed_at INTO newest FROM sealed_entry s ORDER BY s.index DESC LIMIT 1;
	IF NEW.index <> coalesce(newest.index + 1, 0) THEN
		RAISE EXCEPTION 'log entry % would leave a gap after %', NEW.index, newest.index;
	END IF;
	IF newest.sealed_at > NEW.sealed_at THEN
		RAISE EXCEPTION 'log entry % would be older than the one before', NEW.index;
	END IF;
	RETURN NEW;
END $$;
CREATE TRIGGER gap_free BEFORE INSERT ON sealed_entry FOR EACH ROW EXECUTE FUNCTION refuse_gap();
ALTER TABLE sealed_entry ENABLE ALWAYS TRIGGER gap_free;

-- What the entries say, for queries. Can be dropped and rebuilt from entry_bytes.
CREATE TABLE entry_projection (
	index bigint PRIMARY KEY REFERENCES sealed_entry,
	kind text NOT NULL,
	subject text NOT NULL,
	by_id text NOT NULL
);
CREATE INDEX ON entry_projection (subject, kind);
