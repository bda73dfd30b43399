-- Pictures among the exhibits: what a file says of itself, the copies that are made of it, what its taker lets others
-- have, and the codes that were shown to be written beside a board. Copies are files of the exhibit store under the same
-- party's key.
CREATE TABLE exhibit_picture (
	-- Of the file as it was brought.
	sha256 text NOT NULL,
	party_id text NOT NULL,
	-- As shown, turned upright; null where the picture cannot be shown, and why.
	width integer CHECK (width > 0),
	height integer CHECK (height > 0),
	refusal text CHECK (refusal IN ('damaged', 'too-many-pixels', 'not-shown', 'too-much-work')),
	-- Time and device as the file claims them, and whether it holds a place.
	personal bytea NOT NULL,
	read_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (sha256, party_id),
	FOREIGN KEY (sha256, party_id) REFERENCES exhibit,
	CHECK ((refusal IS NULL) = (width IS NOT NULL) AND (width IS NULL) = (height IS NULL))
);

CREATE TABLE exhibit_derivative (
	original_sha256 text NOT NULL,
	party_id text NOT NULL,
	kind text NOT NULL CHECK (kind IN ('without-metadata', 'blacked-out', 'thumbnail', 'carrier')),
	-- What it was made of: the original, or of thumbnails and the carrier's sizes the copy that they show.
	of_sha256 text NOT NULL CHECK (of_sha256 ~ '^[0-9a-f]{64}$'),
	sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	-- Of the encrypted file, which lies in the exhibit folder under this name; null once the party is erased.
	stored_sha256 text UNIQUE CHECK (stored_sha256 ~ '^[0-9a-f]{64}$'),
	size_bytes bigint NOT NULL CHECK (size_bytes > 0),
	-- As archives ask for it.
	crc32 bigint NOT NULL,
	made_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (original_sha256, party_id, kind, of_sha256, sha256),
	FOREIGN KEY (original_sha256, party_id) REFERENCES exhibit
);

-- What a file's taker lets others have: dated choices, added and never changed; the newest counts.
CREATE TABLE exhibit_hand_out (
	order_id text NOT NULL REFERENCES repair_order,
	sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	-- `shop`, or the id of the party whose link brought the file.
	taker text NOT NULL,
	number integer NOT NULL CHECK (number > 0),
	choice text NOT NULL CHECK (choice IN ('without-metadata', 'blacked-out', 'original')),
	copy_sha256 text CHECK (copy_sha256 ~ '^[0-9a-f]{64}$'),
	chosen_by text NOT NULL,
	chosen_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (order_id, sha256, taker, number),
	CHECK ((choice = 'blacked-out') = (copy_sha256 IS NOT NULL))
);

-- Codes that were shown for a record's photos: made from the checkpoint of a size, so a photo with the code is not older.
CREATE TABLE photo_code (
	record_id text NOT NULL REFERENCES state_record,
	tree_size bigint NOT NULL CHECK (tree_size > 0),
	code text NOT NULL CHECK (code ~ '^[0-9A-Z]{8}$'),
	other_party_id text NOT NULL REFERENCES party,
	shown_at timestamptz NOT NULL DEFAULT clock_timestamp(),
	PRIMARY KEY (record_id, tree_size)
);

-- What was chosen and shown is added to, by the serving role too.
REVOKE UPDATE, DELETE ON exhibit_hand_out, photo_code FROM handover_service;
