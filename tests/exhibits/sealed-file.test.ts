/** Files in segments: every range against the content, and every way to change the file is found. */
import { createHash, randomBytes } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { completeIncoming, incomingPlace, openIncoming, placeIncoming } from "../../src/exhibits/incoming.ts";
import { readSealed, readSealedKey, readSealedSync, sealWhole } from "../../src/exhibits/sealed-file.ts";
import { SEALED_KEY_BYTES, SEGMENT_BYTES, segmentPlace } from "../../src/exhibits/segments.ts";
import { exhibitPlace } from "../../src/exhibits/store.ts";

const folder = mkdtempSync(join(tmpdir(), "handover-risk-segments-"));
afterAll(() => rmSync(folder, { recursive: true }));
const key = randomBytes(32);
const SEALED_KEY = Buffer.alloc(SEALED_KEY_BYTES, 5);
const path = join(folder, "file");
const collected = async (pieces: AsyncIterable<Buffer>) => {
	const all: Buffer[] = [];
	for await (const piece of pieces) all.push(piece);
	return Buffer.concat(all);
};
const SIZES = [1, SEGMENT_BYTES - 1, SEGMENT_BYTES, SEGMENT_BYTES + 1, 3 * SEGMENT_BYTES, 3 * SEGMENT_BYTES + 77];

describe("a file in segments", () => {
	it.each(SIZES)("of %i bytes is read whole, by any range, with and without waiting", async (sizeBytes) => {
		const content = randomBytes(sizeBytes);
		writeFileSync(path, sealWhole(content, key, SEALED_KEY, randomBytes));
		const file = { path, key, sizeBytes };
		expect((await collected(readSealed(file))).equals(content)).toBe(true);
		expect(Buffer.concat([...readSealedSync(file)]).equals(content)).toBe(true);
		expect((await readSealedKey(path, sizeBytes))?.equals(SEALED_KEY)).toBe(true);
		for (const [start, end] of [
			[0, 1],
			[sizeBytes - 1, sizeBytes],
			[Math.floor(sizeBytes / 3), Math.ceil((2 * sizeBytes) / 3)],
		] as const)
			expect((await collected(readSealed(file, start, end))).equals(content.subarray(start, end))).toBe(true);
	});
	it("does not open where a segment was changed, moved, taken from elsewhere or cut off", async () => {
		const sizeBytes = 3 * SEGMENT_BYTES;
		const content = randomBytes(sizeBytes);
		const sealed = sealWhole(content, key, SEALED_KEY, randomBytes);
		const part = (index: number) => sealed.subarray(segmentPlace(index), segmentPlace(index + 1));
		const wrong: [string, Buffer, number][] = [
			["a bit", Buffer.from(sealed.map((byte, at) => (at === segmentPlace(1) + 40 ? byte ^ 1 : byte))), sizeBytes],
			[
				"two in another order",
				Buffer.concat([sealed.subarray(0, 1), part(1), part(0), part(2), SEALED_KEY]),
				sizeBytes,
			],
			["the last is left out", Buffer.concat([sealed.subarray(0, 1), part(0), part(1), SEALED_KEY]), 2 * SEGMENT_BYTES],
		];
		for (const [what, bytes, size] of wrong) {
			writeFileSync(path, bytes);
			await expect(collected(readSealed({ path, key, sizeBytes: size })), what).rejects.toThrow();
		}
		// The read ahead fails while whoever takes the bytes is still busy, or wants no more: no error comes out of turn.
		writeFileSync(path, sealed.subarray(0, segmentPlace(1) + 5));
		const reading = readSealed({ path, key, sizeBytes });
		expect((await reading.next()).value?.equals(content.subarray(0, SEGMENT_BYTES))).toBe(true);
		await new Promise((resolve) => setTimeout(resolve, 30));
		await expect(reading.next()).rejects.toThrow("shorter than its content");
		for await (const _ of readSealed({ path, key, sizeBytes })) break;
		writeFileSync(path, sealed.subarray(0, -1));
		await expect(readSealedKey(path, sizeBytes)).rejects.toThrow("changed its size");
	});
});

describe("an upload", () => {
	it("goes on after breaks at any byte, some of what came lost, and is the file that was sent", async () => {
		const sizeBytes = 2 * SEGMENT_BYTES + 12_345;
		const content = randomBytes(sizeBytes);
		let state: { readonly offsetBytes: number; readonly tail: Buffer } = { offsetBytes: 0, tail: Buffer.alloc(0) };
		for (const to of [10, SEGMENT_BYTES - 1, SEGMENT_BYTES + 5, SEGMENT_BYTES + 6, 2 * SEGMENT_BYTES, sizeBytes]) {
			const lost = await openIncoming(folder, "upl_a", { key, sizeBytes }, state, randomBytes);
			// Written, and never put down: a crash. It may have held other bytes.
			await lost.take(randomBytes(to - state.offsetBytes));
			await lost.close();
			const file = await openIncoming(folder, "upl_a", { key, sizeBytes }, state, randomBytes);
			for (let at = state.offsetBytes; at < to; at += 60_000)
				await file.take(content.subarray(at, Math.min(to, at + 60_000)));
			state = await file.sync();
			await file.close();
			expect(state.offsetBytes).toBe(to);
		}
		const lying = readFileSync(incomingPlace(folder, "upl_a"));
		expect(lying.includes(content.subarray(100, 132))).toBe(false);
		// Closed twice, as after a crash between.
		await completeIncoming(
			folder,
			"upl_a",
			{ key, sizeBytes },
			() => {},
			() => SEALED_KEY,
		);
		const facts = await completeIncoming(
			folder,
			"upl_a",
			{ key, sizeBytes },
			() => {},
			() => SEALED_KEY,
		);
		expect(facts.sha256).toBe(createHash("sha256").update(content).digest("hex"));
		await placeIncoming(folder, "upl_a", facts.storedSha256);
		const place = exhibitPlace(folder, facts.storedSha256);
		expect(createHash("sha256").update(readFileSync(place)).digest("hex")).toBe(facts.storedSha256);
		expect((await collected(readSealed({ path: place, key, sizeBytes }))).equals(content)).toBe(true);
	});
});
