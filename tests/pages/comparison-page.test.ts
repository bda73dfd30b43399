/** What the comparison page says first, for the outcomes that a whole comparison can have. Own regression cases. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORIGIN_TEST_RULES } from "../../src/catalogue/origins/tests.ts";
import { say, type TextKey } from "../../src/texts/say.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene } from "./customer-scene.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

/** The page of a leg whose arrival says this. */
async function pageAfter(arrival: object): Promise<string> {
	const made = await customerScene(shop);
	const content = { observedAt: "2026-03-05T18:00:00+01:00", state: "good", ...arrival };
	const saved = await shop.ask("PUT", `/api/v1/records/${made.recordId}`, content, { "if-match": '"v1"' });
	expect(saved.statusCode, saved.body).toBe(200);
	const sealed = await shop.ask("POST", `/api/v1/records/${made.recordId}/seal`, undefined, { "if-match": '"v2"' });
	expect(sealed.statusCode, sealed.body).toBe(200);
	const page = await shop.ask("GET", `/orders/${made.orderId}/consignments/${made.legId}/comparison`);
	expect(page.statusCode, page.body).toBe(200);
	return page.body;
}

/** A section of the page by its heading. */
function section(page: string, heading: string): string {
	return new RegExp(`<h2>${heading}</h2>(.*?)</section>`, "s").exec(page)?.[1] ?? "";
}

const SAME = { identity: { serialNumber: "OW24-7731-C" } };
const starts = (successes: number) => ({ check: "starts-cold", condition: "cold", trials: 3, successes });

describe("the comparison page", () => {
	it("says before both ends are sealed that there is nothing to compare yet", async () => {
		const made = await customerScene(shop);
		const page = await shop.ask("GET", `/orders/${made.orderId}/consignments/${made.legId}/comparison`);
		expect(page.body).toContain("Not both ends are sealed yet");
		expect(page.body).not.toContain("What is certain");
	});

	it("says that all is well where it is, and no more than was tested", async () => {
		const page = await pageAfter({ ...SAME, readings: [starts(3)] });
		expect(section(page, "What is certain")).toContain("Within its limits at both ends, as far as tested: Cold starts");
		expect(section(page, "What to do next")).toContain("Both ends agree as far as they were tested");
		expect(page).not.toContain("Did not start on this platform");
	});

	it("places what was lost between the two records", async () => {
		const page = await pageAfter({ ...SAME, state: "does-not-start", readings: [starts(0)] });
		expect(section(page, "What is certain")).toContain("Cold starts: outside its limits on arrival");
		expect(section(page, "Between which two moments")).toContain("good in the departure record of 2 Mar 2026");
		expect(section(page, "What to do next")).toContain("Try another part known to be good");
		expect(page).toContain("Did not start on this platform");
	});

	it("draws nothing from another board's readings", async () => {
		const page = await pageAfter({ identity: { serialNumber: "XX-1" }, readings: [starts(0)] });
		expect(page).toContain("do not name the same board");
		expect(section(page, "What is certain")).not.toContain("Cold starts");
		expect(section(page, "Between which two moments")).toContain("No change was found");
		expect(section(page, "What to do next")).toContain("look at the serial number");
		expect(section(page, "Check by check")).toContain("nothing recorded is hidden");
	});

	it("asks for no power where wetness or a stop sign was noted", async () => {
		const wet = await pageAfter({ ...SAME, state: "not-tested", firstPowerOn: { wetnessSeen: true } });
		expect(section(wet, "What to do next")).toContain("Keep the board without power");
		const stopped = await pageAfter({
			...SAME,
			state: "does-not-start",
			readings: [starts(0)],
			firstPowerOn: { stopSigns: ["smell-or-smoke"] },
		});
		const next = section(stopped, "What to do next");
		expect(next).toContain("give the board no power");
		expect(next).not.toMatch(/second one|Try another part|add now/);
		expect(stopped).not.toContain("A try in a second computer");
	});

	it("takes a crack that was found for a stop sign that nobody ticked", async () => {
		const found = { check: "visual-cracks", trials: 1, successes: 0 };
		const page = await pageAfter({ ...SAME, state: "does-not-start", readings: [found, starts(0)] });
		expect(section(page, "What is certain")).toContain(
			"For “No cracks”, what was found on arrival is not as it should be. That counts as a stop sign",
		);
		const next = section(page, "What to do next");
		expect(next).toContain("give the board no power");
		expect(next).not.toMatch(/second one|Try another part|add now/);
		expect(page).not.toContain("A try in a second computer");
		const powered = ORIGIN_TEST_RULES.filter(({ needsPower }) => needsPower);
		for (const { id } of powered) expect(page).not.toContain(say(`origin.test-${id}` as TextKey));
	});

	it("says that times contradict each other where both sides tell another story", async () => {
		const parcel = { deliveredAt: "2026-02-20T10:00:00+01:00" };
		const page = await pageAfter({ ...SAME, observedAt: "2026-02-21T10:00:00+01:00", parcel, readings: [starts(3)] });
		expect(section(page, "What is not certain")).toContain("contradict each other");
		const fits = await pageAfter({ ...SAME, readings: [starts(3)] });
		expect(fits).not.toContain("contradict each other");
	});

	it("counts nothing against someone who tested nothing", async () => {
		const page = await pageAfter({ ...SAME, state: "not-tested" });
		expect(section(page, "What is certain")).not.toMatch(/outside|changed/);
		expect(page).toContain("A gap is never counted as a failure");
	});

	it("escapes what people wrote and holds no script but the one of the foot, and no style", async () => {
		const page = await pageAfter({ ...SAME, statement: "<img src=x onerror=alert(1)>" });
		expect(page).toContain("&lt;img src=x onerror=alert(1)>");
		expect(page).not.toMatch(/<img src=x|<script(?! type="module" src="\/assets\/)| style=/);
	});
});
