/** What the comparison page says first, for the outcomes that a whole comparison can have. Own regression cases. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORIGIN_TEST_RULES } from "../../src/catalogue/origins/tests.ts";
import { say, type TextKey } from "../../src/texts/say.ts";
import { sidesOf } from "../operations/settling/sides.ts";
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
		// Nothing to count at a board that does not start, and no damage is taken for granted.
		expect(section(page, "What the findings fit")).not.toMatch(/Count ten starts|Another driver|damaged place/i);
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
		expect(next).toContain("do not power the board again");
		expect(next).not.toMatch(/second one|Try another part|add now/);
		expect(stopped).not.toContain("A try in a second computer");
	});

	it("takes a crack that was found for a stop sign that nobody ticked", async () => {
		const found = { check: "visual-cracks", trials: 1, successes: 0 };
		const page = await pageAfter({ ...SAME, state: "does-not-start", readings: [found, starts(0)] });
		expect(section(page, "What is certain")).toContain(
			"For “No cracks”, what was found on arrival is not as it should be. That counts as a stop sign",
		);
		expect(section(page, "What is certain")).toContain("“No cracks”: not as it should be on arrival; when it left,");
		expect(page).not.toContain("No cracks: outside");
		const next = section(page, "What to do next");
		expect(next).toContain("do not power the board again");
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

	it("lists what nobody tested once, by where it lacks and of what kind it is", async () => {
		const list = section(await pageAfter({ ...SAME, state: "not-tested" }), "Not tested");
		const [either, arrival] = list.split("Not tested on arrival, only when it left");
		expect(either).toContain("Not tested at either end");
		expect(either).toMatch(/<dt>Resistances<\/dt><dd>[^<]*Cold resistance, core rail to ground; /);
		expect(arrival).toBe('</h3><dl class="facts"><dt>Starts and trials</dt><dd>Cold starts</dd></dl></div>');
		const names = [...list.matchAll(/<dd>(.*?)<\/dd>/g)].flatMap(([, words = ""]) => words.split("; "));
		expect(new Set(names).size).toBe(names.length);
	});

	it("leads the shop back to the order, and whoever came by a link nowhere else", async () => {
		const sides = await sidesOf(shop);
		const path = `/orders/${sides.scene.orderId}`;
		const page = async (who: "repairer" | "reader") =>
			(await sides.asAt(who, "GET", `${path}/consignments/${sides.scene.legId}/comparison`)).body;
		expect(await page("repairer")).toContain(`<p class="no-print"><a href="${path}">Back to the order</a></p>`);
		expect(await page("reader")).not.toContain(`href="${path}"`);
	});

	it("escapes what people wrote and holds no script but the one of the foot, and no style", async () => {
		const page = await pageAfter({ ...SAME, statement: "<img src=x onerror=alert(1)>" });
		expect(page).toContain("&lt;img src=x onerror=alert(1)>");
		expect(page).not.toMatch(/<img src=x|<script(?! type="module" src="\/assets\/)| style=/);
	});
});

describe("what was only told to the other side", () => {
	/** The owner wrote an e-mail; the shop wrote down what it says. */
	async function reported() {
		const made = await customerScene(shop);
		const opened = await shop.ask("POST", `/api/v1/consignments/${made.legId}/records`, {
			stage: "arrival",
			provenance: "reported-to",
			content: {
				observedAt: "2026-03-05T18:00:00+01:00",
				state: "does-not-start",
				identity: { marks: ["none named"] },
				firstPowerOn: { wetnessSeen: true },
				reported: { words: "It is dead.", channel: "e-mail", receivedAt: "2026-03-05T18:01:00+01:00" },
			},
		});
		expect(opened.statusCode, opened.body).toBe(201);
		const path = `/api/v1/records/${opened.json().id}/seal`;
		const sealed = await shop.ask("POST", path, undefined, { "if-match": '"v1"' });
		expect(sealed.statusCode, sealed.body).toBe(200);
		return made;
	}

	it("is told apart on the page, and certain is what the record says, not what it says it of", async () => {
		const { orderId, legId } = await reported();
		const page = (await shop.ask("GET", `/orders/${orderId}/consignments/${legId}/comparison`)).body;
		expect(page).toContain("State on arrival: reported by Mara &lt;Quist>, not recorded by its holder.");
		expect(page).not.toContain("Both ends of this journey are recorded");
		const certain = section(page, "What is certain");
		expect(certain).toContain("The record of what was reported says “It does not start” on arrival.");
		expect(certain).toContain("The record of what was reported says: On arrival wetness was noted.");
		expect(certain).not.toMatch(/<li>On arrival|as a whole/);
		expect(section(page, "Between which two moments")).toMatch(/the arrival record of [^.]* \(as reported\)/);
		expect(section(page, "What to do next")).toContain("can still record what they saw themselves");
	});

	it("is told apart in the list of orders", async () => {
		const { orderId } = await reported();
		expect((await shop.ask("GET", `/?q=${orderId}`)).body).toContain(
			"Arrived and does not start (reported, not recorded by its holder)",
		);
	});
});

it("asks for no notice that is kept, and for nothing but care once both sides settled", async () => {
	const sides = await sidesOf(shop);
	const { recordId, legId, orderId } = sides.scene;
	const content = { ...SAME, observedAt: "2026-03-05T18:00:00+01:00", state: "does-not-start", readings: [starts(0)] };
	await shop.ask("PUT", `/api/v1/records/${recordId}`, content, { "if-match": '"v1"' });
	const sealed = await shop.ask("POST", `/api/v1/records/${recordId}/seal`, undefined, { "if-match": '"v2"' });
	expect(sealed.statusCode, sealed.body).toBe(200);
	const next = async () => {
		const page = await shop.ask("GET", `/orders/${orderId}/consignments/${legId}/comparison`);
		return section(page.body, "What to do next");
	};
	expect(await next()).toContain("tell the carrier soon");
	const notice = { language: "en", text: "Damaged on arrival.", sentOn: "2026-03-06", sentBy: "registered-letter" };
	expect((await shop.ask("POST", `/api/v1/consignments/${legId}/notices`, notice)).statusCode).toBe(201);
	expect(await next()).not.toContain("tell the carrier");
	const proposal = { act: "proposes", outcome: "refund", amounts: [], itemNext: "stays" };
	const proposed = await sides.as("repairer", "POST", "/settlement", proposal);
	expect(proposed.statusCode, proposed.body).toBe(201);
	expect(await next()).toContain("Try another part known to be good");
	const assent = { act: "assents", proposalId: proposed.json().steps[0].id };
	expect((await sides.as("owner", "POST", "/settlement", assent)).statusCode).toBe(201);
	expect(await next()).toBe("<ul><li>Both sides have agreed on a settlement. Keep your receipts.</li></ul>");
});
