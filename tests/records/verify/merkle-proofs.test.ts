/** Proofs of RFC 9162, checked for every size to 300 against the RFC's recursive definitions. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isConsistent, rootByInclusion } from "../../../src/records/verify/merkle-proofs.ts";
import { consistencyOf, inclusionOf, leafOf, rootOf } from "./independent-maker.ts";

/** The leaves that the certificate-transparency reference vectors use, and their roots by size (evidence page). */
const REFERENCE = [
	"",
	"00",
	"10",
	"2021",
	"3031",
	"40414243",
	"5051525354555657",
	"606162636465666768696a6b6c6d6e6f",
].map((hex) => leafOf(Buffer.from(hex, "hex")));
const ROOTS: Readonly<Record<number, string>> = {
	0: "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
	1: "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
	2: "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
	3: "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
	8: "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
};
const LARGEST = 300;
const leaves = Array.from({ length: LARGEST }, (_, index) => leafOf(Buffer.from(`entry ${index}`)));
/** The root of each size. */
const roots = Array.from({ length: LARGEST + 1 }, (_, size) => rootOf(leaves.slice(0, size)).toString("hex"));
const hexes = (hashes: readonly Buffer[]) => hashes.map((hash) => hash.toString("hex"));
const flip = (hex: string) => `${hex[0] === "0" ? "1" : "0"}${hex.slice(1)}`;

describe("the published roots", () => {
	it.each(Object.entries(ROOTS))(
		"of %s leaves are reached from every leaf, and from every smaller tree",
		(text, root) => {
			const size = Number(text);
			const tree = REFERENCE.slice(0, size);
			expect(rootOf(tree).toString("hex")).toBe(root);
			tree.forEach((leaf, index) => {
				expect(rootByInclusion(leaf.toString("hex"), index, size, hexes(inclusionOf(index, tree)))).toBe(root);
			});
			for (let from = 1; from <= size; from += 1) {
				const smaller = { size: from, root: rootOf(tree.slice(0, from)).toString("hex") };
				expect(isConsistent(smaller, { size, root }, hexes(consistencyOf(from, tree)))).toBe(true);
			}
		},
	);
});

/** Whether the proof of a leaf holds, and nothing that is bent a little does. */
function expectInclusion(index: number, size: number): void {
	const proof = hexes(inclusionOf(index, leaves.slice(0, size)));
	const leaf = leaves[index]?.toString("hex") ?? "";
	const by = (at: number, hashes: readonly string[]) => rootByInclusion(leaf, at, size, hashes);
	expect(by(index, proof)).toBe(roots[size]);
	expect(by(index, [...proof, roots[1] ?? ""])).toBeNull();
	if (size === 1) return;
	expect(by((index + 1) % size, proof)).not.toBe(roots[size]);
	expect(by(index, proof.slice(1))).toBeNull();
	proof.forEach((hash, place) => {
		expect(by(index, proof.with(place, flip(hash)))).not.toBe(roots[size]);
	});
}

/** Whether the smaller tree is shown to be the beginning, and nothing that is bent a little is. */
function expectConsistency(from: number, size: number): void {
	const proof = hexes(consistencyOf(from, leaves.slice(0, size)));
	const smaller = { size: from, root: roots[from] ?? "" };
	const larger = { size, root: roots[size] ?? "" };
	expect(isConsistent(smaller, larger, proof)).toBe(true);
	expect(isConsistent({ ...smaller, root: flip(smaller.root) }, larger, proof)).toBe(false);
	expect(isConsistent(smaller, { ...larger, root: flip(larger.root) }, proof)).toBe(false);
	expect(isConsistent(smaller, larger, [...proof, smaller.root])).toBe(false);
	if (from < size) expect(isConsistent(larger, smaller, proof)).toBe(false);
	if (proof.length > 0) expect(isConsistent(smaller, larger, proof.slice(0, -1))).toBe(false);
	proof.forEach((hash, place) => {
		expect(isConsistent(smaller, larger, proof.with(place, flip(hash)))).toBe(false);
	});
}

const SMALL = Array.from({ length: 40 }, (_, index) => index + 1);
const size = fc.integer({ min: 1, max: LARGEST });

describe("proofs", () => {
	it("of every leaf of every small tree, and of any leaf of any tree to 300, lead to the root", () => {
		for (const of of SMALL) for (let index = 0; index < of; index += 1) expectInclusion(index, of);
		fc.assert(
			fc.property(size, fc.nat(), (of, any) => expectInclusion(any % of, of)),
			{ numRuns: 600 },
		);
	});
	it("of every beginning of every small tree, and of any beginning of any tree to 300, hold", () => {
		for (const of of SMALL) for (let from = 1; from <= of; from += 1) expectConsistency(from, of);
		fc.assert(
			fc.property(size, fc.nat(), (of, any) => expectConsistency((any % of) + 1, of)),
			{ numRuns: 600 },
		);
	});
	it("takes the tree without entries as the beginning of all, and no impossible numbers", () => {
		expect(isConsistent({ size: 0, root: ROOTS[0] ?? "" }, { size: 3, root: roots[3] ?? "" }, [])).toBe(true);
		expect(isConsistent({ size: 0, root: roots[1] ?? "" }, { size: 3, root: roots[3] ?? "" }, [])).toBe(false);
		for (const [index, size] of [
			[0, 0],
			[1, 1],
			[-1, 1],
			[Number.NaN, 1],
		] as const) {
			expect(rootByInclusion(roots[1] ?? "", index, size, [])).toBeNull();
		}
	});
});
