/**
 * The tree that grows leaf by leaf and the proofs made from its complete subtrees, against RFC 9162 in two other ways:
 * the RFC's recursive definitions written out in `independent-maker.ts`, and the roots of the certificate-transparency
 * reference vectors (evidence page; recomputed, agreeing with those from memory).
 */
import { describe, expect, it } from "vitest";
import { consistencyRanges, inclusionRanges, proofOf } from "../../../src/records/log/proofs.ts";
import { EMPTY_ROOT, grow, type Subtree, subtreesOf } from "../../../src/records/log/tree.ts";
import { consistencyOf, inclusionOf, leafOf, rootOf } from "../verify/independent-maker.ts";

const LARGEST = 300;
const leaves = Array.from({ length: LARGEST }, (_, index) => leafOf(Buffer.from(`entry ${index}`)));
const grown = growAll(leaves);
const hexes = (hashes: readonly Buffer[]) => hashes.map((hash) => hash.toString("hex"));

/** Grows a tree as the log does, and keeps what the log keeps. */
function growAll(all: readonly Buffer[]) {
	const kept = new Map<string, string>();
	const roots = [EMPTY_ROOT];
	const hashOf = ({ level, index }: Subtree) => {
		const hash = kept.get(`${level}/${index}`);
		if (hash === undefined) throw new Error(`subtree ${level}/${index} was never complete`);
		return hash;
	};
	for (const [size, leaf] of all.entries()) {
		const { made, root } = grow(size, subtreesOf(0, size).map(hashOf), leaf.toString("hex"));
		for (const { level, index, sha256 } of made) kept.set(`${level}/${index}`, sha256);
		roots.push(root);
	}
	return { roots, hashOf, kept: kept.size };
}

describe("a tree that grows leaf by leaf", () => {
	it("has the published roots", () => {
		const vectors = [
			"",
			"00",
			"10",
			"2021",
			"3031",
			"40414243",
			"5051525354555657",
			"606162636465666768696a6b6c6d6e6f",
		];
		const { roots } = growAll(vectors.map((hex) => leafOf(Buffer.from(hex, "hex"))));
		expect(roots[0]).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
		expect(roots[1]).toBe("6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d");
		expect(roots[2]).toBe("fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125");
		expect(roots[3]).toBe("aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77");
		expect(roots[8]).toBe("5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");
	});

	it("has the RFC's root at every size to 300, and keeps fewer than two hashes per leaf", () => {
		for (let size = 0; size <= LARGEST; size += 1) {
			expect(grown.roots[size]).toBe(rootOf(leaves.slice(0, size)).toString("hex"));
		}
		expect(grown.kept).toBeLessThan(2 * LARGEST);
	});
});

describe("proofs for every size to 300", () => {
	it("of inclusion are the RFC's, hash by hash", () => {
		for (let size = 1; size <= LARGEST; size += 1) {
			const tree = leaves.slice(0, size);
			for (let index = 0; index < size; index += size > 40 ? 7 : 1) {
				expect(proofOf(inclusionRanges(index, size), grown.hashOf)).toEqual(hexes(inclusionOf(index, tree)));
			}
		}
	});

	it("of consistency are the RFC's, hash by hash", () => {
		for (let size = 1; size <= LARGEST; size += 1) {
			const tree = leaves.slice(0, size);
			for (let from = 1; from <= size; from += size > 40 ? 7 : 1) {
				expect(proofOf(consistencyRanges(from, size), grown.hashOf)).toEqual(hexes(consistencyOf(from, tree)));
			}
		}
	});

	it("ask for no more than the logarithm of a log of a million entries", () => {
		const reads = inclusionRanges(654_321, 1_000_000).flatMap(([start, end]) => subtreesOf(start, end));
		expect(reads.length).toBeLessThan(2 * Math.log2(1_000_000));
		const between = consistencyRanges(999_999, 1_000_000).flatMap(([start, end]) => subtreesOf(start, end));
		expect(between.length).toBeLessThan(2 * Math.log2(1_000_000));
	});

	it("are refused of what is not in the tree", () => {
		expect(() => inclusionRanges(5, 5)).toThrow("no leaf 5 in a tree of 5");
		expect(() => inclusionRanges(-1, 5)).toThrow();
		expect(() => inclusionRanges(Number.NaN, 5)).toThrow();
		expect(() => consistencyRanges(0, 5)).toThrow();
		expect(() => consistencyRanges(6, 5)).toThrow("no tree of 6 leaves is the beginning of one of 5");
	});
});
