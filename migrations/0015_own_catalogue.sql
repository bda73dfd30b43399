-- The shop's own checks and item classes, whole, at each version. A version is never changed: a record names the one that
-- it was opened with, so a changed definition changes no record that is there.
CREATE TABLE own_catalogue (
	version int PRIMARY KEY,
	kept_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	facts jsonb NOT NULL
);
REVOKE UPDATE, DELETE ON own_catalogue FROM handover_service;

ALTER TABLE state_record ADD COLUMN own_catalogue_version int REFERENCES own_catalogue;
