/** What a comparison says on its first screen, in sentences: certain, not certain, placed in time, to do next. */
import type { ComparisonRow, CustodyChange, ReadingComparison } from "../../calculations/comparison/types.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { checksThatStop } from "../records/power-stop.ts";
import type { SealedRecord } from "../records/record-views.ts";
import { nameOf } from "./check-name.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { timesAtOdds } from "./contradictions.ts";
import { isTested } from "./is-tested.ts";
import { asHeld, isReported } from "./told-second-hand.ts";
import { type Handled, NOTHING_HANDLED, whatNext } from "./what-next.ts";

/** Writes a claimed time for whoever reads it: RFC 3339 UTC, and the minutes of its offset. */
export type TimeWriter = (at: string, offsetMinutes: number) => string;

export interface LeadScreen {
	readonly certain: readonly string[];
	readonly uncertain: readonly string[];
	/** Changes that lie on this leg. */
	readonly placed: readonly string[];
	/** Changes elsewhere on the custody line. */
	readonly elsewhere: readonly string[];
	readonly next: readonly string[];
}

/** The first screen; both ends must be there. */
export function leadScreen(
	found: ConsignmentComparison,
	writeTime: TimeWriter,
	speaker: Speaker = ENGLISH,
	handled: Handled = NOTHING_HANDLED,
): LeadScreen {
	const { say } = speaker;
	const rows = found.comparison.rows.map((row) => ({ row, name: rowName(row, speaker), judged: judgedOf(row) }));
	const placeOf = (change: CustodyChange) => placeWords(change, found, writeTime, speaker);
	const isOnLeg = (change: CustodyChange) =>
		change.spans.some((place) => found.line.spans[place]?.consignmentId === found.consignment.id) ||
		(change.kind === "first-seen" && change.beforeRecordId === found.arrival?.view.id);
	const comparable = isComparable(found);
	return {
		certain: certainOf(found, comparable ? rows : [], speaker),
		uncertain: [
			...(timesAtOdds(found).length > 0 ? [speaker.say("comparison-page.uncertain.times")] : []),
			...outcomeWords(found, speaker),
			...(comparable ? uncertainOf(rows, speaker) : []),
		],
		placed: comparable ? found.line.changes.filter(isOnLeg).map(placeOf) : [],
		elsewhere: found.line.changes.filter((change) => !isOnLeg(change)).map(placeOf),
		next: whatNext(found, handled).map((key) => say(`comparison-page.next.${key}` as ReportKey)),
	};
}

/** Whether both ends tell of the same board as it came: only then does a row say something about what changed. */
export function isComparable({ comparison }: ConsignmentComparison): boolean {
	return comparison.outcome !== "identity-mismatch" && comparison.outcome !== "no-first-state";
}

/** Why the comparison as a whole is more than check by check; what is better than when it left, by name. */
function outcomeWords({ comparison }: ConsignmentComparison, speaker: Speaker): string[] {
	const { say, speak } = speaker;
	if (comparison.outcome === "compared") return [];
	const better = comparison.betterOnArrival.map((id) => {
		const row = comparison.rows.find((candidate) => candidate.check.id === id);
		return row === undefined ? say("arrival.state") : rowName(row, speaker);
	});
	const conflict =
		comparison.outcome === "state-conflict"
			? [say("comparison-page.uncertain.better", { checks: better.join(", ") })]
			: [];
	return [speak(comparison.why), ...conflict];
}

/** A check's name on the page. */
export function rowName(row: ComparisonRow, speaker: Speaker = ENGLISH): string {
	return nameOf(row.check, row.departure?.definitionName ?? row.arrival?.definitionName, speaker);
}

interface NamedRow {
	readonly row: ComparisonRow;
	readonly name: string;
	/** Null where it could not be assessed. */
	readonly judged: ReadingComparison | null;
}

function judgedOf(row: ComparisonRow): ReadingComparison | null {
	return row.comparison.status === "assessed" ? row.comparison.result : null;
}

const isGood = (verdict: string | undefined) => verdict === "proven-good" || verdict === "held-as-tested";
const isBadAtAnEnd = (judged: ReadingComparison) =>
	judged.conformity.departure?.verdict === "proven-bad" || judged.conformity.arrival?.verdict === "proven-bad";

/** The weightiest first: the item as a whole, signs to stop, what changed; then what is as it was. */
function certainOf(
	{ comparison, departure, arrival }: ConsignmentComparison,
	rows: readonly NamedRow[],
	speaker: Speaker,
): string[] {
	const { say, between } = speaker;
	const ends = [departure, arrival];
	const held = (words: string) => asHeld(words, ends, speaker);
	const heldOnArrival = (words: string) => asHeld(words, [arrival], speaker);
	const { changed, unchanged } = certainOfRows(rows, speaker);
	const { parcel, firstPowerOn } = arrival?.statement ?? {};
	const signs = (firstPowerOn?.stopSigns ?? []).map((sign) => say(`arrival.stop-sign.${sign}` as ReportKey));
	const points = checksThatStop(arrival?.statement ?? {}).map((id) => {
		const row = comparison.rows.find(({ check }) => check.id === id);
		return say("general.quoted", { text: row === undefined ? id : rowName(row, speaker) });
	});
	return [
		...statesWords(departure, arrival, speaker),
		...[
			...(signs.length > 0 ? [say("comparison-page.certain.stop", { signs: signs.join(between) })] : []),
			...(points.length > 0 ? [say("comparison-page.certain.stop-point", { checks: points.join(between) })] : []),
			...(firstPowerOn?.wetnessSeen === true ? [say("comparison-page.certain.wet")] : []),
		].map(heldOnArrival),
		...changed.map(held),
		...(parcel?.outerDamage === "seen" ? [say("comparison-page.certain.parcel-damage")] : []).map(heldOnArrival),
		...[
			...(comparison.identity.agree.includes("serial-number") ? [say("comparison-page.certain.same-board")] : []),
			...unchanged,
		].map(held),
	];
}

/** The item as a whole, where the two ends differ; each end with what it rests on. */
function statesWords(departure: SealedRecord | null, arrival: SealedRecord | null, speaker: Speaker): string[] {
	if (departure === null || arrival === null || departure.statement.state === arrival.statement.state) return [];
	const states = {
		left: stateWords(departure.statement.state, speaker),
		arrived: stateWords(arrival.statement.state, speaker),
	};
	if (!isReported(departure) && !isReported(arrival)) return [speaker.say("comparison-page.certain.states", states)];
	const said = (end: "left" | "arrived", record: SealedRecord) =>
		speaker.say(`comparison-page.certain.state-${end}${isReported(record) ? "-reported" : ""}`, {
			state: states[end],
		});
	return [`${said("left", departure)} ${said("arrived", arrival)}`];
}

function stateWords(state: string, { say }: Speaker): string {
	return say(`arrival.state.${state}` as ReportKey);
}

/**
 * Whether the readings of two ends may not be held against each other while one of them tells by itself: each end is held to the
 * check's limits alone, and only a difference needs the same means at both.
 */
export function isHeldApart({ verdict, conformity }: ReadingComparison): boolean {
	const tells = ["proven-good", "held-as-tested", "proven-bad"];
	return (
		verdict === "not-comparable" &&
		[conformity.departure, conformity.arrival].some((end) => tells.includes(end?.verdict ?? "none"))
	);
}

function certainOfRows(
	rows: readonly NamedRow[],
	{ say }: Speaker,
): { readonly changed: readonly string[]; readonly unchanged: readonly string[] } {
	const changed: string[] = [];
	const unchanged: string[] = [];
	const same: string[] = [];
	const goodAtBoth: string[] = [];
	for (const { row, name: check, judged } of rows) {
		if (judged === null) continue;
		// A point that was looked at has no limits: “No cracks: outside its limits” would be read either way.
		const of = row.check.kind === "visual" ? "point" : "bad";
		const departure = judged.conformity.departure?.verdict;
		const arrival = judged.conformity.arrival?.verdict;
		const apart = isHeldApart(judged) ? ` ${say("comparison-page.certain.apart")}` : "";
		if (arrival === "proven-bad" && departure === "proven-bad") {
			changed.push(`${say(`comparison-page.certain.${of}-both`, { check })}${apart}`);
		} else if (arrival === "proven-bad") {
			const before = say(
				`comparison-page.${of === "point" ? "before-point" : "before"}.${departure ?? "none"}` as ReportKey,
			);
			changed.push(`${say(`comparison-page.certain.${of}-arrival`, { check, before })}${apart}`);
		} else if (departure === "proven-bad") {
			changed.push(`${say(`comparison-page.certain.${of}-departure`, { check })}${apart}`);
		} else if (judged.verdict === "differs") {
			const direction = say(`comparison-page.direction.${judged.direction ?? "sideways"}`);
			changed.push(say("comparison-page.certain.differs", { check, direction }));
		} else if (judged.verdict === "equivalent") same.push(check);
		else if (isGood(departure) && isGood(arrival)) goodAtBoth.push(check);
	}
	if (goodAtBoth.length > 0) {
		unchanged.push(say("comparison-page.certain.good-both", { checks: goodAtBoth.join(", ") }));
	}
	if (same.length > 0) unchanged.push(say("comparison-page.certain.same", { checks: same.join(", ") }));
	return { changed, unchanged };
}

function uncertainOf(rows: readonly NamedRow[], { say, speak }: Speaker): string[] {
	const sentences: string[] = [];
	const testedOnce: string[] = [];
	let untested = 0;
	for (const { row, name: check, judged } of rows) {
		if (row.comparison.status !== "assessed") {
			const why = speak(row.comparison.reason.message);
			sentences.push(say("comparison-page.uncertain.row", { check, why }));
			continue;
		}
		if (judged === null) continue;
		if (judged.verdict === "not-tested") {
			if (isTested(row.departure) || isTested(row.arrival)) testedOnce.push(check);
			else untested += 1;
			continue;
		}
		const open = judged.verdict === "not-comparable" || judged.verdict === "inconclusive";
		const bothGood = isGood(judged.conformity.departure?.verdict) && isGood(judged.conformity.arrival?.verdict);
		if (open && !bothGood && !isBadAtAnEnd(judged)) {
			sentences.push(say("comparison-page.uncertain.row", { check, why: speak(judged.why) }));
		}
	}
	if (testedOnce.length > 0) {
		sentences.push(say("comparison-page.uncertain.tested-once", { checks: testedOnce.join(", ") }));
	}
	if (untested > 0) sentences.push(say("comparison-page.uncertain.untested", { count: untested }));
	return sentences;
}

function placeWords(
	change: CustodyChange,
	found: ConsignmentComparison,
	writeTime: TimeWriter,
	speaker: Speaker,
): string {
	const { say, between } = speaker;
	const names = new Map(found.comparison.rows.map((row) => [row.check.id, rowName(row, speaker)]));
	const sentence = say(`comparison-page.change.${change.kind}`, {
		check: change.check === "state-of-item" ? say("arrival.state") : (names.get(change.check) ?? change.check),
		after: change.afterRecordId === null ? "" : recordWords(change.afterRecordId, found, writeTime, speaker),
		before: recordWords(change.beforeRecordId, found, writeTime, speaker),
		spans: change.spans.map((place) => spanWords(place, found, speaker)).join(between),
	});
	return change.widenedBy.length > 0 ? `${sentence} ${say("comparison-page.change.widened")}` : sentence;
}

function recordWords(
	recordId: string,
	{ records }: ConsignmentComparison,
	writeTime: TimeWriter,
	{ say }: Speaker,
): string {
	const record = records.find(({ view }) => view.id === recordId);
	if (record === undefined) return recordId;
	const { at, offsetMinutes } = record.statement.observed;
	const words = say(`comparison-page.record.${record.view.stage}`, { time: writeTime(at, offsetMinutes) });
	return isReported(record) ? `${words} (${say("spine.reported")})` : words;
}

function spanWords(place: number, { line, order }: ConsignmentComparison, { say }: Speaker): string {
	const span = line.spans[place];
	if (span === undefined) return "";
	const holder = span.holderId === order.owner.id ? order.owner.name : order.repairer.name;
	return say(`comparison-page.span.${span.kind}`, { holder });
}
