-- Codes, numbers and times of an order stand beside what is encrypted, not inside: an erasure then needs no key to keep
-- them, also where an older database comes back beside a key folder that the key has left already.
DO $$ BEGIN
	IF EXISTS (SELECT FROM party) THEN
		RAISE EXCEPTION 'this database was filled by a version that kept personal data in another form: go on with that version, or begin with an empty database';
	END IF;
END $$;

ALTER TABLE item ADD COLUMN plain jsonb NOT NULL;
ALTER TABLE repair_order ADD COLUMN plain jsonb NOT NULL;
ALTER TABLE consignment ADD COLUMN plain jsonb NOT NULL;
