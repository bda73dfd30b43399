/** The picture child against pictures that are made here, and against files that mean it harm. It runs as built. */
import ExifReader from "exifreader";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { runPictureChild } from "../../../src/operations/pictures/run-picture-child.ts";
import { bomb, leaksOf, located, PLANTED_MAKER, PLANTED_MODEL, turned } from "../../setup/pictures.ts";

const read = (bytes: Uint8Array, mediaType = "image/jpeg") => runPictureChild({ act: "read", mediaType }, bytes);
const at = async (bytes: Uint8Array | undefined, left: number, top: number) =>
	[...(await sharp(bytes).extract({ left, top, width: 1, height: 1 }).raw().toBuffer())].map((one) =>
		one > 200 ? "high" : one < 55 ? "low" : "middle",
	);
const RED = ["high", "low", "low"];
const BLUE = ["low", "low", "high"];
const BLACK = ["low", "low", "low"];

describe("a picture with metadata", () => {
	it.each(["jpeg", "png", "webp"] as const)(
		"%s: its claims are read, and no copy holds any of them",
		async (format) => {
			const bytes = await located(format);
			// The planted picture does say it, by a reader that is not ours.
			expect(ExifReader.load(bytes, { expanded: true }).gps?.Latitude).toBeCloseTo(48 + 12 / 60 + 30 / 3600, 6);
			const { claimed, parts, size, refusal } = await read(bytes, `image/${format}`);
			expect(claimed).toEqual({
				time: "2026-05-02T10:11:12",
				offset: "+02:00",
				device: `${PLANTED_MAKER} ${PLANTED_MODEL}`,
				hasPlace: true,
			});
			expect([refusal, size, parts.length]).toEqual([null, { width: 400, height: 200 }, 2]);
			for (const part of parts) {
				expect(leaksOf(Buffer.from(part))).toEqual([]);
				expect((await sharp(part).metadata()).format).toBe("jpeg");
			}
		},
	);
	it("is turned upright, since the copy has no mark that says how", async () => {
		const { parts, size } = await read(await turned());
		expect(size).toEqual({ width: 200, height: 400 });
		// Red on the left, turned clockwise, comes to the top.
		expect(await at(parts[0], 100, 20)).toEqual(RED);
		expect(await at(parts[0], 100, 380)).toEqual(BLUE);
	});
	it("gives the same bytes again", async () => {
		const bytes = await located("jpeg");
		const [one, other] = await Promise.all([read(bytes), read(bytes)]);
		expect(Buffer.from(one.parts[0] ?? []).equals(Buffer.from(other.parts[0] ?? []))).toBe(true);
	});
});

describe("blacking out", () => {
	// 25 × 4.2 to 75.1 × 12.6 percent of 200 × 400 pixels as shown.
	const rectangles = [{ x: 25, y: 4.2, w: 50.1, h: 8.4 }];
	const cover = async (bytes: Buffer) =>
		(await runPictureChild({ act: "black-out", mediaType: "image/jpeg", rectangles }, bytes)).parts;

	it("covers what was asked for in the picture as it is shown, and nothing else", async () => {
		const [copy, thumbnail] = await cover(await turned());
		// 4 pixels from an edge, since a JPEG's colours run over it.
		for (const [left, top] of [
			[54, 21],
			[100, 35],
			[146, 46],
		] as const) {
			expect(await at(copy, left, top), `${left}, ${top}`).toEqual(BLACK);
			expect(await at(thumbnail, left, top)).toEqual(BLACK);
		}
		for (const [left, top] of [
			[30, 35],
			[175, 35],
			[100, 5],
			[100, 75],
		] as const) {
			expect(await at(copy, left, top), `${left}, ${top}`).toEqual(RED);
		}
	});
	it("leaves nothing of what it covers: two pictures that differ there alone give the same bytes", async () => {
		const secret = { input: { create: { width: 20, height: 60, channels: 3 as const, background: "lime" } } };
		const plain = await sharp(await located("png"))
			.raw()
			.toBuffer({ resolveWithObject: true });
		const raw = { raw: { width: plain.info.width, height: plain.info.height, channels: plain.info.channels } };
		const other = await sharp(plain.data, raw)
			.composite([{ ...secret, left: 120, top: 15 }])
			.png()
			.toBuffer();
		const task = {
			act: "black-out",
			mediaType: "image/png",
			rectangles: [{ x: 30, y: 7.5, w: 5, h: 30 }],
		} as const;
		const [one, two] = await Promise.all([runPictureChild(task, await located("png")), runPictureChild(task, other)]);
		expect(one.parts.length).toBe(2);
		for (const [place, part] of one.parts.entries()) {
			expect(Buffer.from(part).equals(Buffer.from(two.parts[place] ?? []))).toBe(true);
		}
		const [uncovered] = (await read(other, "image/png")).parts;
		expect(await at(uncovered, 130, 40)).toEqual(["low", "high", "low"]);
	});
});

describe("what cannot be read", () => {
	it("a picture of 900 million pixels is not opened", async () => {
		const bytes = bomb();
		expect(bytes.length).toBeLessThan(1_000_000);
		expect((await read(bytes, "image/png")).refusal).toBe("too-many-pixels");
	});
	it("a picture that was cut off is not taken for a whole one", async () => {
		const bytes = await located("jpeg", 2000, 1000);
		const { refusal, parts, claimed } = await read(bytes.subarray(0, bytes.length - 3000));
		expect([refusal, parts]).toEqual(["damaged", []]);
		expect(claimed?.device).toContain(PLANTED_MODEL);
	});
	it("a file is opened as what its content was taken for and as nothing else", async () => {
		expect((await read(await located("png"), "image/jpeg")).refusal).toBe("not-shown");
		const drawing = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
		expect((await read(drawing)).refusal).toBe("not-shown");
	});
	it("nonsense behind a JPEG's first bytes, or nothing, ends no more than the child's answer", async () => {
		const nonsense = Buffer.concat([Buffer.of(0xff, 0xd8, 0xff, 0xe1), Buffer.alloc(2000, 0x5a)]);
		for (const bytes of [nonsense, Buffer.alloc(0), Buffer.of(0xff, 0xd8, 0xff)]) {
			expect((await read(bytes)).refusal).toMatch(/damaged|not-shown/);
		}
	});
});
