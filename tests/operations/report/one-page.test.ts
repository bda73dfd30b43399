/** The summary page holds what it takes on, in every language: lines are counted here again, on their own. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sentencesOnOnePage } from "../../../src/operations/report/one-page.ts";
import type { Block } from "../../../src/reports/report.ts";
import { LANGUAGES } from "../../../src/texts/language.ts";
import { speakerOf } from "../../../src/texts/speaker.ts";

/** Seen on A4 pages of the demo's reports: 33 lines of 92 letters beside title and table. */
const lines = (text: string) => Math.ceil(text.length / 92);
const PAGE = 33;

function textsOf(block: Block): readonly string[] {
	if (block.kind === "paragraph") return [block.text as string];
	return block.kind === "list" ? (block.items as readonly string[]) : [];
}

describe.each(LANGUAGES)("the summary in %s", (language) => {
	const speaker = speakerOf(language);
	const { say } = speaker;
	const others = [say("report.summary-question"), say("comparison-page.lead.compared"), say("report.summary-not")];
	const sentence = fc.integer({ min: 20, max: 600 }).map((length) => "x".repeat(length));
	const sentences = fc.array(sentence, { maxLength: 12 });

	it("tells the first of every kind before the rest of any, and what of the table is longer takes its room", () => {
		const long = "x".repeat(3 * 92);
		const kinds = (["report.comparison-certain", "report.summary-way"] as const).map((title, kind) => ({
			title,
			sentences: Array.from({ length: 4 }, (_, index) => `${kind}${index} ${long.slice(3)}`),
			first: 2,
		}));
		const shownWith = (cells: readonly string[]) =>
			sentencesOnOnePage(kinds, { sentences: [], cells }, speaker)
				.flatMap(textsOf)
				.filter((text) => text.includes("xxx"))
				.map((text) => text.slice(0, 2));
		// 33 lines without two titles and two lines on the rest: room for nine sentences of three.
		expect(shownWith([])).toEqual(["00", "01", "02", "03", "10", "11", "12", "13"]);
		// Eight rows of two lines take 16 of these 29: four sentences are left, the first of both.
		expect(shownWith(Array.from({ length: 8 }, () => "y"))).toEqual(["00", "01", "10", "11"]);
	});

	it("tells four sentences of a kind, and counts the others", () => {
		const kind = {
			title: "report.comparison-certain",
			sentences: ["1", "2", "3", "4", "5", "6", "7"],
			first: 2,
		} as const;
		const [, told] = sentencesOnOnePage([kind], { sentences: [], cells: [] }, speaker).map(textsOf);
		expect(told).toEqual(["1", "2", "3", "4", say("report.summary-more", { count: 3 })]);
	});

	it("never has more lines than the page, and says how many sentences it leaves for later", () => {
		fc.assert(
			fc.property(sentences, sentences, sentences, (certain, placed, uncertain) => {
				const blocks = sentencesOnOnePage(
					[
						{ title: "report.comparison-certain", sentences: certain, first: 2 },
						{ title: "report.comparison-placed", sentences: placed, first: 1 },
						{ title: "report.comparison-uncertain", sentences: uncertain, first: 1 },
					],
					{ sentences: others, cells: [] },
					speaker,
				);
				const used = [...others, ...blocks.flatMap(textsOf)].reduce((sum, text) => sum + lines(text), 0);
				expect(used).toBeLessThanOrEqual(PAGE);
				const whole = blocks.flatMap(textsOf).filter((text) => /^x+$/.test(text));
				const all = [certain, placed, uncertain].flat();
				expect(whole.every((text) => all.includes(text))).toBe(true);
			}),
		);
	});
});
