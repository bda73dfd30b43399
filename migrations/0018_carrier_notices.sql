-- Notices to carriers as they were sent. Never changed but for the day of receipt, which is noted once.
CREATE TABLE carrier_notice (
	id text PRIMARY KEY,
	consignment_id text NOT NULL REFERENCES consignment,
	order_id text NOT NULL REFERENCES repair_order,
	party_id text NOT NULL REFERENCES party,
	-- Language, day and way of sending.
	plain jsonb NOT NULL,
	-- The text as sent, and what shows that it was; under the key of the order's owner.
	personal bytea NOT NULL,
	-- Null until it is known.
	received_on date,
	-- What shows the receipt; null with it, or where nothing does.
	receipt_personal bytea,
	noted_by text NOT NULL,
	noted_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	CHECK (received_on IS NOT NULL OR receipt_personal IS NULL)
);
CREATE INDEX ON carrier_notice (consignment_id);
