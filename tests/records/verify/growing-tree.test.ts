/**
 * The tree that grows leaf by leaf: the eight leaves of the certificate-transparency reference vectors (RFC 6962), their
 * roots computed beforehand and in agreement with those vectors from memory; and the definition of RFC 9162, section 2.1.1,
 * written out recursively here.
 */
import { createHash } from "node:crypto";
import { expect, it } from "vitest";
import { growingTree } from "../../../src/records/verify/growing-tree.ts";

const hash = (...parts: readonly Buffer[]) => createHash("sha256").update(Buffer.concat(parts)).digest();
const leaf = (data: Buffer) => hash(Buffer.of(0), data);

/** MTH of RFC 9162, 2.1.1. */
function definition(leaves: readonly Buffer[]): Buffer {
	const [only] = leaves;
	if (only === undefined) return hash();
	if (leaves.length === 1) return only;
	let split = 1;
	while (split * 2 < leaves.length) split *= 2;
	return hash(Buffer.of(1), definition(leaves.slice(0, split)), definition(leaves.slice(split)));
}

it("has the roots of the reference vectors", () => {
	const data = ["", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"];
	const roots: Record<number, string> = {
		0: "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
		1: "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
		2: "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
		3: "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
		8: "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
	};
	const tree = growingTree();
	expect(tree.root()).toBe(roots[0]);
	for (const hex of data) {
		tree.add(leaf(Buffer.from(hex, "hex")).toString("hex"));
		const expected = roots[tree.size];
		if (expected !== undefined) expect(tree.root(), `size ${tree.size}`).toBe(expected);
	}
	expect(tree.size).toBe(8);
});

it("has the root and the complete subtrees of the definition at every size up to 70", () => {
	const tree = growingTree();
	const leaves: Buffer[] = [];
	const found = new Map<string, string>();
	for (let count = 0; count < 70; count += 1) {
		leaves.push(leaf(Buffer.from(`${count}`)));
		for (const { level, index, sha256 } of tree.add(leaves[count]?.toString("hex") ?? ""))
			found.set(`${level}/${index}`, sha256);
		expect(tree.root()).toBe(definition(leaves).toString("hex"));
	}
	const expected = new Map<string, string>();
	for (let level = 1; 2 ** level <= 70; level += 1) {
		for (let index = 0; (index + 1) * 2 ** level <= 70; index += 1) {
			const covered = leaves.slice(index * 2 ** level, (index + 1) * 2 ** level);
			expected.set(`${level}/${index}`, definition(covered).toString("hex"));
		}
	}
	expect([...found].sort()).toEqual([...expected].sort());
});
