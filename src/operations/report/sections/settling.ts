/** What both sides state, as numbered statements, and the steps of their settlement. Never in the carrier's edition. */
import type { PositionView } from "../../../contract/positions.ts";
import type { SettlementStepView } from "../../../contract/settlement.ts";
import { type Block, facts, paragraph, type Section, subheading } from "../../../reports/report.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { amountsWords, checksWords, stepTitle, testWords } from "../../settling/settling-words.ts";
import type { ReportFacts } from "../report-facts.ts";
import { nameOfParty, titleOf, told } from "../report-words.ts";

export function positions(report: ReportFacts): Section {
	const { say } = report.speaker;
	const blocks = report.positions.flatMap((position) => statementBlocks(report, position));
	return {
		title: say("report.positions"),
		blocks: [
			paragraph(say("report.positions-text")),
			...(blocks.length === 0 ? [paragraph(say("settling.none"))] : blocks),
		],
	};
}

export function settlement(report: ReportFacts): Section {
	const { say } = report.speaker;
	const { status, steps } = report.settlement;
	return {
		title: say("report.settlement"),
		blocks: [
			paragraph(say("report.settlement-text")),
			paragraph(say(`settling.status.${status}`), "note"),
			...steps.flatMap((step, place) => stepBlocks(report, step, place)),
		],
	};
}

function statementBlocks({ order, records, speaker }: ReportFacts, position: PositionView): Block[] {
	const { say, between } = speaker;
	const { answers, consignmentId, number } = position;
	const leg = order.consignments.find(({ id }) => id === consignmentId);
	const named = records.filter(({ view }) => position.recordIds.includes(view.id));
	const who = say("settling.statement", { number, name: nameOfParty(order, position.partyId) });
	const about = [
		answers === null
			? null
			: say("settling.answers", { number: answers.number, stance: say(`settling.stance.${answers.stance}`) }),
		testWords(position, speaker),
		leg === undefined ? null : say("settling.about-leg", { leg: leg.leg }),
		named.length === 0
			? null
			: say("settling.about-records", {
					records: named.map((record) => titleOf(order, record, speaker)).join(between),
				}),
		checksWords(position, speaker),
	].filter((words) => words !== null);
	return [
		subheading(`${who} ${say(`settling.kind.${position.kind}`)}`),
		paragraph(told(position.text, speaker), "quote"),
		...(about.length === 0 ? [] : [paragraph(about.join(" "))]),
		...sealBlocks(position, speaker),
	];
}

function stepBlocks(report: ReportFacts, step: SettlementStepView, place: number): Block[] {
	const { order, settlement, speaker } = report;
	const { say } = speaker;
	const { outcome, itemNext, state } = step;
	return [
		subheading(stepTitle(settlement.steps, place, (partyId) => nameOfParty(order, partyId), speaker)),
		...(outcome === null || itemNext === null || state === null
			? []
			: [
					facts([
						[say("settling.outcome"), say(`settling.outcome.${outcome}`)],
						[say("settling.amounts"), amountsWords(step.amounts, speaker)],
						[say("settling.item-next"), say(`settling.item.${itemNext}`)],
						[say("report.settlement-state"), say(`settling.state.${state}`)],
					]),
				]),
		...(step.text === null ? [] : [paragraph(step.text, "quote")]),
		...sealBlocks(step, speaker),
	];
}

function sealBlocks(sealed: PositionView | SettlementStepView, { say, showTime }: Speaker): Block[] {
	const isLink = sealed.sealedBy.startsWith("lnk_");
	const how = say(isLink ? "report.record-by-link" : "report.record-by-account");
	const facts = { index: String(sealed.index), time: showTime(sealed.sealedAt), how };
	return [
		paragraph(say("report.record-seal-of", facts), "small"),
		paragraph(say("report.pack-fingerprint", { fingerprint: sealed.fingerprint }), "fixed"),
	];
}
