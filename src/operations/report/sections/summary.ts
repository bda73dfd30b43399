/** The first page: the question, what was settled, and the newest leg that can be compared, the weightiest first. */
import type { AssessmentView } from "../../../contract/packaging.ts";
import { type Block, facts, paragraph, type Section, subheading } from "../../../reports/report.ts";
import { itemName } from "../../../texts/item-name.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { leadScreen } from "../../comparison/lead-screen.ts";
import { isReported, leadWords } from "../../comparison/told-second-hand.ts";
import { amountsWords } from "../../settling/settling-words.ts";
import { judgedPackOf } from "../../transit-recordings/judged-pack.ts";
import { type Others, sentencesOnOnePage } from "../one-page.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { nameOfParty } from "../report-words.ts";
import { claimedTimeWriter } from "./comparison.ts";

export function summary(report: ReportFacts): Section {
	const { order, records, legs, settlement, checkpoint, root, asOf, speaker } = report;
	const { say, showTime } = speaker;
	const compared = legs.findLast(({ found }) => found.departure !== null && found.arrival !== null);
	const leg = compared ?? legs.at(-1);
	const question = say("report.summary-question");
	const not = say("report.summary-not");
	const settled = settlementInShort(settlement, speaker);
	return {
		title: say("report.summary"),
		blocks: [
			paragraph(question, "note"),
			facts([
				[say("report.item-what"), itemName(order.item)],
				[say("report.owner"), order.owner.name],
				[say("report.repairer"), order.repairer.name],
				[say("report.summary-records"), recordsWords(records, speaker)],
				[say("report.settlement"), settled],
				[say("report.summary-as-of"), showTime(asOf)],
				[say("report.summary-log"), say("report.summary-log-of", { size: String(checkpoint.size), root })],
			]),
			...(leg === undefined ? [] : legBlocks(report, leg, { sentences: [question, not], cells: [settled] })),
			paragraph(not, "small"),
		],
	};
}

/** How many, and how many of them no holder recorded. */
function recordsWords(records: ReportFacts["records"], { say }: Speaker): string {
	const count = String(records.length);
	const reported = records.filter(isReported).length;
	return reported === 0 ? count : say("report.summary-records-reported", { count, reported });
}

/** Whether it holds, and what was agreed. */
function settlementInShort({ status, steps }: ReportFacts["settlement"], speaker: Speaker): string {
	const { say } = speaker;
	const agreed = steps.find(({ state }) => state === "agreed");
	if (agreed === undefined || agreed.outcome === null) return say(`settling.status.${status}`);
	const outcome = say(`settling.outcome.${agreed.outcome}`);
	return say("report.summary-agreed", { outcome, amounts: amountsWords(agreed.amounts, speaker) });
}

/** What the pack was judged to hold, and what a recorder says of a shock on the way. */
function packAndRecorder({ packs, shock }: ReportLeg, speaker: Speaker): string[] {
	const pack = packs.at(-1);
	return [
		...(pack === undefined ? [] : [packInShort(pack, speaker)]),
		...(shock === null ? [] : [speaker.speak(shock.says)]),
	];
}

function packInShort(pack: AssessmentView, { say }: Speaker): string {
	const judged = judgedPackOf(pack);
	if (judged === null) return say("report.summary-pack", { verdict: say("pack.verdict.not-assessed") });
	const { verdict, protectedDropHeightM: dropM, designDropHeightM: designM } = judged;
	const words = say(`pack.verdict.${verdict}` as ReportKey);
	if (dropM === null || designM === null) return say("report.summary-pack", { verdict: words });
	return say("report.summary-pack-drop", { verdict: words, dropM, designM });
}

function legBlocks({ order, speaker }: ReportFacts, reportLeg: ReportLeg, others: Others): Block[] {
	const { leg, found } = reportLeg;
	const { say } = speaker;
	const title = say("report.summary-leg", {
		leg: leg.leg,
		from: nameOfParty(order, leg.consignorId),
		to: nameOfParty(order, leg.consigneeId),
	});
	if (found.departure === null || found.arrival === null) {
		return [subheading(title), paragraph(say("report.summary-open"))];
	}
	const { certain, uncertain, placed } = leadScreen(found, claimedTimeWriter(speaker), speaker);
	const lead = leadWords(found, speaker);
	return [
		subheading(title),
		paragraph(lead),
		...sentencesOnOnePage(
			[
				{ title: "report.comparison-certain", sentences: certain, first: 2 },
				{ title: "report.summary-way", sentences: packAndRecorder(reportLeg, speaker), first: 2 },
				{ title: "report.comparison-placed", sentences: placed, first: 1 },
				{ title: "report.comparison-uncertain", sentences: uncertain, first: 1 },
			],
			{ ...others, sentences: [lead, ...others.sentences] },
			speaker,
		),
	];
}
