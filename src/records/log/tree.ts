/**
 * The log's Merkle tree, RFC 9162 section 2.1: a leaf is SHA-256(0x00 ‖ entry bytes), an interior node is
 * SHA-256(0x01 ‖ left ‖ right). Kept are the complete subtrees: node (level, index) covers the leaves from index·2^level
 * up to (index+1)·2^level. Every other hash of the tree is made from these, so a proof costs the logarithm of the log.
 * Hashes are lower-case hex.
 */
import { sha256Hex } from "../canonical.ts";

/** A complete subtree: 2^level leaves, the index-th of its level. */
export interface Subtree {
	readonly level: number;
	readonly index: number;
}

export interface HashedSubtree extends Subtree {
	readonly sha256: string;
}

const INTERIOR_PREFIX = Uint8Array.of(0x01);

/** Root of the tree without leaves: SHA-256 of nothing. */
export const EMPTY_ROOT = sha256Hex();

/** The hash above two hashes. */
export function interiorHash(left: string, right: string): string {
	return sha256Hex(INTERIOR_PREFIX, Buffer.from(left, "hex"), Buffer.from(right, "hex"));
}

/**
 * The complete subtrees that cover the leaves from `start` up to, not including, `end`, from left to right. `start` must
 * be 0 or a multiple of the largest of them, as it is for every range that RFC 9162 speaks of.
 */
export function subtreesOf(start: number, end: number): Subtree[] {
	const found: Subtree[] = [];
	for (let from = start; from < end; ) {
		const level = Math.floor(Math.log2(end - from));
		const width = 2 ** level;
		found.push({ level, index: from / width });
		from += width;
	}
	return found;
}

/** The hash over the leaves of a range, from its complete subtrees' hashes from left to right. */
export function joinedHash(hashes: readonly string[]): string {
	if (hashes.length === 0) return EMPTY_ROOT;
	return hashes.reduceRight((right, left) => interiorHash(left, right));
}

/**
 * What one more leaf makes whole: the new complete subtrees, the leaf first, and the root of the larger tree.
 * @param size leaves so far
 * @param peaks hashes of `subtreesOf(0, size)`
 */
export function grow(
	size: number,
	peaks: readonly string[],
	leafSha256: string,
): { readonly made: readonly HashedSubtree[]; readonly root: string } {
	const left = [...peaks];
	const made: HashedSubtree[] = [{ level: 0, index: size, sha256: leafSha256 }];
	let newest = made[0] as HashedSubtree;
	while (newest.index % 2 === 1) {
		const sibling = left.pop();
		if (sibling === undefined) throw new Error(`a tree of ${size} leaves has more complete subtrees than were given`);
		newest = {
			level: newest.level + 1,
			index: (newest.index - 1) / 2,
			sha256: interiorHash(sibling, newest.sha256),
		};
		made.push(newest);
	}
	return { made, root: joinedHash([...left, newest.sha256]) };
}
