/** The main job through the API, on a real database: order, departure, seal, arrival by link, receipts. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const order = {
	contractKind: "repair",
	repairer: { kind: "business", country: "DE", name: "Werkbank Nord" },
	owner: { kind: "consumer", country: "DE", name: "Ada Muster", email: "ada@example.org" },
	item: { class: "graphics-card", maker: "Borealis", model: "Lumen 7", serialNumber: "BL7-00042" },
	terms: {
		reportedFault: "Memory errors after ten minutes.",
		agreedWork: "Find and mend the memory fault.",
		carrierContract: { toRepairer: "owner", toOwner: "repairer" },
	},
};

describe("the main job through the API", () => {
	it("seals a departure, lets the owner seal an arrival by link, and gives receipts that prove both", async () => {
		const made = (await shop.ask("POST", "/api/v1/orders", order)).json();
		const leg = (
			await shop.ask("POST", `/api/v1/orders/${made.id}/consignments`, {
				direction: "to-owner",
				facts: { mode: "road", bookedBy: "consignor" },
			})
		).json();
		const draft = await shop.ask("POST", `/api/v1/consignments/${leg.id}/records`, {
			stage: "departure",
			depth: "short",
		});
		expect(draft.statusCode).toBe(201);
		const departureId = draft.json().id;
		const saved = await shop.ask(
			"PUT",
			`/api/v1/records/${departureId}`,
			{
				observedAt: "2026-03-02T10:00:00+01:00",
				state: "good",
				identity: { serialNumber: "BL7-00042", maker: "Borealis", model: "Lumen 7" },
				readings: [{ check: "starts-cold", condition: "cold", trials: 10, successes: 10 }],
				statement: "Ten cold starts, all good.",
			},
			{ "if-match": draft.headers.etag as string },
		);
		expect(saved.statusCode, saved.body).toBe(200);
		const sealed = await shop.ask("POST", `/api/v1/records/${departureId}/seal`, undefined, {
			"if-match": saved.headers.etag as string,
		});
		expect(sealed.statusCode, sealed.body).toBe(200);
		const receipt = sealed.json();
		expect(receipt.$format).toBe("handover-risk/receipt/2");
		const [opened, departed] = entriesIn(receipt);
		expect(opened).toMatchObject({ kind: "record-opened", subject: departureId, statement: null });
		expect(departed).toMatchObject({ kind: "record-sealed", subject: departureId, fits: true });
		const statementBytes = departed?.statement ?? Buffer.of();
		const text = statementBytes.toString("utf8");
		expect(text.startsWith('{"$format":"handover-risk/record/1"')).toBe(true);
		for (const typed of ["Borealis", "BL7-00042", "Ten cold starts"]) expect(text).not.toContain(typed);

		const again = await shop.ask("POST", `/api/v1/records/${departureId}/seal`, undefined, { "if-match": '"v2"' });
		expect(again.statusCode).toBe(409);

		const arrival = (
			await shop.ask("POST", `/api/v1/consignments/${leg.id}/records`, { stage: "arrival", depth: "short" })
		).json();
		const link = (
			await shop.ask("POST", "/api/v1/links", { scope: "record", orderId: made.id, recordId: arrival.id })
		).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: link.url.split("/").at(-1), code: link.code },
		});
		expect(entered.statusCode, entered.body).toBe(200);
		const cookie = `link=${entered.cookies[0]?.value}`;
		const asOwner = (
			method: "GET" | "PUT" | "POST",
			url: string,
			payload?: object,
			headers: Record<string, string> = {},
		) =>
			shop.app.inject({ method, url, headers: { cookie, ...headers }, ...(payload === undefined ? {} : { payload }) });
		const photo = await shop.app.inject({
			method: "POST",
			url: `/api/v1/records/${arrival.id}/exhibits?fileName=log.txt`,
			headers: { cookie, "content-type": "application/json" },
			payload: "not really JSON: it is a text",
		});
		expect(photo.statusCode, photo.body).toBe(201);
		const savedArrival = await asOwner(
			"PUT",
			`/api/v1/records/${arrival.id}`,
			{
				observedAt: "2026-03-05T18:00:00+01:00",
				state: "does-not-start",
				identity: { serialNumber: "BL7-00042" },
				readings: [{ check: "starts-cold", condition: "cold", trials: 3, successes: 0 }],
				exhibits: [{ sha256: photo.json().sha256, view: "other" }],
			},
			{ "if-match": '"v1"' },
		);
		expect(savedArrival.statusCode, savedArrival.body).toBe(200);
		const sealedArrival = await asOwner("POST", `/api/v1/records/${arrival.id}/seal`, undefined, {
			"if-match": '"v2"',
		});
		expect(sealedArrival.statusCode, sealedArrival.body).toBe(200);
		expect(entriesIn(sealedArrival.json()).filter((entry) => entry.fits && entry.statement !== null)).toHaveLength(2);
		const both = await asOwner("GET", `/api/v1/orders/${made.id}/records`);
		expect(both.json().records.map((record: { state: string }) => record.state)).toEqual(["sealed", "sealed"]);
	});
});
