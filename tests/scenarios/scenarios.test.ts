/**
 * Twelve invented scenarios with the outcome that a fair expert would expect (page on bench practice, section 6; ids and
 * outcomes as there), played through the API on a real database. Letters mark variants of one scenario.
 */
import { readdirSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { composeReport } from "../../src/operations/report/compose-report.ts";
import { readReportFacts } from "../../src/operations/report/read-report-facts.ts";
import { english } from "../../src/texts/english.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { ENGLISH_WORDS } from "../texts/english-words.ts";
import { PRONOUNCES, PRONOUNCES_IN, TRANSPOSES, TRANSPOSES_IN } from "../texts/pronounces.ts";
import { type Played, playScenario, type Scenario } from "./play-scenario.ts";
import { ownWords, typedIn } from "./report-words.ts";

const FOLDER = new URL("../../demo-data/scenarios/", import.meta.url);
const scenarios: Scenario[] = readdirSync(FOLDER)
	.sort()
	.map((file) => JSON.parse(readFileSync(new URL(file, FOLDER), "utf8")));

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

it("all twelve are there", () => {
	const numbers = new Set(scenarios.map(({ id }) => /^S(\d\d)/.exec(id)?.[1]));
	expect([...numbers].sort()).toEqual(Array.from({ length: 12 }, (_, index) => String(index + 1).padStart(2, "0")));
});

describe.each(scenarios.map((scenario) => [`${scenario.id}: ${scenario.title}`, scenario] as const))(
	"%s",
	(_, scenario) => {
		const wanted = scenario.expect;
		let played: Played;
		beforeAll(async () => {
			played = await playScenario(shop, scenario);
		});

		it("comes out as expected", () => {
			const { view } = played;
			if (wanted.outcome !== undefined) expect(view.outcome).toBe(wanted.outcome);
			if (wanted.identity !== undefined) expect(view.identity).toMatchObject(wanted.identity);
			if (wanted.betterOnArrival !== undefined) {
				expect([...view.betterOnArrival].sort()).toEqual([...wanted.betterOnArrival].sort());
			}
			for (const [id, expected] of Object.entries(wanted.checks ?? {})) {
				const result = view.checks.find(({ check }) => check === id)?.comparison.result as {
					verdict: string;
					direction: string | null;
					conformity: Record<"departure" | "arrival", { verdict: string } | null>;
				};
				if (expected.verdict !== undefined) expect(result.verdict, id).toBe(expected.verdict);
				if (expected.direction !== undefined) expect(result.direction, id).toBe(expected.direction);
				for (const end of ["departure", "arrival"] as const) {
					if (expected[end] !== undefined)
						expect(result.conformity[end]?.verdict ?? null, `${id} ${end}`).toBe(expected[end]);
				}
			}
			for (const [end, judgement] of Object.entries(wanted.link ?? {})) {
				expect(view.link[end as "arrival"]?.result, end).toMatchObject({ judgement });
			}
		});

		it("places what changed", () => {
			const { custodyLine } = played.view;
			for (const change of wanted.changes ?? [])
				expect(custodyLine.changes).toContainEqual(expect.objectContaining(change));
			const spansOf = (check: string) => {
				const change = custodyLine.changes.find((candidate) => candidate.check === check);
				return { change, spans: (change?.spans ?? []).map((index) => custodyLine.spans[index]) };
			};
			for (const [check, { within, not }] of Object.entries(wanted.changeLegs ?? {})) {
				const legs = spansOf(check).spans.map((span) => span?.consignmentId);
				for (const leg of within) expect(legs, check).toContain(played.legIds[leg - 1]);
				for (const leg of not) expect(legs, check).not.toContain(played.legIds[leg - 1]);
			}
			for (const [check, count] of Object.entries(wanted.widened ?? {})) {
				expect(spansOf(check).change?.widenedBy, check).toHaveLength(count);
			}
			for (const [check, holder] of Object.entries(wanted.stay ?? {})) {
				const { spans } = spansOf(check);
				expect(
					spans.map((span) => [span?.kind, span?.holderId]),
					check,
				).toEqual([["stay", holder === "owner" ? played.ownerId : played.repairerId]]);
			}
		});

		it("says what the findings support", () => {
			const { origin } = played.view;
			if (wanted.origins === null) return expect(origin).toBeNull();
			const found = Object.fromEntries((origin?.origins ?? []).map(({ id, support }) => [id, support]));
			expect(found).toMatchObject(wanted.origins ?? {});
			if (wanted.first !== undefined) expect(origin?.origins[0]?.id).toBe(wanted.first);
			if (wanted.turnsOn !== undefined) expect(origin?.turnsOn?.id).toBe(wanted.turnsOn);
			for (const [id, sides] of Object.entries(wanted.missing ?? {})) {
				const missing = origin?.origins.find((one) => one.id === id)?.missing;
				for (const [side, ids] of Object.entries(sides)) {
					expect(
						missing?.[side as "transit"].map((one) => one.id),
						id,
					).toEqual(expect.arrayContaining([...ids]));
				}
			}
			const tests = origin?.nextTests.map(({ id }) => id) ?? [];
			expect(tests).toEqual(expect.arrayContaining([...(wanted.nextTests ?? [])]));
			if (wanted.tests !== undefined) expect(tests).toEqual(wanted.tests);
			for (const id of wanted.noTests ?? []) expect(tests).not.toContain(id);
			const last = (origin?.nextTests ?? []).map((test) => Number(test.destructive) * 2 + Number(test.breaksCustody));
			expect(last).toEqual([...last].sort());
		});

		it("says what the first test excludes, and what to do next", () => {
			const { firstState, lead } = played.view;
			if (wanted.firstStateGrade !== undefined) expect(firstState?.grade).toBe(wanted.firstStateGrade);
			const open = firstState?.notExcluded.map(({ id }) => id) ?? [];
			expect(open).toEqual(expect.arrayContaining([...(wanted.notExcluded ?? [])]));
			for (const part of wanted.leadCertain ?? []) expect(lead?.certain.join(" ")).toContain(part);
			for (const part of wanted.leadNext ?? []) expect(lead?.next.join(" ")).toContain(part);
			for (const part of wanted.leadNextNot ?? []) expect(lead?.next.join(" ")).not.toContain(part);
			expect(lead?.next.length).toBeGreaterThan(0);
		});

		it("decides nothing between the parties, in the answer and on the page", () => {
			const { disclaimer: _, ...answer } = played.view;
			const page = played.page
				.replace(/<(script|style)[\s\S]*?<\/\1>/g, "")
				.replace(/<[^>]+>/g, " ")
				.replaceAll(english["layout.foot"], "")
				.replaceAll(english["comparison-page.disclaimer"], "");
			for (const words of [JSON.stringify(answer), page]) {
				expect(PRONOUNCES.exec(words)?.[0] ?? null).toBeNull();
				expect(TRANSPOSES.exec(words)?.[0] ?? null).toBeNull();
			}
		});

		it.each(["de", "fr"] as const)("is told in one language, %s, and decides nothing there", async (language) => {
			const caller = { kind: "account", accountId: shop.accountId, via: "token" } as const;
			const asked = { edition: "expert", at: undefined, language } as const;
			const report = composeReport(await readReportFacts(shop.deps, caller, played.orderId, asked));
			const typed = typedIn(scenario).sort((a, b) => b.length - a.length);
			const words = typed.reduce((text, one) => text.replaceAll(one, "…"), ownWords(report).join("\n"));
			const seen = (pattern: RegExp) => words.split("\n").filter((line) => pattern.test(line));
			expect(seen(ENGLISH_WORDS)).toEqual([]);
			expect(seen(PRONOUNCES_IN[language])).toEqual([]);
			expect(seen(TRANSPOSES_IN[language])).toEqual([]);
			// As numbers and colons are written in both; a colon in French has a space before it, which no line breaks at.
			expect(seen(/^-?\d+\.\d+$/)).toEqual([]);
			if (language === "fr") expect(seen(/[^\s\u00a0]: | [:;!?]/)).toEqual([]);
		});

		it.each((scenario.calculations ?? []).map((calculation) => [calculation.name, calculation] as const))(
			"%s, half a unit of the last printed digit",
			async (name, { request, expect: members }) => {
				const answer = await shop.ask("POST", `/api/v1/calculations/${name}`, request);
				const agree = (got: unknown, expected: unknown) => {
					if (typeof expected === "number") return expect(got).toBeCloseTo(expected, 3);
					for (const [member, value] of Object.entries(expected as object))
						agree((got as Record<string, unknown>)[member], value);
				};
				agree(answer.json().result, members);
			},
		);
	},
);
