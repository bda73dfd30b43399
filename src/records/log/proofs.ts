/**
 * Proofs about the log's tree, RFC 9162 section 2.1: that an entry stands in it, and that a smaller tree is the beginning
 * of a larger one. A proof is a list of hashes, each over a range of leaves; here the ranges are found, and the hashes
 * made from the complete subtrees that the log keeps.
 */
import { joinedHash, type Subtree, subtreesOf } from "./tree.ts";

/** Leaves from the first up to, not including, the second. */
export type LeafRange = readonly [number, number];

/** The ranges whose hashes prove that leaf `index` stands in the tree of `size` leaves, from the leaf upward. */
export function inclusionRanges(index: number, size: number): LeafRange[] {
	if (!(index >= 0 && index < size)) throw new Error(`no leaf ${index} in a tree of ${size}`);
	return path(index, 0, size);
}

/** The ranges whose hashes prove that the tree of `from` leaves is the beginning of the tree of `to`. */
export function consistencyRanges(from: number, to: number): LeafRange[] {
	if (!(from > 0 && from <= to)) throw new Error(`no tree of ${from} leaves is the beginning of one of ${to}`);
	return subproof(from, 0, to, true);
}

/** Every complete subtree that the ranges are made of. */
export function subtreesOfRanges(ranges: readonly LeafRange[]): Subtree[] {
	return ranges.flatMap(([start, end]) => subtreesOf(start, end));
}

/** The proof: each range's hash, given the hashes of complete subtrees. */
export function proofOf(ranges: readonly LeafRange[], hashOf: (subtree: Subtree) => string): string[] {
	return ranges.map(([start, end]) => joinedHash(subtreesOf(start, end).map(hashOf)));
}

/** RFC 9162, 2.1.3.1. */
function path(index: number, start: number, end: number): LeafRange[] {
	if (end - start === 1) return [];
	const middle = start + splitOf(end - start);
	return index < middle
		? [...path(index, start, middle), [middle, end]]
		: [...path(index, middle, end), [start, middle]];
}

/** RFC 9162, 2.1.4.1. `whole`: the smaller tree's root is the hash of this range, which the verifier has already. */
function subproof(from: number, start: number, end: number, whole: boolean): LeafRange[] {
	if (from === end - start) return whole ? [] : [[start, end]];
	const split = splitOf(end - start);
	const middle = start + split;
	return from <= split
		? [...subproof(from, start, middle, whole), [middle, end]]
		: [...subproof(from - split, middle, end, false), [start, middle]];
}

/** The largest power of two below a size of two or more. */
function splitOf(size: number): number {
	return 2 ** Math.floor(Math.log2(size - 1));
}
