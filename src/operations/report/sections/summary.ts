/** The first page: the question, the newest leg that can be compared, what this edition leaves out. */
import { type Block, facts, list, paragraph, type Section, subheading } from "../../../reports/report.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { leadScreen } from "../../comparison/lead-screen.ts";
import { leftOut } from "../left-out.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { itemTitle, nameOfParty } from "../report-words.ts";
import { claimedTimeWriter } from "./comparison.ts";

/** Sentences of one kind on the first page: it is one page. */
const MOST = 3;
const LONGEST = 220;

export function summary(report: ReportFacts): Section {
	const { order, records, legs, checkpoint, root, asOf, speaker } = report;
	const { say, showTime } = speaker;
	const compared = legs.findLast(({ found }) => found.departure !== null && found.arrival !== null);
	const leg = compared ?? legs.at(-1);
	return {
		title: say("report.summary"),
		blocks: [
			paragraph(say("report.summary-question"), "note"),
			facts([
				[say("report.item-what"), itemTitle(order)],
				[say("report.owner"), order.owner.name],
				[say("report.repairer"), order.repairer.name],
				[say("report.summary-records"), String(records.length)],
				[say("report.summary-as-of"), showTime(asOf)],
				[say("report.summary-log"), say("report.summary-log-of", { size: String(checkpoint.size), root })],
			]),
			...(leg === undefined ? [] : legBlocks(report, leg)),
			subheading(say("report.summary-left-out")),
			list(leftOut(report.edition, speaker)),
			paragraph(say("report.summary-not"), "small"),
		],
	};
}

function legBlocks({ order, speaker }: ReportFacts, { leg, found }: ReportLeg): Block[] {
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
	return [
		subheading(title),
		paragraph(say(`comparison-page.lead.${found.comparison.outcome}` as ReportKey)),
		...some("report.comparison-certain", certain, speaker),
		...some("report.comparison-placed", placed, speaker),
		...some("report.comparison-uncertain", uncertain, speaker),
	];
}

function some(title: ReportKey, sentences: readonly string[], { say }: Speaker): Block[] {
	if (sentences.length === 0) return [];
	const more = sentences.length - MOST;
	const shown = sentences.slice(0, MOST).map(shortened);
	return [
		paragraph(say(title), "note"),
		list(more > 0 ? [...shown, say("report.summary-more", { count: more })] : shown),
	];
}

/** A sentence that names dozens of checks stands whole further on. */
function shortened(sentence: string): string {
	return sentence.length > LONGEST ? `${sentence.slice(0, LONGEST).replace(/\s+\S*$/, "")} …` : sentence;
}
