/** Both ends of each leg beside each other, every check that either end tested. */
import type { ComparisonRow } from "../../../calculations/comparison/types.ts";
import { type Block, list, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import { readingWords } from "../../../texts/reading-words.ts";
import { offsetOf } from "../../../texts/shown-time.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { unitSymbol } from "../../../texts/unit-symbol.ts";
import { isTested } from "../../comparison/is-tested.ts";
import { isComparable, isHeldApart, leadScreen, rowName, type TimeWriter } from "../../comparison/lead-screen.ts";
import { leadWords } from "../../comparison/told-second-hand.ts";
import type { SealedRecord } from "../../records/record-views.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { legTitle } from "./transit.ts";

/** Writes a claimed time as the lead sentences name it. */
export function claimedTimeWriter({ showTime }: Speaker): TimeWriter {
	return (at, offsetMinutes) => showTime(at, offsetOf(offsetMinutes));
}

export function comparison(report: ReportFacts): Section {
	const { say } = report.speaker;
	return {
		title: say("report.comparison"),
		blocks: [
			paragraph(say("report.comparison-text")),
			...report.legs.flatMap((leg) => [subheading(legTitle(report, leg.leg)), ...legBlocks(leg, report.speaker)]),
			...betweenLegs(report),
		],
	};
}

/** Changes on no leg that is told above, once: those that happened in somebody's keeping. */
function betweenLegs({ legs, speaker }: ReportFacts): Block[] {
	const told = legs
		.filter(({ found }) => found.departure !== null && found.arrival !== null)
		.map(({ found }) => leadScreen(found, claimedTimeWriter(speaker), speaker));
	const onLegs = new Set(told.flatMap(({ placed }) => placed));
	const others = new Set(told.flatMap(({ elsewhere }) => elsewhere).filter((words) => !onLegs.has(words)));
	if (others.size === 0) return [];
	return [
		subheading(speaker.say("report.comparison-elsewhere")),
		...sentences(speaker.say("report.comparison-placed"), [...others]),
	];
}

function legBlocks({ found, view }: ReportLeg, speaker: Speaker): Block[] {
	const { say } = speaker;
	if (found.departure === null || found.arrival === null) return [paragraph(say("report.summary-open"))];
	const { certain, uncertain, placed } = leadScreen(found, claimedTimeWriter(speaker), speaker);
	const tested = found.comparison.rows.filter((row) => isTested(row.departure) || isTested(row.arrival));
	const columns = (["check", "departure", "arrival", "verdict"] as const).map((name) =>
		say(`comparison-page.column.${name}`),
	);
	return [
		paragraph(leadWords(found, speaker), "note"),
		...sentences(say("report.comparison-certain"), certain),
		...sentences(say("report.comparison-uncertain"), uncertain),
		...sentences(say("report.comparison-placed"), placed),
		...(isComparable(found) ? [] : [paragraph(say("comparison-page.checks-apart"), "note")]),
		...(tested.length === 0
			? []
			: [
					table(
						columns,
						[3, 3, 3, 5],
						tested.map((row) => rowCells(row, found, speaker)),
					),
				]),
		...(view.adjustedFor > 1
			? [paragraph(say("comparison-page.adjusted-for", { count: view.adjustedFor }), "small")]
			: []),
		...firstState(view.firstState, speaker),
	];
}

function sentences(title: string, said: readonly string[]): Block[] {
	return said.length === 0 ? [] : [paragraph(title, "note"), list(said)];
}

function rowCells(row: ComparisonRow, { departure, arrival }: ReportLeg["found"], speaker: Speaker): string[] {
	const { say, speak } = speaker;
	const judged = row.comparison.status === "assessed" ? row.comparison.result : null;
	const why = row.comparison.status === "assessed" ? row.comparison.result.why : row.comparison.reason.message;
	const verdict = say(`comparison-page.verdict.${judged?.verdict ?? "not-assessed"}`);
	const direction = judged?.verdict === "differs" && judged.direction !== null ? judged.direction : null;
	const headline = direction === null ? verdict : `${verdict} ${say(`comparison-page.direction.${direction}`)}`;
	return [
		rowName(row, speaker),
		readingAt(departure, row, "departure", speaker),
		readingAt(arrival, row, "arrival", speaker),
		[
			`${headline}.`,
			...numbers(row, speaker),
			speak(why),
			...(judged !== null && isHeldApart(judged) ? [say("comparison-page.certain.apart")] : []),
		].join(" "),
	];
}

/** The difference and the interval, where there is one. */
function numbers(row: ComparisonRow, speaker: Speaker): string[] {
	const { say, writeNumber } = speaker;
	if (row.comparison.status !== "assessed") return [];
	const { interval, intervalOf } = row.comparison.result;
	if (interval === null || intervalOf === null) return [];
	const bound = (end: number | null) => (end === null ? say("report.comparison-open") : writeNumber(end));
	const unit =
		intervalOf === "difference" && row.check.unitSymbol !== undefined
			? ` ${unitSymbol(row.check.unitSymbol, speaker)}`
			: "";
	const of = say(`report.comparison-of.${intervalOf}`);
	return [
		`${say("report.comparison-interval", { of, low: bound(interval[0]), high: `${bound(interval[1])}${unit}` })}.`,
	];
}

function readingAt(
	record: SealedRecord | null,
	row: ComparisonRow,
	end: "departure" | "arrival",
	speaker: Speaker,
): string {
	const { say } = speaker;
	const compared = row[end];
	const reading = record?.statement.readings.find(
		(candidate) => candidate.check === row.check.id && candidate.condition === compared?.condition,
	);
	if (compared === null || reading === undefined) return say("comparison-page.not-recorded");
	const words = readingWords(reading, row.check.kind, speaker);
	if (reading.provenance === "imported") return `${words} (${say("comparison-page.imported")})`;
	return reading.provenance === "reported-to" ? `${words} (${say("comparison-page.reported-reading")})` : words;
}

function firstState(first: ReportLeg["view"]["firstState"], { say }: Speaker): Block[] {
	if (first === null) return [];
	const grade = say(`first-state.grade-${first.grade ?? "none"}`);
	return [
		paragraph(say("report.comparison-first"), "note"),
		paragraph(say("comparison-page.first-state.grade", { grade, why: first.why })),
		...(first.excluded.length === 0
			? []
			: [paragraph(say("comparison-page.first-state.excluded")), list(first.excluded.map(({ says }) => says))]),
		...(first.notExcluded.length === 0
			? []
			: [paragraph(say("comparison-page.first-state.not-excluded")), list(first.notExcluded.map(({ says }) => says))]),
	];
}
