-- Accounts of the shop, sessions, API tokens, links. Whatever opens something is stored as a hash only.

CREATE TABLE account (
	id text PRIMARY KEY,
	name text NOT NULL UNIQUE,
	passphrase_hash text NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);

CREATE TABLE set_up_link (
	token_sha256 text PRIMARY KEY,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);

CREATE TABLE session (
	token_sha256 text PRIMARY KEY,
	account_id text NOT NULL REFERENCES account,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	expires_at timestamptz NOT NULL
);

CREATE TABLE api_token (
	id text PRIMARY KEY,
	token_sha256 text NOT NULL UNIQUE,
	account_id text NOT NULL REFERENCES account,
	label text NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	revoked_at timestamptz
);

CREATE TABLE link (
	id text PRIMARY KEY,
	token_sha256 text NOT NULL UNIQUE,
	code_hash text NOT NULL,
	scope text NOT NULL CHECK (scope IN ('record', 'settle', 'reader')),
	order_id text NOT NULL REFERENCES repair_order,
	record_id text REFERENCES state_record,
	party_id text REFERENCES party,
	created_by text NOT NULL,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	expires_at timestamptz NOT NULL,
	revoked_at timestamptz,
	first_used_at timestamptz,
	CHECK ((scope = 'record') = (record_id IS NOT NULL))
);
CREATE INDEX ON link (order_id);

CREATE TABLE link_session (
	token_sha256 text PRIMARY KEY,
	link_id text NOT NULL REFERENCES link,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	expires_at timestamptz NOT NULL
);

-- Wrong tries of a passphrase or a code, by what was tried; shared by all instances.
CREATE TABLE throttle (
	key text PRIMARY KEY,
	failures int NOT NULL,
	locked_until timestamptz
);
