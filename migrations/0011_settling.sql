-- What a claim about a leg starts from: the regime that someone chose, dates, the set of holidays. Working data, changed as
-- more becomes known; codes and dates alone, so nothing here is personal.
CREATE TABLE claim_case (
	consignment_id text PRIMARY KEY REFERENCES consignment,
	-- Shape: contract/leg-claim.ts, legClaimInput.
	plain jsonb NOT NULL,
	version int NOT NULL DEFAULT 1
);

-- Sealed statements of the parties and steps towards a settlement: which order each is about. What it says stands in
-- sealed_entry.
CREATE TABLE stated_position (
	id text PRIMARY KEY,
	order_id text NOT NULL REFERENCES repair_order,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);
CREATE INDEX ON stated_position (order_id);
CREATE TABLE settlement_step (
	id text PRIMARY KEY,
	order_id text NOT NULL REFERENCES repair_order,
	created_at timestamptz NOT NULL DEFAULT clock_timestamp()
);
CREATE INDEX ON settlement_step (order_id);
