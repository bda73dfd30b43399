/** The door: nothing is coerced, dropped or rounded, and every fault is told with its place. Cases T1 of the style page and the list. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
});
afterAll(async () => shop?.close());

/** Sends text as it is; the calculation `impact` is stateless and open. */
const send = (text: string, url = "/api/v1/calculations/impact", headers: Record<string, string> = {}) =>
	shop.app.inject({ method: "POST", url, headers: { "content-type": "application/json", ...headers }, payload: text });
const codes = (answer: { json(): { errors?: { path: string; code: string }[] } }) =>
	(answer.json().errors ?? []).map(({ path, code }) => `${path} ${code}`);

describe("bodies are taken as they are or not at all", () => {
	it.each([
		["null for a number", '{"dropHeightM":null,"restitution":0}', "/dropHeightM wrong-type"],
		["true for a number", '{"dropHeightM":true,"restitution":0}', "/dropHeightM wrong-type"],
		["text for a number", '{"dropHeightM":"1","restitution":0}', "/dropHeightM wrong-type"],
		["a list for a number", '{"dropHeightM":[1],"restitution":0}', "/dropHeightM wrong-type"],
		["a missing member", '{"dropHeightM":1}', "/restitution missing"],
		["an unknown member", '{"dropHeightM":1,"restitution":0,"dropHeigthM":2}', "/dropHeigthM unknown-member"],
		["a duplicate member", '{"dropHeightM":1,"restitution":0,"restitution":1}', "/restitution duplicate-member"],
		["an infinite number", '{"dropHeightM":1e400,"restitution":0}', "/dropHeightM unsafe-number"],
		["a number beyond 2^53", '{"dropHeightM":9007199254740993,"restitution":0}', "/dropHeightM unsafe-number"],
		["a number out of range", '{"dropHeightM":1,"restitution":1.5}', "/restitution too-big"],
		["a negative height", '{"dropHeightM":-1,"restitution":0}', "/dropHeightM too-small"],
	])("refuses %s, with its place", async (_, text, fault) => {
		const answer = await send(text);
		expect(answer.statusCode).toBe(400);
		expect(answer.headers["content-type"]).toContain("application/problem+json");
		expect(codes(answer)).toContain(fault);
		for (const error of answer.json().errors) expect(error.mend.length, "a mend stands beside it").toBeGreaterThan(3);
	});

	it("tells all faults of a stage at once", async () => {
		expect(codes(await send('{"a":1,"a":2,"b":1e999}')).sort()).toEqual(["/a duplicate-member", "/b unsafe-number"]);
		expect(codes(await send('{"dropHeightM":null,"x":1}')).sort()).toEqual([
			"/dropHeightM wrong-type",
			"/restitution missing",
			"/x unknown-member",
		]);
	});

	it("refuses malformed JSON with line and column, and nesting over 32 without overflowing", async () => {
		const broken = await send('{"dropHeightM":1,\n"restitution":}');
		expect(broken.json().detail).toContain("line 2");
		expect((await send("[".repeat(33) + "]".repeat(33))).json().errors[0].code).toBe("too-deep");
		expect((await send("[".repeat(32) + "]".repeat(32))).json().errors[0].code).not.toBe("too-deep");
		const deep = await send("[".repeat(1024 * 1024 - 1));
		expect(deep.statusCode).toBe(400);
	});

	it("refuses U+0000 and half a character anywhere in a text", async () => {
		const order = (fault: string) => `{"label":"${fault}","facts":{"unit":"V"}}`;
		const account = { authorization: `Bearer ${shop.token}` };
		expect(codes(await send(order("a\\u0000b"), "/api/v1/instruments", account))).toEqual(["/label null-character"]);
		expect(codes(await send(order("a\\ud800b"), "/api/v1/instruments", account))).toEqual(["/label lone-surrogate"]);
	});

	it("refuses years outside 1970 to 2200, and times without offset", async () => {
		for (const observedAt of ["1969-12-31T23:59:59Z", "2201-01-01T00:00:00Z", "2026-03-02T10:00:00"]) {
			const answer = await shop.ask("PUT", `/api/v1/records/${scene.recordId}`, { observedAt }, { "if-match": '"v1"' });
			expect(answer.statusCode, observedAt).toBe(400);
			expect(answer.json().errors[0].path).toBe("/observedAt");
		}
	});

	it("refuses a body over its limit, and another media type", async () => {
		expect((await send(`"${"x".repeat(1024 * 1024)}"`)).statusCode).toBe(413);
		const xml = await shop.app.inject({
			method: "POST",
			url: "/api/v1/calculations/impact",
			headers: { "content-type": "application/xml" },
			payload: "<a/>",
		});
		expect(xml.statusCode).toBe(415);
		const big = await shop.app.inject({
			method: "POST",
			url: "/api/v1/imports/preview",
			headers: { "content-type": "text/plain" },
			payload: Buffer.alloc(16 * 1024 * 1024 + 1, 0x20),
		});
		expect(big.statusCode).toBe(413);
	});

	it("refuses diagnostic outputs with line and reason: entity bombs, binaries, other tools", async () => {
		const preview = (payload: Buffer | string) =>
			shop.app.inject({
				method: "POST",
				url: "/api/v1/imports/preview?load=load",
				headers: { "content-type": "application/json" },
				payload,
			});
		for (const bad of [
			'<!DOCTYPE nvidia_smi_log [<!ENTITY a "b">]><nvidia_smi_log>&a;</nvidia_smi_log>',
			Buffer.from([0, 1, 2, 3]),
			"hello",
			"",
		]) {
			const answer = await preview(bad);
			expect(answer.statusCode).toBe(400);
			expect(answer.json().errors[0].message).toContain("not read");
		}
	});
});

describe("versions, seals and keys", () => {
	const draft = async () =>
		(
			await shop.ask("POST", `/api/v1/consignments/${scene.legId}/records`, {
				stage: "arrival",
				content: { observedAt: "2026-03-05T10:00:00Z", state: "good", identity: { serialNumber: "OW24-7731-C" } },
			})
		).json().id as string;

	it("asks for If-Match, and refuses a version that is no longer the newest", async () => {
		const id = await draft();
		expect((await shop.ask("PUT", `/api/v1/records/${id}`, {})).statusCode).toBe(428);
		expect((await shop.ask("PUT", `/api/v1/records/${id}`, {}, { "if-match": '"v7"' })).statusCode).toBe(412);
		expect((await shop.ask("PUT", `/api/v1/records/${id}`, {}, { "if-match": "*" })).statusCode).toBe(412);
	});

	it("seals once: of eight at the same moment one wins, and the log has one entry of it", async () => {
		const id = await draft();
		const answers = await Promise.all(
			Array.from({ length: 8 }, () =>
				shop.ask("POST", `/api/v1/records/${id}/seal`, undefined, { "if-match": '"v1"' }),
			),
		);
		const statuses = answers.map((answer) => answer.statusCode).sort();
		expect(statuses).toEqual([200, 409, 409, 409, 409, 409, 409, 409]);
		const entries = await shop.db.database.query(
			"SELECT FROM entry_projection WHERE subject = $1 AND kind = 'record-sealed'",
			[id],
		);
		expect(entries).toHaveLength(1);
		expect((await shop.ask("PUT", `/api/v1/records/${id}`, {}, { "if-match": '"v2"' })).statusCode).toBe(409);
	});

	it("says everything that sealing misses, at once", async () => {
		const id = (
			await shop.ask("POST", `/api/v1/consignments/${scene.legId}/records`, {
				stage: "arrival",
				provenance: "reported-to",
			})
		).json().id;
		const answer = await shop.ask("POST", `/api/v1/records/${id}/seal`, undefined, { "if-match": '"v1"' });
		expect(codes(answer).sort()).toEqual([
			"/identity/serialNumber no-identity",
			"/observedAt missing",
			"/reported/channel missing",
			"/reported/receivedAt missing",
			"/reported/words missing",
			"/state missing",
		]);
	});

	it("creates once for one key, also for two requests at once, and refuses the key for another request", async () => {
		const create = (direction: string) =>
			shop.ask(
				"POST",
				`/api/v1/orders/${scene.orderId}/consignments`,
				{ direction, facts: { mode: "road", bookedBy: "consignor" } },
				{ "idempotency-key": "leg-7" },
			);
		const made = await Promise.all([create("to-owner"), create("to-owner"), create("to-owner")]);
		expect(new Set(made.map((answer) => answer.json().id)).size).toBe(1);
		expect((await create("to-repairer")).statusCode).toBe(409);
	});

	it("leads through lists with Link, each order once", async () => {
		for (let count = 0; count < 5; count += 1) await customerScene(shop);
		const seen: string[] = [];
		let url: string | undefined = "/api/v1/orders?limit=2";
		while (url !== undefined) {
			const answer = await shop.ask("GET", url);
			seen.push(...answer.json().orders.map((order: { id: string }) => order.id));
			url = /<([^>]+)>; rel="next"/.exec(String(answer.headers.link ?? ""))?.[1];
		}
		expect(new Set(seen).size).toBe(seen.length);
		expect(seen.length).toBeGreaterThanOrEqual(6);
	});
});
