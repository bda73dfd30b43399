-- What the shop packs with: boxes, foam sheets, bags. Working material, changed and removed as the shelf changes; an
-- assessment that was sealed holds what it was computed from, so nothing here needs a guard.
CREATE TABLE stock (
	kind text NOT NULL CHECK (kind IN ('boxes', 'foams', 'bags')),
	-- What the shop calls it.
	id text NOT NULL,
	facts jsonb NOT NULL,
	PRIMARY KEY (kind, id)
);
