-- The log as a Merkle tree (RFC 9162) with signed checkpoints. Forms: records/log/tree.ts, records/log/checkpoint.ts.

-- Hashes of complete subtrees, level 1 and up; level 0 is sealed_entry.leaf_sha256. Can be made again from the leaves.
CREATE TABLE tree_node (
	level smallint NOT NULL CHECK (level BETWEEN 1 AND 62),
	index bigint NOT NULL CHECK (index >= 0),
	sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
	PRIMARY KEY (level, index)
);
SELECT guard_sealed_table('tree_node');

-- Public halves of the keys that sign; the private ones lie in the key folder, outside the database.
CREATE TABLE log_key (
	id text PRIMARY KEY CHECK (id ~ '^[0-9a-f]{8}$'),
	origin text NOT NULL,
	public_key text NOT NULL UNIQUE CHECK (public_key ~ '^[0-9a-f]{64}$'),
	-- The key signs checkpoints of this size and larger ones, until a newer key does.
	from_size bigint NOT NULL UNIQUE
);
SELECT guard_sealed_table('log_key');

-- One per entry: the signed note over the tree that ends with it. Entries older than this table share the first.
CREATE TABLE checkpoint (
	size bigint PRIMARY KEY CHECK (size > 0),
	note text NOT NULL,
	key_id text NOT NULL REFERENCES log_key
);
SELECT guard_sealed_table('checkpoint');
