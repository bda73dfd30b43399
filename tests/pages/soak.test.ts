/** The page that says how long to go on with a soak. Its numbers are the calculation's own, checked in its tests. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { soakSoFar } from "../../src/operations/records/soak-so-far.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene } from "./customer-scene.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());
const get = (url: string) => shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
const wordsOf = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

describe("how long to test", () => {
	it("says what was excluded so far, what is asked for, and draws the chance over the hours", async () => {
		const query = { hours: "24", failures: "0", coldStarts: "10", coldStartFailures: "0", shows: "3", showedInH: "24" };
		const page = await get(`/soak?${new URLSearchParams({ ...query, priorPercent: "30", targetPercent: "2" })}`);
		expect(page.statusCode, wordsOf(page.body)).toBe(200);
		const words = wordsOf(page.body);
		// One-sided bound of a Poisson rate with no event: ln 20 / 24 h, so a mean time above 8.011 h.
		expect(words).toContain("it would show less often than once in 8.011 h");
		// Exact binomial bound for none in ten: 1 − 0.05^(1/10).
		expect(words).toContain("fewer than 25.89 % of starts would fail");
		expect(words).toContain("Hours in all until your target");
		expect(page.body).toMatch(/aria-labelledby="escape-title escape-description"/);
		expect(words).toContain("Stay near it");
	});

	it("keeps what was typed where a number is none, and says what does not fit", async () => {
		const wrong = await get("/soak?hours=a%20day&coldStarts=3&coldStartFailures=4");
		expect(wrong.statusCode).toBe(400);
		expect(wrong.body).toMatch(/id="hours-error">“a day” is no number/);
		expect(wrong.body).toMatch(/id="coldStartFailures-error"/);
		expect(wrong.body).toContain('value="a day"');
	});

	it("stands on the draft's page with what the draft holds", async () => {
		const scene = await customerScene(shop);
		const draft = await shop.ask("POST", `/api/v1/consignments/${scene.legId}/records`, {
			stage: "departure",
			depth: "full",
			content: {
				state: "good",
				readings: [
					{ check: "memory-errors", condition: "load", count: 0, exposure: { value: 90, unit: "min", typed: "90" } },
					{ check: "starts-cold", trials: 14, successes: 13 },
				],
			},
		});
		expect(draft.statusCode, draft.body).toBe(201);
		const page = await get(`/records/${draft.json().id}`);
		expect(page.body).toContain('href="/soak?hours=1.5&amp;failures=0&amp;coldStarts=14&amp;coldStartFailures=1"');
	});

	it("never adds hours of checks that ran side by side, and counts no hours without load", () => {
		const hours = (value: number, condition: "load" | "idle") =>
			({ check: "memory-errors", condition, count: 1, exposure: { value, unit: "h" } }) as const;
		expect(soakSoFar([hours(3, "load"), hours(5, "load"), hours(50, "idle")])).toMatchObject({
			hours: 5,
		});
		expect(soakSoFar([])).toEqual({ hours: 0, failures: 0, coldStarts: 0, coldStartFailures: 0 });
	});
});
