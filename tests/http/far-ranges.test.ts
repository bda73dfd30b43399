/** Ranges of an archive beyond 4 GiB over HTTP (RFC 9110 section 14): lengths and places as they are said and as they come. */
import fastify, { type FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { sendBytes } from "../../src/http/send-bytes.ts";
import { fileOf } from "../../src/operations/dossier/dossier-file.ts";
import { storedZip, zipBytes } from "../../src/operations/dossier/stored-zip.ts";
import { sourceOn, zeros } from "../setup/far-zip.ts";

const files = [zeros("bag/a", 2 ** 32 + 5), fileOf("bag/b", "behind\n"), zeros("bag/c", 2 ** 33)];
const zip = storedZip(files, new Date("2026-03-02T23:59:58Z"));
/** Where the content of `bag/b` begins: behind `bag/a` with its header of 30 + 5 + 20 bytes, and its own of 30 + 5. */
const BEHIND = 55 + 2 ** 32 + 5 + 35;

let app: FastifyInstance;
let url: string;
beforeAll(async () => {
	app = fastify({ forceCloseConnections: true });
	const sent = {
		sizeBytes: zip.sizeBytes,
		bytes: (start: number, end: number) => zipBytes(zip, start, end),
	};
	app.get("/far.zip", (request, reply) => sendBytes(request, reply.type("application/zip"), sent, '"tag"'));
	url = `${await app.listen({ host: "127.0.0.1", port: 0 })}/far.zip`;
});
afterAll(() => app.close());

it.each([
	[`bytes=${BEHIND}-${BEHIND + 6}`, BEHIND, BEHIND + 7],
	["bytes=-98", zip.sizeBytes - 98, zip.sizeBytes],
	[`bytes=${zip.sizeBytes - 500}-`, zip.sizeBytes - 500, zip.sizeBytes],
	[`bytes=${2 ** 32 - 10}-${2 ** 32 + 9}`, 2 ** 32 - 10, 2 ** 32 + 10],
	[`bytes=${2 ** 33}-${2 ** 40}`, 2 ** 33, zip.sizeBytes],
])("%s", async (range, start, end) => {
	const ask = new AbortController();
	const answer = await fetch(url, { headers: { range, "if-range": '"tag"' }, signal: ask.signal });
	expect(answer.status).toBe(206);
	expect(answer.headers.get("content-range")).toBe(`bytes ${start}-${end - 1}/${zip.sizeBytes}`);
	expect(answer.headers.get("content-length")).toBe(String(end - start));
	if (end - start > 1000) return ask.abort();
	const bytes = Buffer.from(await answer.arrayBuffer());
	expect(bytes.equals(await sourceOn(zip).read(start, end - start))).toBe(true);
	if (start === BEHIND) expect(bytes.toString()).toBe("behind\n");
});
it("the whole, where the range is of other bytes", async () => {
	const ask = new AbortController();
	const headers = { range: `bytes=${BEHIND}-`, "if-range": '"other"' };
	const answer = await fetch(url, { headers, signal: ask.signal });
	expect([answer.status, answer.headers.get("content-length")]).toEqual([200, String(zip.sizeBytes)]);
	ask.abort();
});
