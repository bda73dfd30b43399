/** The Merkle tree of RFC 9162, section 2.1.1, leaf by leaf, for checking a whole log against the roots it has signed. */
import { interiorHash, sha256Of } from "./hashes.ts";

/** A complete subtree: 2^level leaves, the index-th of its level. */
export interface CompleteSubtree {
	readonly level: number;
	readonly index: number;
	readonly sha256: string;
}

export interface GrowingTree {
	/** Leaves so far. */
	readonly size: number;
	/** The root over them. */
	root(): string;
	/** Adds a leaf's hash and gives the subtrees above it that this made complete, from the leaf upward. */
	add(leafSha256: string): CompleteSubtree[];
}

export function growingTree(): GrowingTree {
	/** The complete subtrees that cover all leaves, from left to right, each smaller than the one before. */
	const peaks: CompleteSubtree[] = [];
	let size = 0;
	return {
		get size() {
			return size;
		},
		root() {
			const [last, ...before] = peaks.map(({ sha256 }) => sha256).reverse();
			return last === undefined ? sha256Of() : before.reduce((right, left) => interiorHash(left, right), last);
		},
		add(leafSha256) {
			let newest: CompleteSubtree = { level: 0, index: size, sha256: leafSha256 };
			size += 1;
			const made: CompleteSubtree[] = [];
			for (let left = peaks.at(-1); left?.level === newest.level; left = peaks.at(-1)) {
				peaks.pop();
				const sha256 = interiorHash(left.sha256, newest.sha256);
				newest = { level: newest.level + 1, index: left.index / 2, sha256 };
				made.push(newest);
			}
			peaks.push(newest);
			return made;
		},
	};
}
