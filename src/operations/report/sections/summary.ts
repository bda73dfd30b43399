/** The first page: the question, the newest leg that can be compared, what this edition leaves out. */
import { type Block, facts, list, paragraph, type Section, subheading } from "../../../reports/report.ts";
import { itemName } from "../../../texts/item-name.ts";
import type { ReportKey } from "../../../texts/say.ts";
import { leadScreen } from "../../comparison/lead-screen.ts";
import { leftOut } from "../left-out.ts";
import { sentencesOnOnePage } from "../one-page.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { nameOfParty } from "../report-words.ts";
import { claimedTimeWriter } from "./comparison.ts";

export function summary(report: ReportFacts): Section {
	const { order, records, legs, checkpoint, root, asOf, speaker } = report;
	const { say, showTime } = speaker;
	const compared = legs.findLast(({ found }) => found.departure !== null && found.arrival !== null);
	const leg = compared ?? legs.at(-1);
	const question = say("report.summary-question");
	const not = say("report.summary-not");
	const leftOutOf = leftOut(report.edition, speaker);
	return {
		title: say("report.summary"),
		blocks: [
			paragraph(question, "note"),
			facts([
				[say("report.item-what"), itemName(order.item)],
				[say("report.owner"), order.owner.name],
				[say("report.repairer"), order.repairer.name],
				[say("report.summary-records"), String(records.length)],
				[say("report.summary-as-of"), showTime(asOf)],
				[say("report.summary-log"), say("report.summary-log-of", { size: String(checkpoint.size), root })],
			]),
			...(leg === undefined ? [] : legBlocks(report, leg, [question, not, ...leftOutOf])),
			subheading(say("report.summary-left-out")),
			list(leftOutOf),
			paragraph(not, "small"),
		],
	};
}

function legBlocks({ order, speaker }: ReportFacts, { leg, found }: ReportLeg, others: readonly string[]): Block[] {
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
	const lead = say(`comparison-page.lead.${found.comparison.outcome}` as ReportKey);
	return [
		subheading(title),
		paragraph(lead),
		...sentencesOnOnePage(
			[
				{ title: "report.comparison-certain", sentences: certain },
				{ title: "report.comparison-placed", sentences: placed },
				{ title: "report.comparison-uncertain", sentences: uncertain },
			],
			[lead, ...others],
			speaker,
		),
	];
}
