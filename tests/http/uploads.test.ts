/**
 * Resumable uploads over HTTP: the protocol against tus-js-client, a client that shares no code with the service, and
 * against the protocol's own text (tus resumable upload protocol 1.0.0, tus.io); breaks, refusals, and what is left of them.
 */
import { createHash, randomBytes } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { connect, createServer, type Socket } from "node:net";
import { join } from "node:path";
import { Upload } from "tus-js-client";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cleanUploads } from "../../src/operations/uploads/clean-uploads.ts";
import { inventedTable, READING } from "../operations/transit-recordings/invented-trip.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
let address: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	address = await shop.listen();
});
afterAll(async () => shop?.close());

const pdfOf = (bytes: number) => Buffer.concat([Buffer.from("%PDF-1.7\n"), randomBytes(bytes - 9)]);
const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");
const metadata = (values: Record<string, string>) =>
	Object.entries(values)
		.map(([key, value]) => `${key} ${Buffer.from(value).toString("base64")}`)
		.join(",");
const tus = (
	method: "POST" | "HEAD" | "PATCH" | "DELETE" | "OPTIONS",
	url: string,
	headers: Record<string, string> = {},
	payload?: Buffer,
) =>
	shop.app.inject({
		method,
		url,
		headers: { authorization: `Bearer ${shop.token}`, "tus-resumable": "1.0.0", ...headers },
		...(payload === undefined ? {} : { payload }),
	});
const begin = (sizeBytes: number, values: Record<string, string>) =>
	tus("POST", "/api/v1/exhibits", { "upload-length": String(sizeBytes), "upload-metadata": metadata(values) });
const patch = (url: string, offset: number, bytes: Buffer) =>
	tus("PATCH", url, { "upload-offset": String(offset), "content-type": "application/offset+octet-stream" }, bytes);
const begun = async (sizeBytes: number, fileName = "a.pdf") => {
	const answer = await begin(sizeBytes, { filename: fileName, record: scene.recordId });
	expect(answer.statusCode, answer.body).toBe(201);
	return String(answer.headers.location);
};
const exhibits = async () => (await shop.ask("GET", `/api/v1/records/${scene.recordId}/exhibits`)).json().exhibits;

describe("the protocol", () => {
	it("says what it speaks", async () => {
		const { statusCode, headers } = await tus("OPTIONS", "/api/v1/exhibits");
		expect(statusCode).toBe(204);
		expect(headers).toMatchObject({
			"tus-version": "1.0.0",
			"tus-extension": "creation,creation-with-upload,termination,expiration",
			"tus-max-size": String(8 * 1024 ** 3),
		});
	});
	it("takes a file in pieces, says how far it is, and makes one exhibit of it whose ranges are those of the file", async () => {
		const content = pdfOf(700_000);
		const url = await begun(content.length);
		expect((await patch(url, 0, content.subarray(0, 300_000))).headers["upload-offset"]).toBe("300000");
		const head = await tus("HEAD", url);
		expect(head.headers).toMatchObject({
			"upload-offset": "300000",
			"upload-length": "700000",
			"cache-control": "no-store",
			"tus-resumable": "1.0.0",
		});
		expect(
			head.headers["upload-expires"] ?? (await patch(url, 300_000, Buffer.alloc(0))).headers["upload-expires"],
		).toBeDefined();
		expect((await patch(url, 5, content)).statusCode).toBe(409);
		expect(await exhibits()).toEqual([]);
		const last = await patch(url, 300_000, content.subarray(300_000));
		expect([last.statusCode, last.headers["upload-offset"]]).toEqual([204, "700000"]);
		expect(await exhibits()).toEqual([
			{ sha256: sha256(content), sizeBytes: 700_000, mediaType: "application/pdf", fileName: "a.pdf" },
		]);
		expect((await shop.ask("GET", url)).json()).toMatchObject({
			offsetBytes: 700_000,
			exhibit: { sha256: sha256(content) },
		});
		expect((await tus("HEAD", url)).headers["upload-offset"]).toBe("700000");
		const whole = await shop.ask("GET", `/api/v1/exhibits/${sha256(content)}`);
		expect(whole.rawPayload.equals(content)).toBe(true);
		const range = await shop.ask("GET", `/api/v1/exhibits/${sha256(content)}`, undefined, {
			range: "bytes=262000-262300",
		});
		expect([range.statusCode, range.headers["content-range"]]).toEqual([206, "bytes 262000-262300/700000"]);
		expect(range.rawPayload.equals(content.subarray(262_000, 262_301))).toBe(true);
		// The same content of the same owner again takes no more room.
		const files = (await readdir(shop.deps.exhibitFolder, { recursive: true })).length;
		const again = await begun(content.length, "b.pdf");
		expect((await patch(again, 0, content)).statusCode).toBe(204);
		expect((await readdir(shop.deps.exhibitFolder, { recursive: true })).length).toBe(files);
	});
	it("gives an upload up, and leaves nothing of it", async () => {
		const url = await begun(5000);
		await patch(url, 0, pdfOf(4000));
		expect((await tus("DELETE", url)).statusCode).toBe(204);
		expect((await tus("HEAD", url)).statusCode).toBe(404);
		expect(await readdir(join(shop.deps.exhibitFolder, ".incoming"))).toEqual([]);
	});
	it("says what is wrong with a request, where, and the mend", async () => {
		const wrong: [Promise<{ statusCode: number; body: string }>, number, string][] = [
			[begin(10, { filename: "a.pdf" }), 400, "name either a record or a consignment"],
			[begin(10, { record: scene.recordId }), 400, "/filename"],
			[begin(0, { filename: "a.pdf", record: scene.recordId }), 400, "empty-file"],
			[begin(9 * 1024 ** 3, { filename: "a.pdf", record: scene.recordId }), 413, "too-large"],
			[begin(10, { filename: "a.pdf", record: "rec_00000000000000000000" }), 404, "not-found"],
			[tus("POST", "/api/v1/exhibits", { "upload-defer-length": "1" }), 400, "creation-defer-length"],
			[tus("POST", "/api/v1/exhibits", { "upload-length": "x" }), 400, "upload-length"],
			[tus("POST", "/api/v1/exhibits", { "tus-resumable": "0.2.2" }), 400, "tus-resumable"],
			[shop.ask("POST", "/api/v1/exhibits"), 412, "tus-version"],
		];
		for (const [asked, status, said] of wrong) {
			const answer = await asked;
			expect(answer.statusCode, answer.body).toBe(status);
			expect(answer.body).toContain(said);
		}
	});
});

describe("what is refused", () => {
	const draft = async () => (await shop.ask("GET", `/api/v1/records/${scene.recordId}`)).json();
	it.each([
		["an unknown kind", Buffer.from([0x7f, 0x45, 0x4c, 0x46, 2, 1, 1, 0, 0xff, 0xfe]), "a.bin", "unsupported-type"],
		[
			"text with a hole behind the beginning",
			Buffer.concat([Buffer.alloc(300_000, "a"), Buffer.from([0])]),
			"a.txt",
			"unsupported-type",
		],
		["a page that calls itself a picture", Buffer.from("<html><script>alert(1)</script>"), "a.jpg", "type-differs"],
		[
			"a picture that calls itself a film",
			Buffer.from("89504e470d0a1a0a0000000d49484452000000010000000108060000001f15c489", "hex"),
			"a.mp4",
			"type-differs",
		],
	])("%s: at its end, and the draft is as it was", async (_what, content, fileName, code) => {
		const before = [await draft(), await exhibits()];
		const url = await begun(content.length, fileName);
		const last = await patch(url, 0, content);
		expect([last.statusCode, last.json().type]).toEqual([415, `urn:handover-risk:fault:${code}`]);
		expect(last.headers["content-type"]).toContain("application/problem+json");
		expect((await tus("HEAD", url)).statusCode).toBe(404);
		expect([await draft(), await exhibits()]).toEqual(before);
		expect(await readdir(join(shop.deps.exhibitFolder, ".incoming"))).toEqual([]);
	});
	it("what the disk or the order has no room for, before a byte is sent", async () => {
		const { deps } = shop as { deps: { freeBytes: () => Promise<number>; exhibitQuotaBytes: number } };
		const { freeBytes, exhibitQuotaBytes } = deps;
		try {
			deps.freeBytes = async () => 1000;
			const full = await begin(2000, { filename: "a.pdf", record: scene.recordId });
			expect([full.statusCode, full.json().type]).toEqual([507, "urn:handover-risk:fault:disk-full"]);
			deps.freeBytes = freeBytes;
			deps.exhibitQuotaBytes = 2 * 1024 ** 3;
			// An open upload counts with its whole size.
			const open = await begun(2 * 1024 ** 3 - 1_000_000);
			const over = await begin(600_000, { filename: "a.pdf", record: scene.recordId });
			expect([over.statusCode, over.json().type]).toEqual([413, "urn:handover-risk:fault:quota-full"]);
			expect(over.json().detail).toContain("2 GiB");
			await tus("DELETE", open);
		} finally {
			Object.assign(deps, { freeBytes, exhibitQuotaBytes });
		}
	});
	it("the end of an upload whose record was closed meanwhile", async () => {
		const other = await customerScene(shop);
		const content = pdfOf(3000);
		const answer = await begin(content.length, { filename: "a.pdf", record: other.recordId });
		const url = String(answer.headers.location);
		await patch(url, 0, content.subarray(0, 1000));
		await shop.ask("POST", `/api/v1/records/${other.recordId}/discard`, undefined, { "if-match": '"v1"' });
		const wholeFiles = async () =>
			(await readdir(shop.deps.exhibitFolder, { recursive: true, withFileTypes: true }))
				.filter((one) => one.isFile() && /^[0-9a-f]{64}$/.test(one.name))
				.map(({ name }) => name)
				.sort();
		const before = await wholeFiles();
		const last = await patch(url, 1000, content.subarray(1000));
		expect([last.statusCode, last.json().type]).toEqual([409, "urn:handover-risk:fault:discarded"]);
		expect(await wholeFiles(), "no file that no row knows of").toEqual(before);
		expect((await tus("HEAD", url)).statusCode).toBe(404);
	});
	it("an upload to the link of another order", async () => {
		const other = await customerScene(shop);
		const session = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: other.link.url.split("/").at(-1), code: other.link.code },
		});
		expect(session.statusCode, session.body).toBeLessThan(300);
		const cookie = session.cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
		const url = await begun(5000);
		const asOther = await shop.app.inject({ method: "HEAD", url, headers: { cookie, "tus-resumable": "1.0.0" } });
		expect(asOther.statusCode).toBe(404);
		await tus("DELETE", url);
	});
	it("an upload whose time is over is cleaned away", async () => {
		const url = await begun(5000);
		await patch(url, 0, pdfOf(4000));
		const { now } = shop.deps;
		const later = () => new Date(now().getTime() + 8 * 24 * 3_600_000);
		try {
			(shop.deps as { now: () => Date }).now = later;
			await cleanUploads(shop.deps);
		} finally {
			(shop.deps as { now: () => Date }).now = now;
		}
		expect((await tus("HEAD", url)).statusCode).toBe(404);
		expect(await readdir(join(shop.deps.exhibitFolder, ".incoming"))).toEqual([]);
	});
});

describe("a recorder's file by upload", () => {
	it("waits with its columns, and is read from the store", async () => {
		const table = Buffer.from(
			inventedTable({ rateHz: 2000, lengthS: 4, impacts: [{ atS: 2, peakGn: 60, durationMs: 12, fallS: 0.394 }] }),
		);
		const answer = await begin(table.length, { filename: "trip.csv", consignment: scene.legId });
		const url = String(answer.headers.location);
		expect((await patch(url, 0, table)).statusCode).toBe(204);
		const { recordingId } = (await shop.ask("GET", url)).json();
		const read = await shop.ask("PUT", `/api/v1/transit-recordings/${recordingId}/reading`, READING);
		expect(read.json().result, read.body).toMatchObject({ rows: 8000, eventsFound: 1 });
	});
	it("that is no table is refused with the reason", async () => {
		const text = Buffer.from("no table\nat all\n");
		const answer = await begin(text.length, { filename: "trip.csv", consignment: scene.legId });
		const last = await patch(String(answer.headers.location), 0, text);
		expect([last.statusCode, last.json().errors?.[0].path]).toEqual([400, "/file"]);
	});
});

/** Passes everything on to the service, and cuts every connection where the test says so: a phone that loses its network. */
async function cuttingLine(target: string) {
	const { port, hostname } = new URL(target);
	const open = new Set<Socket>();
	const budget = { bytes: Number.POSITIVE_INFINITY };
	let cuts = 0;
	const cut = () => {
		cuts += 1;
		budget.bytes = Number.POSITIVE_INFINITY;
		for (const socket of open) socket.destroy();
	};
	const server = createServer((near) => {
		const far = connect(Number(port), hostname);
		for (const socket of [near, far]) {
			open.add(socket);
			socket.on("error", () => {});
			socket.on("close", () => {
				open.delete(socket);
				near.destroy();
				far.destroy();
			});
		}
		near.on("data", (bytes) => {
			budget.bytes -= bytes.length;
			if (budget.bytes <= 0) return cut();
			far.write(bytes);
		});
		far.on("data", (bytes) => near.write(bytes));
	});
	await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
	return {
		url: `http://127.0.0.1:${(server.address() as { port: number }).port}`,
		cutAfter: (bytes: number) => {
			budget.bytes = bytes;
		},
		cuts: () => cuts,
		close: () => new Promise((resolve) => server.close(resolve)),
	};
}

describe("forty photos over a network that is lost ten times", () => {
	it("all arrive, whole, once each", async () => {
		const photos = Array.from({ length: 40 }, (_, number) => ({
			name: `photo-${number}.jpg`,
			// The beginning of a JPEG (JFIF), then what no one has sent before.
			bytes: Buffer.concat([Buffer.from("ffd8ffe000104a46494600010100000100010000", "hex"), randomBytes(120_000)]),
		}));
		const line = await cuttingLine(address);
		let sent = 0;
		const send = (photo: (typeof photos)[number]) =>
			new Promise<void>((resolve, reject) => {
				const upload = new Upload(photo.bytes, {
					endpoint: `${line.url}/api/v1/exhibits`,
					headers: { authorization: `Bearer ${shop.token}` },
					metadata: { filename: photo.name, record: scene.recordId },
					chunkSize: 80_000,
					retryDelays: Array(30).fill(20),
					onError: reject,
					onSuccess: () => {
						sent += 1;
						// Ten times, in the middle of a photo that comes soon.
						if (sent % 3 === 1 && line.cuts() < 10) line.cutAfter(90_000);
						resolve();
					},
				});
				upload.start();
			});
		const queue = [...photos];
		const lane = async () => {
			for (let next = queue.shift(); next !== undefined; next = queue.shift()) await send(next);
		};
		await Promise.all([lane(), lane(), lane()]);
		await line.close();
		expect(line.cuts()).toBe(10);
		const kept = await exhibits();
		for (const { name, bytes } of photos) {
			const [found, ...more] = kept.filter((one: { fileName: string }) => one.fileName === name);
			expect([found?.sha256, found?.sizeBytes, more.length], name).toEqual([sha256(bytes), bytes.length, 0]);
		}
		const [one] = photos;
		const fetched = await shop.ask("GET", `/api/v1/exhibits/${sha256(one?.bytes ?? Buffer.alloc(0))}`);
		expect(one !== undefined && fetched.rawPayload.equals(one.bytes)).toBe(true);
		expect(await readdir(join(shop.deps.exhibitFolder, ".incoming"))).toEqual([]);
	}, 30_000);
});

it("leaves nothing in plain on the disk, not while an upload is open either", async () => {
	const planted = Buffer.from("a planted sentence that nobody else writes\n");
	const url = await begun(600_000, "a.txt");
	await patch(url, 0, Buffer.concat([planted, Buffer.alloc(400_000, "b")]));
	const places = await readdir(shop.deps.exhibitFolder, { recursive: true, withFileTypes: true });
	for (const entry of places.filter((one) => one.isFile())) {
		// Copies of photos that came before may still be moved to their places.
		const bytes = await readFile(join(entry.parentPath, entry.name)).catch(() => Buffer.alloc(0));
		expect(bytes.includes(planted.subarray(0, 20))).toBe(false);
	}
	await tus("DELETE", url);
});
