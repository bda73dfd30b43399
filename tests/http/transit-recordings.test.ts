/** Recorders' files over the API, on the real database: brought, confirmed, placed, set against the sealed pack, and refused. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ComparisonView } from "../../src/contract/comparison.ts";
import { CARD_PACK } from "../operations/packaging/pack-request.ts";
import { inventedTable, MAPPING, READING } from "../operations/transit-recordings/invented-trip.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
});
afterAll(async () => shop?.close());

const TABLE = inventedTable({
	rateHz: 2000,
	lengthS: 4,
	impacts: [{ atS: 2, peakGn: 60, durationMs: 12, fallS: 0.394 }],
});

const bring = (table: string | Buffer, reading?: object, leg = scene.legId) =>
	shop.app.inject({
		method: "POST",
		url: `/api/v1/consignments/${leg}/transit-recordings?fileName=trip.csv${reading === undefined ? "" : `&reading=${encodeURIComponent(JSON.stringify(reading))}`}`,
		headers: { authorization: `Bearer ${shop.token}`, "content-type": "text/csv" },
		payload: table,
	});
const list = async () =>
	(await shop.ask("GET", `/api/v1/consignments/${scene.legId}/transit-recordings`)).json().recordings;

describe("a recorder's file", () => {
	it("waits with its columns until someone confirms them, and the next of its kind is remembered", async () => {
		const brought = await bring(TABLE);
		expect(brought.statusCode, brought.body).toBe(201);
		const { recording, preview } = brought.json();
		expect(recording).toMatchObject({ fileName: "trip.csv", reading: null, result: null });
		expect(preview.columns).toMatchObject([
			{ column: 1, quantity: "time", unit: "s" },
			{ column: 2, quantity: "acceleration", unit: "g" },
			{},
			{},
			{ quantity: "temperature", unit: "degC" },
			{ quantity: "humidity", unit: "%" },
		]);
		expect(preview.remembered).toBeNull();
		expect(preview.rows).toHaveLength(8);
		const confirmed = await shop.ask("PUT", `/api/v1/transit-recordings/${recording.id}/reading`, READING);
		expect(confirmed.statusCode, confirmed.body).toBe(200);
		expect(confirmed.json().result).toMatchObject({ rows: 8000, eventsFound: 1, startsAt: "2026-03-03T08:00:00.000Z" });
		const [event] = confirmed.json().result.events;
		expect(event).toMatchObject({ number: 1, peakDoubt: null, at: "2026-03-03T08:00:02.006Z" });
		// 0.394 s are 761 mm (reference page, section 6).
		expect(event.freeFallDropBandM[0]).toBeLessThan(0.761);
		expect(event.freeFallDropBandM[1]).toBeGreaterThan(0.761);
		expect(event.spectrum).toHaveLength(40);
		const next = await bring(inventedTable({ rateHz: 2000, lengthS: 1, impacts: [] }));
		expect(next.json().preview.remembered).toEqual(MAPPING);
		const file = await shop.ask("GET", `/api/v1/transit-recordings/${recording.id}/file`);
		expect(file.body).toBe(TABLE);
	});

	it("that changes its rate has each impact's own, on the page too; one read before rates could change stays readable", async () => {
		const other = await customerScene(shop);
		const seconds = (from: number, count: number) =>
			Array.from({ length: count }, (_, index) => `${(from + index).toFixed(5)},0,0,${index === 20 ? 30 : 1},,`);
		// The table's rows one minute on, between two slow stretches.
		const fast = TABLE.split("\n")
			.slice(2, -1)
			.map((line) => line.replace(/^[^,]+/, (time) => (60.5 + Number(time)).toFixed(5)));
		const slow = ["t,x,y,z,temp,rh", ...seconds(0, 60), ...fast, ...seconds(65, 60), ""].join("\n");
		const brought = await bring(slow, READING, other.legId);
		expect(brought.statusCode, brought.body).toBe(201);
		const { id, result } = brought.json().recording;
		const rounded = ({ sampleRateHz }: { sampleRateHz: number }) => Math.round(sampleRateHz);
		expect(result.rates.map(rounded)).toEqual([1, 2000]);
		expect(
			result.events.map((event: { sampleRateHz: number; peakDoubt: string }) => [rounded(event), event.peakDoubt]),
		).toEqual([
			[1, "few-samples"],
			[2000, null],
			[1, "few-samples"],
		]);
		const url = `/orders/${other.orderId}/consignments/${other.legId}/recordings/${id}`;
		const page = () => shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
		const now = await page();
		expect(now.body).toContain("at 1 to 2000 samples a second");
		expect(now.body).toContain("Sampled 2000 times a second.");
		expect(now.body).toContain("not taken");

		await shop.db.database.query(
			`UPDATE transit_recording SET trip = trip::jsonb - 'rates' || '{"sampleRateHz": 2000}' WHERE id = $1`,
			[id],
		);
		const { recordings } = (await shop.ask("GET", `/api/v1/consignments/${other.legId}/transit-recordings`)).json();
		expect(recordings[0].result.rates).toEqual([{ sampleRateHz: 2000, rows: result.rows }]);
		expect((await page()).body).toContain("at 2000 samples a second");
	});

	it("is read by a link of the order, which cannot bring one", async () => {
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: scene.orderId })).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: link.url.split("/").at(-1), code: link.code },
		});
		const headers = { cookie: `link=${entered.cookies[0]?.value}` };
		const url = `/api/v1/consignments/${scene.legId}/transit-recordings`;
		const seen = await shop.app.inject({ method: "GET", url, headers });
		expect(seen.statusCode, seen.body).toBe(200);
		expect(seen.json().recordings[0].result.events).toHaveLength(1);
		const own = await shop.app.inject({ method: "POST", url: `${url}?fileName=x`, headers, payload: "a" });
		expect(own.statusCode).toBe(403);
	});

	it("is not placed while the order has one record, nor compared without a sealed pack", async () => {
		const [{ result }] = await list();
		expect(result.events[0].place).toMatchObject({ status: "cannot-be-placed", spans: [] });
		expect(result.events[0].peakAgainstLimit.verdict).toBe("not-comparable");
	});

	it("is refused with line and reason, and then not kept", async () => {
		const before = (await list()).length;
		const broken = TABLE.replace("\n0.00100,0,0", "\n0.00100,0,broken");
		const answer = await bring(broken, READING);
		expect(answer.statusCode).toBe(400);
		expect(answer.json().errors[0]).toMatchObject({ path: "/file", code: "import-refused-at" });
		expect(answer.json().errors[0].message).toMatch(/line 5\. Column 3 .*broken/);
		for (const [table, reading] of [
			["", undefined],
			[Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]), undefined],
			["one line without columns\nanother\n", undefined],
			[TABLE, { ...READING, unitsConfirmed: false }],
			[TABLE, { ...READING, place: "somewhere" }],
			[TABLE, { ...READING, place: undefined }],
			[TABLE, { ...READING, mapping: { ...MAPPING, axes: [MAPPING.axes[0], MAPPING.axes[0]] } }],
			[TABLE, { ...READING, mapping: { ...MAPPING, time: { column: 40, unit: "s" } } }],
		] as const) {
			const refused = await bring(table, reading);
			expect(refused.statusCode, refused.body).toBe(400);
		}
		expect(await list()).toHaveLength(before);
	});
});

describe("an event of a recording", () => {
	let legId = "";
	beforeAll(async () => {
		await shop.ask(
			"PUT",
			`/api/v1/consignments/${scene.legId}`,
			{
				mode: "road",
				bookedBy: "consignor",
				dispatchedAt: "2026-03-02T17:00:00Z",
				deliveredAt: "2026-03-04T09:00:00Z",
			},
			{ "if-match": '"v1"' },
		);
		const saved = await shop.ask(
			"PUT",
			`/api/v1/records/${scene.recordId}`,
			{ observedAt: "2026-03-04T12:00:00Z", state: "good", identity: { serialNumber: "OW24-7731-C" } },
			{ "if-match": '"v1"' },
		);
		expect(saved.statusCode, saved.body).toBe(200);
		const sealed = await shop.ask("POST", `/api/v1/records/${scene.recordId}/seal`, undefined, { "if-match": '"v2"' });
		expect(sealed.statusCode, sealed.body).toBe(200);
		legId = scene.legId;
		const assessed = await shop.ask("POST", `/api/v1/consignments/${legId}/packaging-assessments`, CARD_PACK);
		expect(assessed.statusCode, assessed.body).toBe(201);
	});

	const event = async (change: object, table = TABLE) => {
		const brought = await bring(table, { ...READING, ...change });
		expect(brought.statusCode, brought.body).toBe(201);
		return brought.json().recording.result.events[0];
	};

	it("lies in the span of the transit; with a clock that is two days off in one of several; without a clock in none", async () => {
		const inside = await event({});
		expect(inside.place).toMatchObject({ status: "in-span", spans: [{ kind: "transit", consignmentId: legId }] });
		expect((await event({ clockUncertaintyS: 200_000 })).place.status).toBe("in-one-of");
		expect((await event({ clockUncertaintyS: undefined })).place.status).toBe("cannot-be-placed");
		expect((await event({ startsAt: undefined })).place.status).toBe("cannot-be-placed");
		expect((await event({ startsAt: "2025-03-03T08:00:00Z" })).place.status).toBe("outside");
	});

	it("is a finding of the comparison, in its own figures; findings that nobody made no longer name it", async () => {
		await event({});
		const answer = await shop.ask("GET", `/api/v1/consignments/${legId}/comparison?present=parcel-damaged`);
		const { origin } = answer.json() as ComparisonView;
		const found = origin?.findings.find(({ id }) => id === "shock-beyond-design");
		expect(found).toMatchObject({ state: "present", given: false, recordIds: [] });
		expect(found?.recordingIds).toHaveLength(1);
		expect(found?.says).toMatch(/impact 1\) logged .* gₙ on the way.*Recordings are not sealed/);
		const shock = origin?.origins.find(({ id }) => id === "transit-shock");
		expect(shock?.for.map(({ says }) => says)).toContain(found?.says);
		const missing = origin?.origins.flatMap(({ missing: { transit } }) => transit.map(({ id }) => id));
		expect(missing).not.toContain("shock-beyond-design");
		expect(missing).not.toContain("no-shock-recorded");
		const url = `/orders/${scene.orderId}/consignments/${legId}/comparison?present=parcel-damaged`;
		const page = await shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
		expect(page.body).toContain(found?.says);
	});

	it("says of the item's peak only what its place carries", async () => {
		expect((await event({})).peakAgainstLimit.verdict).not.toBe("not-comparable");
		for (const place of ["on-inner-box", "on-outer-box", "in-cushion", "not-known"])
			expect((await event({ place })).peakAgainstLimit.verdict, place).toBe("not-comparable");
		expect((await event({ place: "on-outer-box" })).peakAgainstLimit.why).toContain("says nothing of the item's peak");
		expect((await event({ device: "phone" })).peakAgainstLimit.verdict).toBe("not-comparable");
		// The whole parcel falls: the time of the fall says its height from every place.
		for (const place of ["on-outer-box", "in-cushion", "not-known"])
			expect((await event({ place })).dropAgainstPack.verdict, place).not.toBe("not-comparable");
	});
});

it("a person's erasure takes the file and its name, and leaves numbers", async () => {
	const order = (await shop.ask("GET", `/api/v1/orders/${scene.orderId}`)).json();
	const gone = await shop.ask("POST", `/api/v1/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
	expect(gone.statusCode, gone.body).toBeLessThan(300);
	const [recording] = await list();
	expect(recording.fileName).not.toContain("trip");
	expect(recording.result.events).toHaveLength(1);
	expect((await shop.ask("GET", `/api/v1/transit-recordings/${recording.id}/file`)).statusCode).toBe(410);
	expect((await bring(TABLE)).statusCode).toBe(410);
});
