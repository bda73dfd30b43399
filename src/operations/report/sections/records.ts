/** Each sealed record: by whom, how it came in, and every reading as it was entered. */

import type { CheckDefinition } from "../../../catalogue/checks/check.ts";
import { checksOf } from "../../../catalogue/checks/checks.ts";
import { signedAt } from "../../../records/party-signature.ts";
import type { OpenedStatement, StatementReading } from "../../../records/record-statement.ts";
import { type Block, facts, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import { quantityWords, readingWords } from "../../../texts/reading-words.ts";
import { isReportKey, type ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import type { SealedRecord } from "../../records/record-views.ts";
import { sealedLateWords } from "../../records/sealed-late.ts";
import { numbersOf } from "../numbered-exhibits.ts";
import type { ReportFacts } from "../report-facts.ts";
import {
	claimed,
	known,
	nameOfParty,
	outerDamageWords,
	stateOf,
	throughWhat,
	titleOf,
	told,
	typedText,
} from "../report-words.ts";
import { entryBlocks } from "./entries.ts";

export function records(report: ReportFacts): Section {
	const { say } = report.speaker;
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
	const { speaker, order } = report;
	const { say } = speaker;
	return [
		subheading(say("report.record", { n, what: titleOf(order, record, speaker) })),
		facts([...sealFacts(report, record), ...stateFacts(report, record)]),
		...(view.supersededBy === null ? [] : [paragraph(say("report.record-amended"), "note")]),
		...quotes(statement, speaker),
		...readings(report, record),
	];
}

function sealFacts({ order, entries, speaker }: ReportFacts, { statement, view, entry }: SealedRecord) {
	const { say, showTime } = speaker;
	const how = throughWhat(entry.byId, speaker);
	const names = [statement.recordedBy, nameOfParty(order, view.holderId)].filter((name) => name !== undefined);
	const late = sealedLateWords({ seenAt: statement.observed.at, sealedAt: entry.time }, speaker);
	const isByLink = entry.byId.startsWith("lnk_");
	return known(
		speaker,
		["report.record-how", say(`record.provenance.${view.provenance}` as ReportKey)],
		["report.record-by", [...new Set(names.map((name) => told(name, speaker)))].join(", ")],
		["report.record-seen", claimed(statement.observed, speaker)],
		[
			"report.record-seal",
			say("report.record-seal-of", { index: String(entry.index), time: showTime(entry.time), how }),
		],
		["report.record-late", late === null ? null : say("report.record-late-of", { late })],
		["report.record-fingerprint", entry.statementSha256],
		["log.party-signature", isByLink ? signatureWords(signedAt(entry.leafSha256, entries), speaker) : null],
	);
}

function signatureWords(time: Date | null, { say, showTime }: Speaker): string {
	return time === null ? say("log.party-unsigned") : say("log.party-signed", { time: showTime(time) });
}

function stateFacts({ exhibits, speaker }: ReportFacts, record: SealedRecord) {
	const { identity, setUp } = record.statement;
	const typed = (values: readonly (string | null)[], between: string) =>
		values.length === 0 ? null : typedText(values.map((value) => told(value, speaker)).join(between), speaker);
	const setUpWords = [setUp.host, setUp.slot, setUp.supply, setUp.driver, setUp.load].filter(
		(part) => part !== undefined,
	);
	return known(
		speaker,
		["report.record-state", stateOf(record, speaker)],
		["arrival.serial-number", identity.serialNumber === undefined ? null : told(identity.serialNumber, speaker)],
		["report.record-marks", typed(identity.marks ?? [], speaker.between)],
		["report.record-set-up", typed(setUpWords, speaker.between)],
		["report.record-parcel", parcelWords(record.statement, speaker) || null],
		["report.record-exhibits", numbersOf(record, exhibits) || null],
	);
}

/** What was noted of the parcel. */
export function parcelWords({ parcel }: OpenedStatement, speaker: Speaker): string {
	const { say, between } = speaker;
	if (parcel === undefined) return "";
	const { mass, outerDamage, sealsIntact, indicatorTripped, remark } = parcel;
	return [
		...(mass === undefined ? [] : [say("report.record-parcel-mass", { mass: quantityWords(mass, speaker) })]),
		...(outerDamage === undefined ? [] : [outerDamageWords(outerDamage, speaker) ?? ""]),
		...(sealsIntact === undefined ? [] : [say(sealsIntact ? "report.record-seals" : "report.record-seals-not")]),
		...(indicatorTripped === undefined
			? []
			: [say(indicatorTripped ? "report.record-indicator" : "report.record-indicator-not")]),
		...(remark === undefined ? [] : [told(remark, speaker)]),
	].join(between);
}

/** Someone's own words, in their own language. */
function quotes({ reported, statement }: OpenedStatement, speaker: Speaker): Block[] {
	const { say } = speaker;
	return [
		...(reported === undefined
			? []
			: [
					paragraph(
						say("report.record-words", {
							time: claimed(reported.received, speaker),
							channel: say(`record.channel.${reported.channel}` as ReportKey),
						}),
					),
					paragraph(told(reported.words, speaker), "quote"),
				]),
		...(statement === undefined
			? []
			: [paragraph(say("report.record-statement")), paragraph(told(statement, speaker), "quote")]),
	];
}

function readings({ legs, speaker }: ReportFacts, { view, statement }: SealedRecord): Block[] {
	const { say, between } = speaker;
	const checks = checksOf(statement.itemClass);
	const isSilent = ({ notTested }: StatementReading<unknown>) => notTested?.reason === "not-recorded";
	const told = statement.readings.filter((reading) => !isSilent(reading));
	const silent = statement.readings.filter(isSilent).map((reading) => nameOfReading(reading, checks, speaker));
	const head = [say("report.column-check"), say("report.column-result"), say("report.column-how")];
	// The ends of a compared leg are listed once, with what nobody tested there.
	const isListed = legs.some(
		({ found: { departure, arrival } }) =>
			departure !== null && arrival !== null && [departure, arrival].some((end) => end.view.id === view.id),
	);
	const untested = say("report.record-untested", { checks: silent.join(between) });
	const listed = say("report.record-untested-count", { count: silent.length, section: say("report.missing") });
	const rows = told.map((reading) => [
		nameOfReading(reading, checks, speaker),
		readingWords(reading, checks.find(({ id }) => id === reading.check)?.kind, speaker),
		say(`record.provenance.${reading.provenance}` as ReportKey),
	]);
	return [
		...(rows.length === 0 ? [] : [table(head, [5, 4, 3], rows)]),
		...(silent.length === 0 ? [] : [paragraph(isListed ? listed : untested, "small")]),
	];
}

function nameOfReading(
	reading: StatementReading<unknown>,
	checks: readonly CheckDefinition[],
	{ say }: Speaker,
): string {
	const key = checks.find(({ id }) => id === reading.check)?.nameKey;
	return reading.definition?.name ?? (key !== undefined && isReportKey(key) ? say(key) : reading.check);
}
