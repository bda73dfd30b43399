/**
 * Commitments: what a person typed or a device names does not stand in sealed bytes itself, only
 *
 *   { "commitment": lower-case hex of SHA-256(0x02 ‖ salt ‖ JCS(value)) }
 *
 * with 32 random bytes of salt, fresh for every commitment. 0x02 keeps commitments apart from a Merkle tree's leaves
 * (0x00) and interior nodes (0x01). Value and salt are kept in a table that may be erased; whoever holds both can show
 * what was said, and nobody can find it out without the salt.
 */
import { canonicalBytes, type JsonValue, sha256Hex } from "./canonical.ts";

/** What stands in sealed bytes. */
export interface Commitment {
	readonly commitment: string;
}

/** What opens a commitment. */
export interface Opening {
	readonly commitment: string;
	/** 32 bytes, lower-case hex. */
	readonly salt: string;
	readonly value: JsonValue;
}

const COMMITMENT_PREFIX = Uint8Array.of(0x02);

/** The commitment to a value under a salt of 32 bytes, lower-case hex. */
export function commitmentHex(salt: Uint8Array, value: JsonValue): string {
	if (salt.length !== 32) throw new Error("a salt has 32 bytes");
	return sha256Hex(COMMITMENT_PREFIX, salt, canonicalBytes(value));
}

/** Whether an opening fits its commitment. */
export function opens(opening: Opening): boolean {
	return commitmentHex(Buffer.from(opening.salt, "hex"), opening.value) === opening.commitment;
}

/** Makes the commitments of one statement and collects their openings. */
export interface Committer {
	commit(value: JsonValue): Commitment;
	readonly openings: readonly Opening[];
}

/** A committer drawing salts from `randomBytes`. */
export function makeCommitter(randomBytes: (count: number) => Buffer): Committer {
	const openings: Opening[] = [];
	return {
		openings,
		commit(value) {
			const salt = randomBytes(32);
			const commitment = commitmentHex(salt, value);
			openings.push({ commitment, salt: salt.toString("hex"), value });
			return { commitment };
		},
	};
}
