/**
 * Checks proofs about a Merkle tree, RFC 9162 sections 2.1.3.2 and 2.1.4.2. Sizes and indexes are whole numbers up to
 * 2^53 − 1, so halves are taken by division, not by bits.
 */
import { interiorHash, sha256Of } from "./hashes.ts";

const EMPTY_ROOT = sha256Of();

/** The root that a leaf at `index` in a tree of `size` leaves has by its proof; null where the proof cannot be one. */
export function rootByInclusion(leaf: string, index: number, size: number, proof: readonly string[]): string | null {
	if (!(index >= 0 && index < size)) return null;
	let first = index;
	let last = size - 1;
	let root = leaf;
	for (const hash of proof) {
		if (last === 0) return null;
		if (isOdd(first) || first === last) {
			root = interiorHash(hash, root);
			while (!isOdd(first) && first !== 0) {
				first = half(first);
				last = half(last);
			}
		} else {
			root = interiorHash(root, hash);
		}
		first = half(first);
		last = half(last);
	}
	return last === 0 ? root : null;
}

export interface TreeHead {
	readonly size: number;
	readonly root: string;
}

/** Whether the smaller tree is the beginning of the larger one, by the proof. */
export function isConsistent(smaller: TreeHead, larger: TreeHead, proof: readonly string[]): boolean {
	if (!(smaller.size <= larger.size)) return false;
	if (smaller.size === larger.size) return proof.length === 0 && smaller.root === larger.root;
	if (smaller.size === 0) return proof.length === 0 && smaller.root === EMPTY_ROOT;
	let first = smaller.size - 1;
	let last = larger.size - 1;
	while (isOdd(first)) {
		first = half(first);
		last = half(last);
	}
	// Where the smaller tree is complete, its root is not repeated in the proof.
	const hashes = first === 0 ? [smaller.root, ...proof] : proof;
	const [start, ...rest] = hashes;
	if (start === undefined) return false;
	let smallerRoot = start;
	let largerRoot = start;
	for (const hash of rest) {
		if (last === 0) return false;
		if (isOdd(first) || first === last) {
			smallerRoot = interiorHash(hash, smallerRoot);
			largerRoot = interiorHash(hash, largerRoot);
			while (!isOdd(first) && first !== 0) {
				first = half(first);
				last = half(last);
			}
		} else {
			largerRoot = interiorHash(largerRoot, hash);
		}
		first = half(first);
		last = half(last);
	}
	return last === 0 && smallerRoot === smaller.root && largerRoot === larger.root;
}

const isOdd = (value: number) => value % 2 === 1;
const half = (value: number) => Math.floor(value / 2);
