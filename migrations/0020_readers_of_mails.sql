-- In which language a party is written to; a code, so it stands in plain. Null where nobody said.
ALTER TABLE party ADD COLUMN language text CHECK (language IN ('en', 'de', 'fr'));

-- Dates of a claim are told to the owner too.
ALTER TABLE mail_choice ADD COLUMN periods_to_owner boolean NOT NULL DEFAULT true;
