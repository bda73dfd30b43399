/** Positions over the API and on their page, on the real database: every kind of caller, the sealed form, the receipt. */
import { createHash } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { entriesIn } from "../../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { type Sides, sidesOf, WHO } from "./sides.ts";

let shop: TestApp;
let sides: Sides;
beforeAll(async () => {
	shop = await testApp();
	sides = await sidesOf(shop);
});
afterAll(async () => shop?.close());

const TYPED = "It started ten times before I packed it.\nThe fan was quiet.";
const state = (who: (typeof WHO)[number], body: object) => sides.as(who, "POST", "/positions", body);

describe("who may state and who may read", () => {
	it.each([
		["repairer", 201, 200],
		["owner", 201, 200],
		["reader", 403, 200],
		["record link", 403, 200],
		["link of another order", 404, 404],
		["withdrawn link", 401, 401],
		["nobody", 401, 401],
	] as const)("as %s", async (who, stating, reading) => {
		expect((await state(who, { kind: "states", text: `by ${who}` })).statusCode).toBe(stating);
		expect((await sides.as(who, "GET", "/positions")).statusCode).toBe(reading);
	});
	it("covers every kind of caller", () => {
		expect(WHO).toHaveLength(7);
	});
	it("speaks for the side of the caller, and for no other", async () => {
		const { positions } = (await sides.as("reader", "GET", "/positions")).json();
		expect(positions.map(({ number, partyId }: Record<string, unknown>) => [number, partyId])).toEqual([
			[1, sides.repairerId],
			[2, sides.ownerId],
		]);
		expect((await state("owner", { kind: "states", text: "x", partyId: sides.repairerId })).statusCode).toBe(400);
	});
});

describe("what is sealed", () => {
	it("holds ids, codes and hashes in plain, the typed text as a commitment, and stands in the receipt", async () => {
		const first = (await sides.as("reader", "GET", "/positions")).json().positions[0];
		const made = await state("owner", {
			kind: "offers-test",
			text: TYPED,
			consignmentId: sides.scene.legId,
			recordIds: [sides.scene.departureId],
			checkIds: ["starts-cold"],
			answers: { positionId: first.id, stance: "partly-agrees" },
			test: { id: "inspection", doneBy: "neutral", dates: ["2026-03-09", "2026-03-10"] },
		});
		expect(made.statusCode, made.body).toBe(201);
		const view = made.json();
		expect(view).toMatchObject({ number: 3, text: TYPED, answers: { number: 1, stance: "partly-agrees" } });
		for (const who of ["repairer", "owner", "reader"] as const) {
			const answer = await sides.as(who, "GET", `/sealed/${view.id}/receipt`);
			expect(answer.statusCode, answer.body).toBe(200);
			const { outcome, checks, about } = verifyReceipt(Buffer.from(answer.rawPayload));
			expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
			expect([outcome, about]).toEqual(["verified", view.id]);
			const entry = entriesIn(answer.json()).find(({ subject }) => subject === view.id);
			expect(entry?.kind).toBe("position-sealed");
			const bytes = entry?.statement ?? Buffer.of();
			expect(createHash("sha256").update(bytes).digest("hex")).toBe(view.fingerprint);
			expect(bytes.toString("utf8")).not.toContain("started");
			expect(JSON.parse(bytes.toString("utf8"))).toEqual({
				$format: "handover-risk/position/1",
				answers: { positionId: first.id, stance: "partly-agrees", statementSha256: first.fingerprint },
				checkIds: ["starts-cold"],
				consignmentId: sides.scene.legId,
				kind: "offers-test",
				orderId: sides.scene.orderId,
				partyId: sides.ownerId,
				positionId: view.id,
				recordIds: [sides.scene.departureId],
				test: { dates: ["2026-03-09", "2026-03-10"], doneBy: "neutral", id: "inspection" },
				text: { commitment: expect.stringMatching(/^[0-9a-f]{64}$/) },
			});
			expect(entry?.openings.map(({ value }) => value)).toEqual([TYPED]);
		}
		// A record's receipt of the order holds it as well.
		const record = await shop.ask("GET", `/api/v1/records/${sides.scene.departureId}/receipt`);
		expect(entriesIn(record.json()).some(({ subject }) => subject === view.id)).toBe(true);
		expect(verifyReceipt(Buffer.from(record.rawPayload)).outcome).toBe("verified");
		expect((await sides.as("link of another order", "GET", `/sealed/${view.id}/receipt`)).statusCode).toBe(404);
	});

	it("takes no id that the order does not have, and answers the other side alone", async () => {
		const [first] = (await sides.as("reader", "GET", "/positions")).json().positions;
		const none = "0".repeat(20);
		for (const [extra, place] of [
			[{ consignmentId: `con_${none}` }, "/consignmentId"],
			[{ recordIds: [`rec_${none}`] }, "/recordIds/0"],
			// A draft is not sealed: nothing can rest on it.
			[{ recordIds: [sides.scene.recordId] }, "/recordIds/0"],
			[{ checkIds: ["Mara's own words"] }, "/checkIds/0"],
			[{ answers: { positionId: `pos_${none}`, stance: "agrees" } }, "/answers/positionId"],
			[{ answers: { positionId: first.id, stance: "agrees" } }, "/answers/positionId"],
			[{ kind: "asks-for-test" }, "/test"],
			[{ test: { id: "reseat", doneBy: "owner" } }, "/test"],
			[{ text: "" }, "/text"],
			[{ text: "a\u0000" }, "/text"],
		] as const) {
			const refused = await state("repairer", { kind: "states", text: "x", ...extra });
			expect(refused.statusCode, refused.body).toBe(400);
			expect(refused.body).toContain(`"${place}"`);
		}
	});

	it("is sealed once for one key", async () => {
		const ask = () =>
			shop.ask(
				"POST",
				`/api/v1/orders/${sides.scene.orderId}/positions`,
				{ kind: "states", text: "once" },
				{ "idempotency-key": "p1" },
			);
		const [one, two] = await Promise.all([ask(), ask()]);
		expect([one.statusCode, two.statusCode]).toEqual([201, 201]);
		expect(one.json().id).toBe(two.json().id);
	});
});

describe("the page", () => {
	const page = (headers: Record<string, string>) =>
		shop.app.inject({ url: `/orders/${sides.scene.orderId}/positions`, headers });
	it("is a document of numbered statements that lead to each other, with the form for a side", async () => {
		const html = (await page({ authorization: `Bearer ${shop.token}` })).body;
		expect(html).toMatch(/<h2>1\. Werkbank Lindental states<\/h2>/);
		expect(html).toContain('<a href="#statement-1">Answers statement 1: agrees in part.</a>');
		expect(html).toContain("Answered in 3.");
		expect(html).toContain("It started ten times");
		expect(html).toContain("Seal this statement");
		expect(html).not.toMatch(/ style=|<script(?! type="module" src="\/assets\/)/);
	});
	it("takes the form, keeps what was typed where it is wrong, and shows a reader no form", async () => {
		const { cookie } = { cookie: shop.sessionCookie };
		const html = (await page({ cookie })).body;
		const field = (name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(html)?.[1] ?? "";
		const post = (fields: Record<string, string>) =>
			shop.app.inject({
				method: "POST",
				url: `/orders/${sides.scene.orderId}/positions`,
				headers: { cookie, "content-type": "application/x-www-form-urlencoded" },
				payload: new URLSearchParams({
					formToken: field("formToken"),
					sealKey: field("sealKey"),
					...fields,
				}).toString(),
			});
		const wrong = await post({ kind: "asks-for-test", text: "keep <me>", "test.dates": "tomorrow" });
		expect(wrong.statusCode).toBe(400);
		expect(wrong.body).toContain("keep &lt;me>");
		const asked = { kind: "asks-for-test", text: "please", "test.id": "reseat", "test.dates": "2026-03-11" };
		// Who does it is not chosen for anybody, and a test is not dropped because the kind does not fit.
		expect((await post(asked)).statusCode).toBe(400);
		expect((await post({ ...asked, kind: "states" })).statusCode).toBe(400);
		const right = await post({ ...asked, "test.doneBy": "owner" });
		expect(right.statusCode, right.body).toBe(303);
		const again = await post({ ...asked, "test.doneBy": "owner" });
		expect(again.headers.location).toBe(right.headers.location);
	});
});
