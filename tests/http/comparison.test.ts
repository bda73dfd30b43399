/** The comparison's query: any two records, findings given for one answer, and what is refused. Own expectations. */
import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { comparisonView } from "../../src/contract/comparison.ts";
import { customerScene } from "../pages/customer-scene.ts";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

const scenario = (name: string) =>
	JSON.parse(readFileSync(new URL(`../../demo-data/scenarios/${name}.json`, import.meta.url), "utf8"));

let shop: TestApp;
let played: Played;
let path: string;
beforeAll(async () => {
	shop = await testApp();
	played = await playScenario(shop, scenario("s10a"));
	path = `/api/v1/consignments/${played.legIds[0]}/comparison`;
});
afterAll(async () => shop?.close());

const ask = async (query: string) => (await shop.ask("GET", `${path}?${query}`)).json();
const recordIds = () => played.view.records.map(({ recordId }) => recordId);

it("every member of the answer is in the schema, in depth", () => {
	const parsed = comparisonView.safeParse(played.view);
	expect(parsed.success ? [] : parsed.error.issues).toEqual([]);
});

it("lists the records in observed order and compares any two of them", async () => {
	const [departure, arrival, later] = recordIds();
	const got = await ask(`from=${departure}&to=${later}`);
	expect(got).toMatchObject({ departureRecordId: departure, arrivalRecordId: later, outcome: "compared" });
	expect(got.firstState, "the later record tells of no arrival").toBeNull();
	const stay = await ask(`from=${arrival}&to=${later}`);
	expect(stay.departureRecordId).toBe(arrival);
});

it("better in a later record of one holder is no conflict: work can have been done between", async () => {
	const owner = await playScenario(shop, scenario("s11"));
	const [, bad, good] = owner.view.records.map(({ recordId }) => recordId);
	const answer = await shop.ask("GET", `/api/v1/consignments/${owner.legIds[0]}/comparison?from=${bad}&to=${good}`);
	expect(answer.json()).toMatchObject({ outcome: "compared", betterOnArrival: ["state-of-item", "starts-cold"] });
});

describe("a long clean test before dispatch", () => {
	it.each([
		["hours under load without an error", "load", 0, 14, 24, "present"],
		["hours of an idle machine", "idle", 0, 14, 24, "absent"],
		["errors in them", "load", 1, 14, 24, "absent"],
		["too few starts", "load", 0, 13, 24, "absent"],
		["too few hours", "load", 0, 14, 1.9, "absent"],
	])("%s", async (_, condition, count, trials, hours, told) => {
		const identity = { serialNumber: "BM12-40118", maker: "Brookmere", model: "Heron 12" };
		const starts = (well: number, of: number) => ({
			check: "starts-cold",
			condition: "cold",
			trials: of,
			successes: well,
		});
		const errors = { check: "memory-errors", condition, count, exposure: { value: hours, unit: "h" } };
		const { view } = await playScenario(shop, {
			...{ id: "own", title: "own", benches: [], instruments: {}, legs: ["to-owner"], expect: {} },
			records: [
				{
					leg: 1,
					stage: "departure",
					content: {
						observedAt: "2026-03-02T10:00:00+01:00",
						state: "good",
						identity,
						readings: [starts(trials, trials), errors],
					},
				},
				{
					leg: 1,
					stage: "arrival",
					content: {
						observedAt: "2026-03-05T10:00:00+01:00",
						state: "does-not-start",
						identity,
						readings: [starts(0, 3)],
					},
				},
			],
		} as never);
		expect(view.origin?.findings.find(({ id }) => id === "long-clean-test-before")?.state).toBe(told);
	});
});

describe("a later record that is good", () => {
	const starts = (successes: number) => ({ check: "starts-cold", condition: "cold", trials: 10, successes });
	const state = (at: string, successes: number, host?: string) => ({
		observedAt: `2026-03-${at}:00+01:00`,
		state: successes === 10 ? "good" : "does-not-start",
		readings: [starts(successes)],
		identity: { serialNumber: "BM12-40118", maker: "Brookmere", model: "Heron 12" },
		...(host === undefined ? {} : { setUp: { host } }),
	});
	const findingsOf = async (leg: string, records: readonly object[]) => {
		const legs = ["to-repairer", "to-owner"];
		const { view } = await playScenario(shop, {
			...{ id: "own", title: "own", benches: [], instruments: {}, expect: {} },
			legs: leg === "to-repairer" ? legs : ["to-owner"],
			records,
		} as never);
		return view.origin?.findings.filter(({ id, state: told }) => id === "good-on-other-computer" && told === "present");
	};
	it("of the repairer's was mended, and tells nothing of another computer", async () => {
		const records = [
			{ leg: 1, stage: "departure", content: state("02T10:00", 10, "owner's computer") },
			{ leg: 1, stage: "arrival", content: state("05T10:00", 0, "test host 1") },
			{ leg: 2, stage: "departure", content: state("12T10:00", 10, "test host 2") },
		];
		expect(await findingsOf("to-repairer", records)).toEqual([]);
	});
	it.each([
		["a computer of another name", "a friend's computer", 1],
		["the same computer", "owner's computer", 0],
		["a computer that is not named", undefined, 0],
	])("of the owner's tells it for %s", async (_, host, count) => {
		const records = [
			{ leg: 1, stage: "departure", content: state("02T10:00", 10) },
			{ leg: 1, stage: "arrival", content: state("05T10:00", 0, "owner's computer") },
			{ leg: 1, stage: "arrival", content: state("06T10:00", 10, host) },
		];
		expect(await findingsOf("to-owner", records)).toHaveLength(count);
	});
});

describe("refused, with the member named", () => {
	it.each([
		["an id of another form", () => "from=rec_1", "/from"],
		["a record of no order", () => `from=rec_${"0".repeat(20)}`, "/from"],
		["the wrong way round", () => `from=${recordIds()[2]}&to=${recordIds()[1]}`, "/to"],
		["one record with itself", () => `from=${recordIds()[1]}&to=${recordIds()[1]}`, "/to"],
		["a finding without a rule", () => "present=phase-of-the-moon", "/present"],
		["a member that does not exist", () => "before=2026", "/before"],
	])("%s", async (_, query, member) => {
		const answer = await shop.ask("GET", `${path}?${query()}`);
		expect(answer.statusCode, answer.body).toBe(400);
		expect(answer.json().errors.map((error: { path: string }) => error.path)).toContain(member);
	});
	it("a record of another order is not told from one that does not exist", async () => {
		const other = await customerScene(shop);
		const answer = await shop.ask("GET", `${path}?from=${other.departureId}`);
		expect(answer.statusCode).toBe(400);
		expect(answer.json().errors[0]).toMatchObject({ path: "/from", code: "no-such-record" });
	});
});

describe("findings given with the request", () => {
	it("stand for this answer only, are marked as given, and go before what was derived", async () => {
		const given = await ask("present=reseating-cured&absent=marks-agree");
		const finding = (id: string) => given.origin.findings.find((one: { id: string }) => one.id === id);
		expect(finding("reseating-cured")).toMatchObject({ state: "present", given: true, recordIds: [] });
		expect(finding("marks-agree")).toMatchObject({ state: "absent", given: true });
		const again = await ask("");
		expect(again.origin.findings.some((one: { id: string }) => one.id === "reseating-cured")).toBe(false);
		expect(again.origin.findings.find((one: { id: string }) => one.id === "marks-agree")).toMatchObject({
			given: false,
		});
	});
	it("open the question where the records ask none", async () => {
		const well = await playScenario(shop, scenario("s03"));
		expect(well.view.origin).toBeNull();
		const asked = await shop.ask("GET", `/api/v1/consignments/${well.legIds[0]}/comparison?present=wetness-seen`);
		const moisture = asked.json().origin.origins.find((one: { id: string }) => one.id === "moisture");
		expect(moisture).toMatchObject({ support: "supports", for: [expect.objectContaining({ id: "wetness-seen" })] });
		// What was looked for and not found says that it was not found, wherever it counts.
		const looked = await shop.ask(
			"GET",
			`/api/v1/consignments/${well.legIds[0]}/comparison?present=parcel-damaged&absent=wetness-seen`,
		);
		const dry = looked.json().origin.origins.find((one: { id: string }) => one.id === "moisture");
		expect(dry.against).toEqual([{ id: "wetness-seen", says: "No moisture, residue or wet indicator was found." }]);
	});
});

it("times that can not be true together are pointed out, with the records that hold them", async () => {
	const base = scenario("s12");
	const [departure, arrival] = base.records;
	// Less than a day the wrong way round: more is refused at the seal.
	const late = { ...arrival.content, parcel: { inHandAt: "2026-03-07T10:00:00+01:00" } };
	const twisted = await playScenario(shop, { ...base, query: {}, records: [departure, { ...arrival, content: late }] });
	const found = twisted.view.origin?.findings.find(({ id }) => id === "record-contradicts-itself");
	expect(found).toMatchObject({ state: "present", given: false, recordIds: [twisted.view.arrivalRecordId] });
	const sound = await playScenario(shop, { ...base, query: {} });
	expect(sound.view.origin?.findings.some(({ id }) => id === "record-contradicts-itself")).toBe(false);
});

it("numbers at the edge of what a record takes give an answer and a page, never a 500", async () => {
	const base = scenario("s12");
	const [departure, arrival] = base.records;
	const masses = (...values: number[]) => ({
		check: "mass",
		instrumentId: "meter-1",
		values: values.map((value) => ({ value, unit: "g" })),
	});
	const own = [{ id: "meter-1", label: "scale", unit: "g", percentOfReading: 100, counts: 10_000, resolution: 1e15 }];
	const with_ = (record: typeof arrival, ...values: number[]) => ({
		...record,
		content: { ...record.content, ownInstruments: own, readings: [masses(...values)] },
	});
	for (const [left, came] of [
		[[1e15, 1e15], [5e-324]],
		[[-1e15, 1e15], [1e15]],
		[[1e-300, 2e-300], [0]],
	] as const) {
		const records = [with_(departure, ...left), with_(arrival, ...came)];
		const { view } = await playScenario(shop, { ...base, query: {}, records });
		expect(comparisonView.safeParse(view).success).toBe(true);
	}
	const draft = { stage: "arrival", content: with_(arrival, 1e16).content };
	const refused = await shop.ask("POST", `/api/v1/consignments/${played.legIds[0]}/records`, draft);
	expect(refused.statusCode).toBe(400);
	expect(refused.json().errors[0].path).toBe("/content/readings/0/values/0/value");
});

it("a derived finding names the records it was read from", async () => {
	const [departure, arrival] = recordIds();
	const { origin } = await ask("");
	expect(origin.findings.find((one: { id: string }) => one.id === "marks-agree").recordIds).toEqual([
		departure,
		arrival,
	]);
	expect(origin.findings.find((one: { id: string }) => one.id === "good-on-arrival").recordIds).toHaveLength(2);
});

it("both values stand with their intervals: ten of ten cold starts leave up to 31 % of misses open (Clopper and Pearson)", async () => {
	const { checks } = await ask("");
	const starts = checks.find((row: { check: string }) => row.check === "starts-cold");
	expect(starts.departure).toMatchObject({ trials: 10, successes: 10, estimate: { value: 1, of: "share" } });
	expect(starts.departure.estimate.interval[0]).toBeCloseTo(0.6915, 4); // 0.025^(1/10)
	expect(starts.arrival.estimate.interval[1]).toBe(1);
});
