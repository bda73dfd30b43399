/** Uploads on a disk that is full or fails: nothing is acknowledged that is not there, and the upload goes on afterwards. */
import { randomBytes } from "node:crypto";
import { mkdtemp, open, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { completeIncoming, incomingPlace, openIncoming } from "../../src/exhibits/incoming.ts";
import { readSealed } from "../../src/exhibits/sealed-file.ts";
import { FILE_KEY_BYTES, SEGMENT_BYTES } from "../../src/exhibits/segments.ts";
import { Fault } from "../../src/faults.ts";

let folder: string;
let handle: { write: (...args: unknown[]) => unknown; sync: () => unknown };
const key = randomBytes(FILE_KEY_BYTES);
const content = randomBytes(2 * SEGMENT_BYTES + 1000);
const file = { key, sizeBytes: content.length };
const full = Object.assign(new Error("no space left on device"), { code: "ENOSPC" });
beforeEach(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-incoming-"));
	const probe = await open(join(folder, "probe"), "w");
	handle = Object.getPrototypeOf(probe);
	await probe.close();
});
afterEach(async () => {
	vi.restoreAllMocks();
	await rm(folder, { recursive: true });
});
const isFull = (error: unknown) => error instanceof Fault && error.code === "disk-full";
const opened = (offsetBytes = 0, tail: Uint8Array = new Uint8Array()) =>
	openIncoming(folder, "upl_1", file, { offsetBytes, tail }, randomBytes);

describe("where the disk is full", () => {
	it("the segment that could not be written has not come, be it the last; the upload goes on from there", async () => {
		const incoming = await opened();
		await incoming.take(content.subarray(0, 2 * SEGMENT_BYTES));
		vi.spyOn(handle, "write").mockRejectedValueOnce(full);
		await expect(incoming.take(content.subarray(2 * SEGMENT_BYTES))).rejects.toSatisfy(isFull);
		const { offsetBytes, tail } = await incoming.sync();
		expect(offsetBytes).toBe(2 * SEGMENT_BYTES);
		await incoming.close();

		const again = await opened(offsetBytes, tail);
		await again.take(content.subarray(offsetBytes));
		await again.sync();
		await again.close();
		const pieces: Buffer[] = [];
		const whole = { path: incomingPlace(folder, "upl_1"), ...file };
		for await (const piece of readSealed(whole, 0, content.length)) pieces.push(piece);
		expect(Buffer.concat(pieces).equals(content)).toBe(true);
	});
	it("a write that takes a part is gone on with, and the key stands whole behind the segments", async () => {
		const write = handle.write;
		vi.spyOn(handle, "write").mockImplementation(function (this: unknown, ...args: unknown[]) {
			const [bytes, from, length, place] = args as [Uint8Array, number, number, number];
			return write.call(this, bytes, from, Math.ceil(length / 2), place);
		});
		const incoming = await opened();
		await incoming.take(content);
		await incoming.sync();
		await incoming.close();
		const sealedKey = randomBytes(61);
		const facts = await completeIncoming(
			folder,
			"upl_1",
			file,
			() => {},
			() => sealedKey,
		);
		vi.restoreAllMocks();
		const stored = await open(incomingPlace(folder, "upl_1"), "r");
		const { size } = await stored.stat();
		const end = Buffer.alloc(61);
		await stored.read(end, 0, 61, size - 61);
		await stored.close();
		expect(end.equals(sealedKey)).toBe(true);
		expect(facts.sha256).toMatch(/^[0-9a-f]{64}$/);
	});
});

it("what could not be synced once is not acknowledged by asking again", async () => {
	const incoming = await opened();
	await incoming.take(content.subarray(0, SEGMENT_BYTES));
	vi.spyOn(handle, "sync").mockRejectedValueOnce(full);
	await expect(incoming.sync()).rejects.toSatisfy(isFull);
	await expect(incoming.sync()).rejects.toSatisfy(isFull);
	await incoming.close();
});
