/** Sealing the pack as shipped, over the API and on the real database. */
import { createHash } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUE_VERSION } from "../../../src/catalogue/checks/checks.ts";
import { customerScene, type Scene } from "../../pages/customer-scene.ts";
import { entriesIn } from "../../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { CARD_PACK } from "./pack-request.ts";

let shop: TestApp;
let scene: Scene;
let path: string;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	path = `/api/v1/consignments/${scene.legId}/packaging-assessments`;
});
afterAll(async () => shop?.close());

const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");
async function countOf(sql: string): Promise<number> {
	const [row] = await shop.db.database.query<{ count: string }>(sql);
	return Number(row?.count);
}
/** A caller who came in by a link. */
async function enter(link: { url: string; code: string }): Promise<string> {
	const entered = await shop.app.inject({
		method: "POST",
		url: "/api/v1/links/enter",
		payload: { token: link.url.split("/").at(-1), code: link.code },
	});
	return `link=${entered.cookies[0]?.value}`;
}

describe("the pack as shipped", () => {
	it("is sealed as computed, typed texts behind commitments, and stands in every receipt of the order", async () => {
		const made = await shop.ask("POST", path, CARD_PACK);
		expect(made.statusCode, made.body).toBe(201);
		const view = made.json();
		expect(view.statement.$format).toBe("handover-risk/assessment/1");
		expect(view.statement.orderId).toBe(scene.orderId);
		expect(view.statement.catalogueVersion).toBe(CATALOGUE_VERSION);
		expect(view.statement.result.result.verdict).toBe("falls-short");
		const top = view.statement.result.result.checks.find((check: { id: string }) => check.id === "cushion-top");
		expect(top.value).toBeCloseTo(120.3, 1);
		expect(top.why).toEqual({ sentence: "packaging.pad-too-large", values: expect.any(Object) });
		expect(view.statement.pack.closedHow).toBe("tape in an H");

		const receipt = (await shop.ask("GET", `/api/v1/records/${scene.departureId}/receipt`)).json();
		const inReceipt = entriesIn(receipt).find((entry) => entry.subject === view.id);
		expect(inReceipt?.kind).toBe("assessment-sealed");
		const bytes = inReceipt?.statement ?? Buffer.of();
		expect(sha256(bytes)).toBe(view.fingerprint);
		expect(inReceipt?.statementSha256).toBe(view.fingerprint);
		// Free text never stands in the sealed bytes; the openings beside them carry it.
		expect(bytes.toString("utf8")).not.toContain("tape in an H");
		expect(bytes.toString("utf8")).not.toContain("S541-2018");
		const opened = inReceipt?.openings.map((opening) => opening.value).sort();
		expect(opened).toEqual(["ANSI/ESD S541-2018", "tape in an H"]);
	});

	it("is sealed once for one key, and another request with that key is refused", async () => {
		const before = await countOf("SELECT count(*) FROM packaging_assessment");
		const key = { "idempotency-key": "parcel-1" };
		const [first, second] = await Promise.all([
			shop.ask("POST", path, CARD_PACK, key),
			shop.ask("POST", path, CARD_PACK, key),
		]);
		expect([first.statusCode, second.statusCode]).toEqual([201, 201]);
		expect(first.json().id).toBe(second.json().id);
		expect(await countOf("SELECT count(*) FROM packaging_assessment")).toBe(before + 1);
		const other = { ...CARD_PACK, item: { ...CARD_PACK.item, massKg: 1 } };
		expect((await shop.ask("POST", path, other, key)).statusCode).toBe(409);
	});

	it("is never kept when it is only planned or not understood", async () => {
		const entries = await countOf("SELECT count(*) FROM sealed_entry");
		expect((await shop.ask("POST", "/api/v1/calculations/packaging", CARD_PACK)).statusCode).toBe(200);
		const odd = structuredClone(CARD_PACK) as typeof CARD_PACK;
		odd.pack.faces.top.layers = [{ foam: { id: "no-such-foam" }, thicknessM: 0.05, fullFace: true }];
		const refused = await shop.ask("POST", path, odd);
		expect(refused.statusCode).toBe(400);
		expect(refused.body).toContain("/pack/faces/top/layers/0/foam/id");
		expect((await shop.ask("POST", path, { ...CARD_PACK, verdict: "meets" })).statusCode).toBe(400);
		expect(await countOf("SELECT count(*) FROM sealed_entry")).toBe(entries);
	});

	it("is read by the links of its order and by no others, and sealed by the shop alone", async () => {
		const owner = await enter(scene.link);
		const read = await shop.app.inject({ method: "GET", url: path, headers: { cookie: owner } });
		expect(read.statusCode, read.body).toBe(200);
		expect(read.json().assessments.length).toBeGreaterThan(0);
		const sealing = await shop.app.inject({
			method: "POST",
			url: path,
			headers: { cookie: owner },
			payload: CARD_PACK,
		});
		expect(sealing.statusCode).toBe(403);
		const stranger = await enter((await customerScene(shop)).link);
		expect((await shop.app.inject({ method: "GET", url: path, headers: { cookie: stranger } })).statusCode).toBe(404);
		expect((await shop.app.inject({ method: "GET", url: path })).statusCode).toBe(401);
	});
});
