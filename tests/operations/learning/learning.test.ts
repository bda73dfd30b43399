/** What the database's legs teach, against the lines that they were played from; the page; the table, safe in a spreadsheet. */
import type { AddressInfo } from "node:net";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { csvOf } from "../../../src/operations/learning/csv.ts";
import { DemoClient } from "../../../src/start/demo/demo-client.ts";
import { type InventedOrder, inventedYear } from "../../../src/start/demo/invented-year.ts";
import { playYear } from "../../../src/start/demo/play-year.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { PRONOUNCES, TRANSPOSES } from "../../texts/pronounces.ts";

let shop: TestApp;
let lines: InventedOrder[];
beforeAll(async () => {
	shop = await testApp();
	await shop.app.listen({ port: 0, host: "127.0.0.1" });
	const { port } = shop.app.server.address() as AddressInfo;
	const client = new DemoClient(`http://127.0.0.1:${port}`, { authorization: `Bearer ${shop.token}` });
	// Every outcome, and both of every near miss.
	const year = inventedYear();
	const wanted: ((order: InventedOrder) => boolean)[] = [
		...(["as-left", "changed", "dead", "untested", "silent"] as const).map(
			(outcome) => (order: InventedOrder) => order.outcome === outcome,
		),
		...(["padsShifted", "cornersCrushed", "tagTripped", "newErrors"] as const).map(
			(name) => (order: InventedOrder) => order[name] === true,
		),
	];
	const chosen = new Set(wanted.flatMap((one) => year.filter(one).slice(0, 2)));
	lines = [...chosen, { ...(year[0] as InventedOrder), number: 401, carrier: "=1+1", outcome: "silent" }];
	await playYear({ client, benchId: "", meterId: "", scaleId: "" }, lines);
}, 120_000);
afterAll(async () => shop?.close());

const get = (url: string) => shop.app.inject({ url, headers: { cookie: shop.sessionCookie } });
const table = async () =>
	parse((await get("/learning.csv")).body, { columns: true, skip_empty_lines: true }) as Record<string, string>[];

describe("the table", () => {
	it("counts what the lines say", async () => {
		const rows = await table();
		const all = rows.find(({ factor }) => factor === "all") ?? expect.fail("a row of all");
		expect(all.legs).toBe(String(lines.length));
		for (const outcome of ["as-left", "changed", "dead", "untested", "silent"])
			expect([outcome, all[outcome]]).toEqual([
				outcome,
				String(lines.filter((line) => line.outcome === outcome).length),
			]);
		for (const [event, name] of [
			["pads-shifted", "padsShifted"],
			["corner-crushed", "cornersCrushed"],
			["tag-tripped", "tagTripped"],
			["new-correctable-errors", "newErrors"],
		] as const) {
			// A silent leg has no record that could tell of a tag or of errors.
			const told = lines.filter(
				(line) =>
					line[name] !== null && (event.includes("s-shift") || event.includes("r-crush") || line.outcome !== "silent"),
			);
			expect([event, all[`${event} known`]]).toEqual([event, String(told.length)]);
			expect([event, all[`${event} seen`]]).toEqual([event, String(told.filter((line) => line[name] === true).length)]);
		}
		const silent = lines.filter(({ outcome }) => outcome === "silent").length;
		expect(all["link-unanswered seen"]).toBe(String(silent));
		for (const carrier of new Set(lines.map((line) => line.carrier))) {
			const group = rows.find((row) => row.factor === "carrier" && row.group?.replace(/^'/, "") === carrier);
			expect(group?.legs).toBe(String(lines.filter((line) => line.carrier === carrier).length));
		}
		const soaks = rows.filter(({ factor }) => factor === "soak").map(({ group }) => group);
		// An hour of counting errors under load is soak too.
		expect(soaks).toContain("under 2 h");
		expect(soaks).toContain("24 h and more");
		expect(rows.filter(({ factor }) => factor === "foam")).toHaveLength(new Set(lines.map(({ foam }) => foam)).size);
		expect(rows.filter(({ factor }) => factor === "pack")).toHaveLength(new Set(lines.map(({ box }) => box)).size);
	});
	it("holds no cell that a spreadsheet would run, also where a carrier is named like a formula", async () => {
		const body = (await get("/learning.csv")).body;
		expect(body).toContain(`"'=1+1"`);
		for (const row of await table()) for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
	});
	it.each(["=1", "+1", "-1", "@a", "\ta", "\ra", " =1", "\n=1", '=cmd|" /C"!A0'])(
		"opens %j with an apostrophe",
		(cell) => {
			expect(parse(csvOf([[cell]]))).toEqual([[`'${cell}`]]);
		},
	);
	it("leaves other cells as they are, with quotes and lines in them", () => {
		const cells = ['a "b", c', "two\nlines", "1-2", "ä", ""];
		expect(parse(csvOf([cells]))).toEqual([cells]);
	});
});

describe("the answer", () => {
	it("has the figures of the table, and as many rows", async () => {
		const answer = await shop.ask("GET", "/api/v1/learning");
		expect(answer.statusCode, answer.body).toBe(200);
		const { status, result, cautions } = answer.json();
		expect(status).toBe("assessed");
		expect(cautions.join(" ")).toContain("names no cause");
		const groups: [string, Record<string, unknown> & { shares: Record<string, Record<string, unknown>> }][] = [
			["all", result.all],
			...["carrier", "pack", "foam", "soak"].flatMap((factor) => result.by[factor].map((one: object) => [factor, one])),
		];
		const rows = await table();
		expect(groups).toHaveLength(rows.length);
		const asText = (value: unknown) => (value === null || value === undefined ? "" : String(value));
		for (const [place, [factor, { legs, outcomes, shares }]] of groups.entries()) {
			const row = rows[place] ?? {};
			expect([factor, asText(legs)]).toEqual([row.factor, row.legs]);
			for (const [outcome, count] of Object.entries(outcomes as object)) expect(asText(count)).toBe(row[outcome]);
			for (const [event, share] of Object.entries(shares)) {
				const [low, high] = (share.interval as number[] | null) ?? [];
				expect(["seen", "known", "unknown", "share"].map((name) => asText(share[name]))).toEqual(
					["seen", "known", "unknown", "share"].map((name) => row[`${event} ${name}`]),
				);
				expect([low, high, share.allGood, share.allBad].map(asText)).toEqual(
					["low", "high", "all-others-good", "all-others-bad"].map((name) => row[`${event} ${name}`]),
				);
			}
		}
	});
	it("is the shop's alone, and says why where nothing has left", async () => {
		expect((await shop.app.inject({ url: "/api/v1/learning" })).statusCode).toBe(401);
		const empty = await testApp();
		const answer = await empty.ask("GET", "/api/v1/learning");
		expect(answer.json()).toMatchObject({ status: "not-assessed", result: null, reason: { code: "no-legs" } });
		await empty.close();
	});
});

describe("the page", () => {
	it("shows shares with their bounds, marks few, and names no cause", async () => {
		const page = await get("/learning");
		expect(page.statusCode).toBe(200);
		const words = page.body.replace(/<footer[\s\S]*/, "").replace(/<[^>]+>/g, " ");
		expect(words).toContain("Silent");
		expect(words).toContain("few");
		expect(words).toContain("names no cause");
		expect(PRONOUNCES.exec(words)?.[0] ?? null).toBeNull();
		expect(TRANSPOSES.exec(words)?.[0] ?? null).toBeNull();
		expect(page.body).toMatch(/<svg[^>]*role="img"[^>]*aria-labelledby/);
	});
	it("is the shop's alone", async () => {
		expect((await shop.app.inject({ url: "/learning.csv" })).statusCode).not.toBe(200);
	});
	it("says that there is nothing yet where nothing has left", async () => {
		const empty = await testApp();
		const page = await empty.app.inject({ url: "/learning", headers: { cookie: empty.sessionCookie } });
		expect(page.body).toContain("nothing to learn from");
		const csv = await empty.app.inject({ url: "/learning.csv", headers: { cookie: empty.sessionCookie } });
		expect(csv.statusCode).toBe(404);
		await empty.close();
	});
});
