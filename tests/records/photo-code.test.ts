/** The code beside the board, against another way to compute it, and against what a person makes of it by hand. */
import { spawnSync } from "node:child_process";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { photoCode, readPhotoCode } from "../../src/records/photo-code.ts";

const PARTS = {
	treeSize: 27,
	root: "8dce53ac0f5b2b6fdfd44f4a4aa1dcb4b1f8b0f1f4b4d3a1f8d8b2a9f0a1b2c3",
	recordId: "rec_00000000000000000000",
	otherPartyId: "pty_11111111111111111111",
};

describe("the code", () => {
	it("is the first 40 bits of sha256sum over its lines, in base 32", () => {
		const { treeSize, root, recordId, otherPartyId } = PARTS;
		const lines = `handover-risk/photo-code/1\n${treeSize}\n${root}\n${recordId}\n${otherPartyId}\n`;
		const { stdout } = spawnSync("sha256sum", { input: lines, encoding: "utf8" });
		const number = BigInt(`0x${stdout.slice(0, 10)}`);
		// JavaScript's own base 32 has the digits and a to v; ours skips I, L, O and U.
		const ours = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
		const expected = [...number.toString(32).padStart(8, "0")].map((digit) => ours[Number.parseInt(digit, 32)]);
		expect(photoCode(PARTS)).toBe(expected.join(""));
	});
	it("changes with each of its parts", () => {
		const others = [
			{ ...PARTS, treeSize: 28 },
			{ ...PARTS, root: PARTS.root.replace("8", "9") },
			{ ...PARTS, recordId: "rec_00000000000000000001" },
			{ ...PARTS, otherPartyId: "pty_11111111111111111112" },
		];
		expect(new Set([PARTS, ...others].map(photoCode)).size).toBe(5);
	});
});

describe("a code as it is typed", () => {
	it("is read with spaces, dashes, small letters, and letters that look like digits", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 1e9 }), (treeSize) => {
				const code = photoCode({ ...PARTS, treeSize });
				const typed = ` ${code.slice(0, 4).toLowerCase()}-${code.slice(4)} `.replaceAll("0", "O").replaceAll("1", "l");
				expect(readPhotoCode(typed)).toBe(code);
			}),
		);
	});
	it.each(["", "1234567", "123456789", "1234567U", "12345678; --"])("is none: %s", (typed) => {
		expect(readPhotoCode(typed)).toBe(null);
	});
});
