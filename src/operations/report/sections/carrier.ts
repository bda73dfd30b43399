/** The sections for the carrier: facts alone, of each leg, without a comparison, a judgement or a plan. */
import type { PackagingRequest } from "../../../contract/packaging.ts";
import { type Block, facts, list, paragraph, type Section, subheading, type Words } from "../../../reports/report.ts";
import { itemName } from "../../../texts/item-name.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { packFacts } from "../../packaging/pack-facts.ts";
import { leftOut } from "../left-out.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { claimed, known, money, nameOfParty, outerDamageWords, stateOf, titleOf, told } from "../report-words.ts";
import { itemFacts } from "./setting.ts";
import { legFacts, legTitle } from "./transit.ts";

export function carrierSummary(report: ReportFacts): Section {
	const { order, records, checkpoint, speaker } = report;
	const { say } = speaker;
	return {
		title: say("report.summary"),
		blocks: [
			paragraph(say("report.carrier-lead"), "note"),
			facts([
				[say("report.item-what"), itemName(order.item)],
				...report.legs.map(
					({ leg }) =>
						[
							legTitle(report, leg),
							[leg.facts.carrier, leg.facts.trackingNumber].filter(Boolean).join(", ") || "–",
						] as const,
				),
				[say("report.summary-records"), String(records.length)],
				[say("report.summary-log"), say("report.summary-log-of", { size: String(checkpoint.size), root: report.root })],
			]),
			subheading(say("report.summary-left-out")),
			list(leftOut("carrier", speaker)),
		],
	};
}

export function carrierSections(report: ReportFacts): Section[] {
	const { speaker } = report;
	const { say } = speaker;
	return [
		{
			title: say("report.carrier-item"),
			blocks: [facts(itemFacts(report)), paragraph(say("report.order-noted"), "small")],
		},
		ofLegs(report, "report.carrier-hand-over", (leg) => [facts(handOver(report, leg))]),
		ofLegs(report, "report.carrier-pack", ({ packs }) =>
			packs.length === 0
				? [paragraph(say("report.pack-none"))]
				: packs.map(({ statement }) => facts(packFacts((statement as unknown as PackagingRequest).pack, speaker))),
		),
		ofLegs(report, "report.carrier-outer", (leg) => outside(leg, speaker)),
		ofLegs(report, "report.carrier-notice", (leg) => noticeBlocks(report, leg)),
		{ title: say("report.carrier-entitled"), blocks: [paragraph(say("report.carrier-entitled-text"))] },
	];
}

function ofLegs(report: ReportFacts, title: ReportKey, blocksOf: (leg: ReportLeg) => Block[]): Section {
	return {
		title: report.speaker.say(title),
		blocks: report.legs.flatMap((leg) => [subheading(legTitle(report, leg.leg)), ...blocksOf(leg)]),
	};
}

function handOver({ order, records, speaker }: ReportFacts, { leg, found }: ReportLeg): (readonly [string, Words])[] {
	const { say, writeNumber } = speaker;
	const by = order.terms.carrierContract[leg.direction === "to-owner" ? "toOwner" : "toRepairer"];
	const { parcelMassKg } = leg.facts;
	return [
		...known(
			speaker,
			["report.carrier-consignor", nameOfParty(order, leg.consignorId)],
			["report.carrier-consignee", nameOfParty(order, leg.consigneeId)],
			[
				"report.carrier-contract",
				say("report.carrier-contract-by", { name: by === "owner" ? order.owner.name : order.repairer.name }),
			],
			["report.carrier-declared", money(leg.facts.declaredValue, speaker) ?? say("report.transit-not-noted")],
			["report.carrier-insured", money(leg.facts.insuredValue, speaker) ?? say("report.transit-not-noted")],
			["report.carrier-mass", parcelMassKg === undefined ? null : `${writeNumber(parcelMassKg)} kg`],
		),
		...legFacts(leg, found.arrival, speaker),
		...records
			.filter(({ view }) => view.consignmentId === leg.id && view.supersededBy === null)
			.map(
				(record) =>
					[
						say("report.carrier-state"),
						say("report.carrier-state-of", {
							what: titleOf(order, record, speaker),
							time: claimed(record.statement.observed, speaker),
							state: stateOf(record, speaker),
						}),
					] as const,
			),
	];
}

/** As it was sent to the carrier, who has it. */
function noticeBlocks({ exhibits, speaker }: ReportFacts, { notices }: ReportLeg): Block[] {
	const { say } = speaker;
	const fileOf = (sha256: string | null) => {
		if (sha256 === null) return null;
		const number = exhibits.find((exhibit) => exhibit.sha256 === sha256)?.number;
		return `${number === undefined ? "" : `[${number}] `}SHA-256 ${sha256}`;
	};
	if (notices.length === 0) return [paragraph(say("report.carrier-notice-none"))];
	return notices.flatMap((notice) => [
		facts(
			known(
				speaker,
				["report.carrier-notice-sent", `${notice.sentOn}, ${say(`notice.way.${notice.sentBy}`)}`],
				["notice.sent-proof", notice.proofOfSending],
				["notice.sent-file", fileOf(notice.sendingFile)],
				["notice.received", notice.receivedOn ?? say("notice.received-not")],
				["notice.received-proof", notice.proofOfReceipt],
				["notice.received-file", fileOf(notice.receiptFile)],
			),
		),
		paragraph(notice.text, "quote"),
	]);
}

function outside({ found }: ReportLeg, speaker: Speaker): Block[] {
	const { say } = speaker;
	const parcel = found.arrival?.statement.parcel;
	if (parcel === undefined) return [paragraph(say("report.none"))];
	const { outerDamage, sealsIntact, indicatorTripped, remark } = parcel;
	return [
		list([
			outerDamageWords(outerDamage, speaker) ?? say("report.none"),
			...(sealsIntact === undefined ? [] : [say(sealsIntact ? "report.record-seals" : "report.record-seals-not")]),
			...(indicatorTripped === undefined
				? []
				: [say(indicatorTripped ? "report.record-indicator" : "report.record-indicator-not")]),
			...(remark === undefined ? [] : [say("report.carrier-outer-words", { words: told(remark, speaker) })]),
		]),
	];
}
