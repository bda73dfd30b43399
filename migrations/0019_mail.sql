-- Mails to the parties of an order. A row says what a mail is about and holds neither its text nor an address, a token or a
-- code in plain: it is composed when it is sent, and the secret of a link is made anew then.
CREATE TABLE mail (
	-- Also in the mail's Message-ID, so that a second copy of the same mail can be told.
	id text PRIMARY KEY,
	kind text NOT NULL CHECK (kind IN ('link', 'code', 'reminder', 'receipt', 'sealed', 'period')),
	order_id text NOT NULL REFERENCES repair_order,
	-- Whose mail it is, and under whose key `personal` is: an address of its own, where one was typed, and the server's answer.
	party_id text NOT NULL REFERENCES party,
	personal bytea NOT NULL,
	-- Link, record, position or leg that the mail is about; of a leg's dates the rule.
	subject text NOT NULL,
	rule_id text,
	language text NOT NULL,
	asked_by text NOT NULL,
	asked_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	-- Of a mail that nobody asks for each time: it is queued once and never again.
	once_key text UNIQUE,
	-- `sending` is on disk before a connection is opened. Who finds it after its time makes it `unclear`, and does not send.
	state text NOT NULL DEFAULT 'queued'
		CHECK (state IN ('queued', 'sending', 'sent', 'refused', 'given-up', 'unclear', 'dropped')),
	-- Why it was dropped (operations/mail/mail-facts.ts).
	reason text,
	attempts int NOT NULL DEFAULT 0,
	next_try_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	sending_until timestamptz,
	ended_at timestamptz,
	CHECK ((state = 'sending') = (sending_until IS NOT NULL)),
	CHECK ((state IN ('queued', 'sending')) = (ended_at IS NULL)),
	CHECK ((state = 'dropped') = (reason IS NOT NULL))
);
CREATE INDEX ON mail (order_id);
CREATE INDEX ON mail (next_try_at) WHERE state = 'queued';
CREATE INDEX ON mail (sending_until) WHERE state = 'sending';

-- What goes by mail without being asked for each time; without a row, everything.
CREATE TABLE mail_choice (
	order_id text PRIMARY KEY REFERENCES repair_order,
	to_owner boolean NOT NULL,
	to_repairer boolean NOT NULL,
	periods boolean NOT NULL
);

-- How many entries of the log were looked through for what the other side should hear of.
CREATE TABLE mail_progress (
	only_row boolean PRIMARY KEY DEFAULT true CHECK (only_row),
	log_size bigint NOT NULL
);
