/** The summary page holds what it takes on, in every language: lines are counted here again, on their own. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leftOut } from "../../../src/operations/report/left-out.ts";
import { sentencesOnOnePage } from "../../../src/operations/report/one-page.ts";
import type { Block } from "../../../src/reports/report.ts";
import { LANGUAGES } from "../../../src/texts/language.ts";
import { speakerOf } from "../../../src/texts/speaker.ts";

/** Seen on A4 pages of the demo's reports: 34 lines of 92 letters beside title and table. */
const lines = (text: string) => Math.ceil(text.length / 92);
const PAGE = 34;

function textsOf(block: Block): readonly string[] {
	if (block.kind === "paragraph") return [block.text as string];
	return block.kind === "list" ? (block.items as readonly string[]) : [];
}

describe.each(LANGUAGES)("the summary in %s", (language) => {
	const speaker = speakerOf(language);
	const { say } = speaker;
	const others = [
		say("report.summary-question"),
		say("comparison-page.lead.compared"),
		say("report.summary-not"),
		...leftOut("parties", speaker),
	];
	const sentence = fc.integer({ min: 20, max: 600 }).map((length) => "x".repeat(length));
	const sentences = fc.array(sentence, { maxLength: 12 });

	it("never has more lines than the page, and says how many sentences it leaves for later", () => {
		fc.assert(
			fc.property(sentences, sentences, sentences, (certain, placed, uncertain) => {
				const blocks = sentencesOnOnePage(
					[
						{ title: "report.comparison-certain", sentences: certain },
						{ title: "report.comparison-placed", sentences: placed },
						{ title: "report.comparison-uncertain", sentences: uncertain },
					],
					others,
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
