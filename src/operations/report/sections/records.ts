/** Each sealed record: by whom, how it came in, and every reading as it was entered. */

import type { CheckDefinition } from "../../../catalogue/checks/check.ts";
import { checksOf } from "../../../catalogue/checks/checks.ts";
import type { OpenedStatement, StatementReading } from "../../../records/record-statement.ts";
import { type Block, facts, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import { quantityWords, readingWords } from "../../../texts/reading-words.ts";
import { isTextKey, say, type TextKey } from "../../../texts/say.ts";
import { showTime } from "../../../texts/shown-time.ts";
import type { SealedRecord } from "../../records/record-views.ts";
import { numbersOf } from "../numbered-exhibits.ts";
import type { ReportFacts } from "../report-facts.ts";
import { claimed, known, nameOfParty, outerDamageWords, stateOf, throughWhat, titleOf, told } from "../report-words.ts";
import { entryBlocks } from "./entries.ts";

export function records(report: ReportFacts): Section {
	return {
		title: say("report.records"),
		blocks:
			report.records.length === 0
				? [paragraph(say("report.none"))]
				: [
						...report.records.flatMap((record, index) => recordBlocks(report, record, index + 1)),
						...entryBlocks(report),
					],
	};
}

function recordBlocks(report: ReportFacts, record: SealedRecord, n: number): Block[] {
	const { statement, view } = record;
	return [
		subheading(say("report.record", { n, what: titleOf(report.order, record) })),
		facts([...sealFacts(report, record), ...stateFacts(report, record)]),
		...(view.supersededBy === null ? [] : [paragraph(say("report.record-amended"), "note")]),
		...quotes(statement),
		...readings(statement),
	];
}

function sealFacts({ order, entries }: ReportFacts, { statement, view, entry }: SealedRecord) {
	const how = throughWhat(entry.byId);
	const names = [statement.recordedBy, nameOfParty(order, view.holderId)].filter((name) => name !== undefined);
	const isByLink = entry.byId.startsWith("lnk_");
	return known(
		["report.record-how", say(`record.provenance.${view.provenance}` as TextKey)],
		["report.record-by", [...new Set(names.map(told))].join(", ")],
		["report.record-seen", claimed(statement.observed)],
		[
			"report.record-seal",
			say("report.record-seal-of", { index: String(entry.index), time: showTime(entry.time), how }),
		],
		["report.record-fingerprint", entry.statementSha256],
		[
			"log.party-signature",
			isByLink ? say(isSignedByParty(entry, entries) ? "log.party-signed" : "log.party-unsigned") : null,
		],
	);
}

/** Whether a later entry holds a signature of this one by a key on the party's device. */
function isSignedByParty({ leafSha256 }: SealedRecord["entry"], entries: ReportFacts["entries"]): boolean {
	return entries.some(
		({ kind, statementBytes }) =>
			kind === "party-signed" &&
			statementBytes !== null &&
			JSON.parse(Buffer.from(statementBytes).toString("utf8")).leafSha256 === leafSha256,
	);
}

function stateFacts({ exhibits }: ReportFacts, record: SealedRecord) {
	const { identity, setUp } = record.statement;
	const text = (value: string | null | undefined) => (value === undefined ? null : told(value));
	const setUpWords = [setUp.host, setUp.slot, setUp.supply, setUp.driver, setUp.load]
		.filter((part) => part !== undefined)
		.map(told);
	return known(
		["report.record-state", stateOf(record)],
		["arrival.serial-number", text(identity.serialNumber)],
		["report.record-marks", identity.marks?.map(told).join("; ") || null],
		["report.record-set-up", setUpWords.join("; ") || null],
		["report.record-parcel", parcelWords(record.statement) || null],
		["report.record-exhibits", numbersOf(record, exhibits) || null],
	);
}

/** What was noted of the parcel. */
export function parcelWords({ parcel }: OpenedStatement): string {
	if (parcel === undefined) return "";
	const { mass, outerDamage, sealsIntact, indicatorTripped, remark } = parcel;
	return [
		...(mass === undefined ? [] : [say("report.record-parcel-mass", { mass: quantityWords(mass) })]),
		...(outerDamage === undefined ? [] : [outerDamageWords(outerDamage) ?? ""]),
		...(sealsIntact === undefined ? [] : [say(sealsIntact ? "report.record-seals" : "report.record-seals-not")]),
		...(indicatorTripped === undefined
			? []
			: [say(indicatorTripped ? "report.record-indicator" : "report.record-indicator-not")]),
		...(remark === undefined ? [] : [told(remark)]),
	].join("; ");
}

/** Someone's own words, in their own language. */
function quotes({ reported, statement }: OpenedStatement): Block[] {
	return [
		...(reported === undefined
			? []
			: [
					paragraph(
						say("report.record-words", {
							time: claimed(reported.received),
							channel: say(`record.channel.${reported.channel}` as TextKey),
						}),
					),
					paragraph(told(reported.words), "quote"),
				]),
		...(statement === undefined
			? []
			: [paragraph(say("report.record-statement")), paragraph(told(statement), "quote")]),
	];
}

function readings(statement: OpenedStatement): Block[] {
	const checks = checksOf(statement.itemClass);
	const isSilent = ({ notTested }: StatementReading<unknown>) => notTested?.reason === "not-recorded";
	const told = statement.readings.filter((reading) => !isSilent(reading));
	const silent = statement.readings.filter(isSilent).map((reading) => nameOfReading(reading, checks));
	const head = [say("report.column-check"), say("report.column-result"), say("report.column-how")];
	const rows = told.map((reading) => [
		nameOfReading(reading, checks),
		readingWords(reading, checks.find(({ id }) => id === reading.check)?.kind),
		say(`record.provenance.${reading.provenance}` as TextKey),
	]);
	return [
		...(rows.length === 0 ? [] : [table(head, [5, 4, 3], rows)]),
		...(silent.length === 0 ? [] : [paragraph(say("report.record-untested", { checks: silent.join("; ") }), "small")]),
	];
}

function nameOfReading(reading: StatementReading<unknown>, checks: readonly CheckDefinition[]): string {
	const key = checks.find(({ id }) => id === reading.check)?.nameKey;
	return reading.definition?.name ?? (key !== undefined && isTextKey(key) ? say(key) : reading.check);
}
