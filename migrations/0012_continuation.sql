-- A short code by which a draft goes on at another device: good once, for some minutes.
CREATE TABLE continuation (
	code_sha256 text PRIMARY KEY,
	link_id text NOT NULL REFERENCES link,
	expires_at timestamptz NOT NULL
);
