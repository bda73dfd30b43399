/** `report.pdf` of a played order: who may have which edition, what each holds, what the carrier's never does. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORIGINS } from "../../src/calculations/origin/origins.ts";
import { english } from "../../src/texts/english.ts";
import { say } from "../../src/texts/say.ts";
import { inventedTable, READING } from "../operations/transit-recordings/invented-trip.ts";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { typedIn } from "../scenarios/report-words.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { lacks, runTool } from "../setup/tools.ts";
import { ENGLISH_WORDS } from "../texts/english-words.ts";
import { PRONOUNCES, PRONOUNCES_IN, TRANSPOSES } from "../texts/pronounces.ts";

const EDITIONS = ["parties", "expert", "carrier"] as const;
const scenario = JSON.parse(readFileSync(new URL("../../demo-data/scenarios/s10a.json", import.meta.url), "utf8"));

let shop: TestApp;
let played: Played;
let folder: string;
const words: Record<string, string> = {};
beforeAll(async () => {
	shop = await testApp();
	played = await playScenario(shop, scenario);
	await settle();
	await bringRecording(played);
	folder = mkdtempSync(join(tmpdir(), "handover-risk-report-"));
	for (const edition of EDITIONS) {
		const answer = await shop.ask("GET", `/api/v1/orders/${played.orderId}/report.pdf?edition=${edition}`);
		expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
		expect(answer.headers["content-type"]).toBe("application/pdf");
		const path = join(folder, `${edition}.pdf`);
		writeFileSync(path, answer.rawPayload);
		if (!lacks("pdftotext")) words[edition] = runTool("pdftotext", ["-raw", path, "-"]).said.replace(/\s+/g, " ");
	}
}, 60_000);
afterAll(async () => {
	await shop?.close();
	rmSync(folder, { recursive: true, force: true });
});

/** One statement of the shop's, the owner's answer, a proposal and the owner's assent; and the law of carriage, chosen. */
async function settle() {
	const path = `/api/v1/orders/${played.orderId}`;
	const owner = await link("settle");
	const asOwner = (url: string, payload: object) => shop.app.inject({ method: "POST", url, headers: owner, payload });
	const stated = await shop.ask("POST", `${path}/positions`, { kind: "states", text: "It started forty times here." });
	const answer = { positionId: stated.json().id, stance: "partly-agrees" };
	const answered = await asOwner(`${path}/positions`, {
		kind: "states",
		text: "It has not started since.",
		answers: answer,
	});
	expect(answered.statusCode, answered.body).toBe(201);
	const amounts = [{ amount: 90, currency: "EUR", from: "repairer", to: "owner" }];
	const proposal = { act: "proposes", outcome: "part-refund", itemNext: "stays", amounts };
	const proposed = await shop.ask("POST", `${path}/settlement`, proposal);
	const step = { act: "assents", proposalId: proposed.json().steps[0].id, text: "So be it." };
	expect((await asOwner(`${path}/settlement`, step)).statusCode).toBe(201);
	const noted = { regime: "cmr", dates: { discovered: "2026-03-09" } };
	const claim = `/api/v1/consignments/${played.legIds[0]}/claim`;
	const saved = await shop.ask("PUT", claim, noted, { "if-match": '"v0"' });
	expect(saved.statusCode, saved.body).toBe(200);
	const notice = { language: "en", text: "One board does not start.", sentOn: "2026-03-10", sentBy: "e-mail" };
	const kept = await shop.ask("POST", `/api/v1/consignments/${played.legIds[0]}/notices`, notice);
	expect(kept.statusCode, kept.body).toBe(201);
}
/** A recorder that timed one fall, with its clock set: its impact can be placed where the order's line reaches so far. */
async function bringRecording({ legIds }: Played): Promise<void> {
	const table = inventedTable({
		rateHz: 2000,
		lengthS: 4,
		impacts: [{ atS: 2, peakGn: 60, durationMs: 12, fallS: 0.394 }],
	});
	const answer = await shop.app.inject({
		method: "POST",
		url: `/api/v1/consignments/${legIds[0]}/transit-recordings?fileName=trip.csv&reading=${encodeURIComponent(JSON.stringify(READING))}`,
		headers: { authorization: `Bearer ${shop.token}`, "content-type": "text/csv" },
		payload: table,
	});
	expect(answer.statusCode, answer.body).toBe(201);
}

const link = async (scope: string) => {
	const made = (await shop.ask("POST", "/api/v1/links", { scope, orderId: played.orderId })).json();
	const entered = await shop.app.inject({
		method: "POST",
		url: "/api/v1/links/enter",
		payload: { token: made.url.split("/").at(-1), code: made.code },
	});
	return { cookie: `link=${entered.cookies[0]?.value}` };
};
const asLink = async (headers: Record<string, string>, edition: string) =>
	(
		await shop.app.inject({
			method: "GET",
			url: `/api/v1/orders/${played.orderId}/report.pdf?edition=${edition}`,
			headers,
		})
	).statusCode;

describe("who may have it", () => {
	it.each(["settle", "reader"])(
		"a link of scope %s: the editions for parties and expert, not the carrier's",
		async (scope) => {
			const headers = await link(scope);
			expect(await asLink(headers, "parties")).toBe(200);
			expect(await asLink(headers, "expert")).toBe(200);
			expect(await asLink(headers, "carrier")).toBe(403);
		},
	);
	it("nobody else", async () => {
		expect(await asLink({}, "parties")).toBe(401);
	});
	it("an unknown edition, or a size beyond the log, is refused by name", async () => {
		for (const [query, path] of [
			["edition=press", "/edition"],
			["at=0", "/at"],
			["at=99999999", "/at"],
		]) {
			const answer = await shop.ask("GET", `/api/v1/orders/${played.orderId}/report.pdf?${query}`);
			expect(answer.statusCode).toBe(400);
			expect(answer.json().errors[0].path).toBe(path);
		}
	});
	it("before anything is sealed the order has a report, and nobody gets 500", async () => {
		const answer = await shop.ask("GET", `/api/v1/orders/ord_${"0".repeat(20)}/report.pdf`);
		expect(answer.statusCode).toBe(404);
	});
});

it("of the same size has the same bytes, also after the log has grown", async () => {
	const path = `/api/v1/orders/${played.orderId}/report.pdf?edition=expert`;
	const size = (await shop.ask("GET", "/api/v1/log/checkpoint")).body.split("\n")[1];
	const before = await shop.ask("GET", `${path}&at=${size}`);
	await playScenario(shop, scenario);
	const after = await shop.ask("GET", `${path}&at=${size}`);
	expect(after.rawPayload.equals(before.rawPayload)).toBe(true);
});

describe.each(["de", "fr"] as const)("in %s", (language) => {
	const path = () => `/api/v1/orders/${played.orderId}/report.pdf?edition=carrier&language=${language}`;
	it("has the same bytes each time, and says its language", async () => {
		const [one, other] = [await shop.ask("GET", path()), await shop.ask("GET", path())];
		expect(one.statusCode).toBe(200);
		expect(other.rawPayload.equals(one.rawPayload)).toBe(true);
		expect(one.headers["content-language"]).toBe(language);
		expect(one.headers["content-disposition"]).toContain(`-${language}.pdf`);
		expect(one.rawPayload.includes(`/Lang (${language})`)).toBe(true);
		writeFileSync(join(folder, `${language}.pdf`), one.rawPayload);
	});
	it.skipIf(lacks("pdftotext"))("holds its own words, and none of the English", () => {
		const { said } = runTool("pdftotext", ["-raw", join(folder, `${language}.pdf`), "-"]);
		expect(said.replace(/\s+/g, " ")).toContain(say("report.carrier-hand-over", {}, language));
		expect(said).not.toContain(english["report.carrier-hand-over"]);
		expect(PRONOUNCES_IN[language].exec(said)?.[0] ?? null).toBeNull();
		// What people typed stands as it was typed.
		const typed = [...typedIn(scenario), "One board does not start."].reduce(
			(text, one) => text.replaceAll(one, "…"),
			said.replace(/\s+/g, " "),
		);
		expect(typed.split(/(?<=[.:;]) /).filter((sentence) => ENGLISH_WORDS.test(sentence))).toEqual([]);
	});
});

it("a language that there is none of is refused by name", async () => {
	const answer = await shop.ask("GET", `/api/v1/orders/${played.orderId}/report.pdf?language=nl`);
	expect(answer.statusCode).toBe(400);
	expect(answer.json().errors[0].path).toBe("/language");
});

describe.skipIf(lacks("pdftotext"))("its words", () => {
	it("lead with the summary, and name what the edition leaves out", () => {
		for (const edition of EDITIONS) {
			expect(words[edition]).toContain(english[`report.edition.${edition}`]);
			expect(words[edition]?.indexOf(english["report.summary-left-out"])).toBeGreaterThan(0);
		}
	});
	it("stand in the order in which an expert uses them", () => {
		const titles = [
			"question",
			"reading",
			"server",
			"item",
			"custody",
			"records",
			"pack",
			"transit",
			"comparison",
			"support",
			"missing",
			"positions",
			"settlement",
			"periods",
			"exhibits",
			"method",
			"sources",
			"verify",
			"seal",
		] as const;
		const at = titles.map((title, index) => words.expert?.indexOf(`${index + 1} ${english[`report.${title}`]}`) ?? -1);
		expect(
			at.every((place) => place > 0),
			String(at),
		).toBe(true);
		expect(at).toEqual([...at].sort((a, b) => a - b));
	});
	it("tell the parties and an expert what both sides state and settle, and from when periods run; the carrier nothing of it", () => {
		const settled = [
			"1. ",
			"It started forty times here.",
			"Answers statement 1: agrees in part.",
			"It has not started since.",
			"90.00 EUR from the repairer to the owner",
			"So be it.",
			english["settling.state.agreed"],
			"CMR Art. 30(1), (4)",
			english["periods.consequence.presumption"],
			"at delivery A dent in the parcel can be seen at the door",
		];
		for (const words_ of settled) {
			expect(words.parties).toContain(words_);
			expect(words.expert).toContain(words_);
		}
		for (const words_ of settled.slice(1)) expect(words.carrier).not.toContain(words_);
		expect(words.carrier).toContain("2026-03-10, by e-mail");
		expect(words.carrier).toContain("One board does not start.");
		expect(words.parties).not.toContain("One board does not start.");
	});
	it("begin with one summary page", () => {
		for (const edition of EDITIONS) {
			const pages = runTool("pdftotext", [join(folder, `${edition}.pdf`), "-"]).said.split("\f");
			expect(pages[0]).toContain(english["report.summary"]);
			expect(pages[1]).toMatch(/^1 /);
		}
	});
	it("of the summary are whole sentences, each as it stands further on", () => {
		for (const edition of EDITIONS) {
			const [first = ""] = runTool("pdftotext", ["-raw", join(folder, `${edition}.pdf`), "-"]).said.split("\f");
			expect(first).not.toContain("…");
		}
	});
	it("tell of a recording where it sat, how it sampled, each impact with its drop, and what it does not show", () => {
		for (const edition of ["parties", "expert"]) {
			for (const shown of [
				"Recorded on the way: trip.csv",
				"2000 samples a second, 3 axes, 8000 rows",
				english["recording.where-on-item"],
				"60 gₙ",
				english["recording.supports"],
			]) {
				expect(words[edition], shown).toContain(shown);
			}
			// 0.394 s of free fall are 761 mm (reference page of shock, section 6); two samples either way.
			const [, low, high] = /Equal drop: (\d+) – (\d+) mm \(by the time/.exec(words[edition] ?? "") ?? [];
			expect(Number(low)).toBeLessThan(761);
			expect(Number(high)).toBeGreaterThan(761);
		}
		expect(words.carrier).not.toContain("trip.csv");
		expect(words.carrier).not.toContain("gₙ");
		expect(words.carrier).toContain(english["report.left-out.recordings"]);
	});
	it("pronounce nothing in any edition", () => {
		for (const edition of EDITIONS) {
			expect(PRONOUNCES.exec(words[edition] ?? "")?.[0] ?? null).toBeNull();
			expect(TRANSPOSES.exec(words[edition] ?? "")?.[0] ?? null).toBeNull();
		}
	});
	it("of the carrier's edition name no origin, by id or by name, and no finding; those of the expert's do", () => {
		const names = ORIGINS.map((id) => english[`origin.${id}` as keyof typeof english] as string);
		const ids = ORIGINS.filter((id) => id.includes("-"));
		for (const name of [...names, ...ids, english["comparison-page.origin"]])
			expect(words.carrier?.toLowerCase()).not.toContain(name.toLowerCase());
		expect(names.filter((name) => words.expert?.includes(name)).length).toBeGreaterThan(5);
		for (const [key, text] of Object.entries(english)) {
			if (key.startsWith("origin.finding-")) expect(words.carrier).not.toContain(text);
		}
	});
});

it("the carrier's edition is small, and has no attachment", () => {
	const bytes = readFileSync(join(folder, "carrier.pdf"));
	expect(bytes.length).toBeLessThan(5e6);
	expect(bytes.includes("/EmbeddedFile")).toBe(false);
	expect(readFileSync(join(folder, "expert.pdf")).includes("/EmbeddedFile")).toBe(true);
});

it.skipIf(lacks("qpdf"))("every edition is whole for qpdf", () => {
	for (const edition of EDITIONS) {
		const { status, said } = runTool("qpdf", ["--check", join(folder, `${edition}.pdf`)]);
		expect(status, said).toBe(0);
	}
});
