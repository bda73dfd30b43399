/** Findings that the records themselves hold, each with the records it was read from. What they do not tell is unknown. */
import { goodnessFrom } from "../../calculations/comparison/goodness.ts";
import { isDecisiveSame } from "../../calculations/comparison/identity.ts";
import type { ComparisonRow } from "../../calculations/comparison/types.ts";
import type { Sentence } from "../../calculations/judged.ts";
import type { Finding, FindingState } from "../../calculations/origin/types.ts";
import type { SealedRecord } from "../records/record-views.ts";
import { soakSoFar } from "../records/soak-so-far.ts";
import type { ShockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { contradictions } from "./contradictions.ts";
import { showsSameItem } from "./same-item.ts";

export interface DerivedFinding extends Finding {
	readonly recordIds: readonly string[];
	/** Recordings that it was read from. They are not sealed. */
	readonly recordingIds: readonly string[];
	/** What was found in particular, or why it is not known; else the finding's own words. */
	readonly says: Sentence | null;
	/** Said by whoever asks, for this answer only, and kept nowhere. */
	readonly given: boolean;
}

/** Points looked at that show mechanical damage, and those that show something loosened. */
const MECHANICAL = ["visual-parts", "visual-cracks", "visual-connectors", "visual-edge-contacts"];
const LOOSENED = ["visual-bracket", "visual-rattle", "visual-fan"];
/** A clean test that counts as long: excludes a miss in one start of five at 95 %, and the lower end of the trade's soak. Our choice. */
const LONG_STARTS = 14;
const LONG_SOAK_H = 2;
/** A failure within this of a good first test came at once, one later than this grew. Our choice. */
const SOON_AFTER_H = 24;
const GREW_AFTER_H = 7 * 24;

/** All findings that records and recordings decide, present or absent; and one that a recorder left open, with the reason. */
export function derivedFindings(found: ConsignmentComparison, shock: ShockOnLeg | null): DerivedFinding[] {
	const { departure, arrival } = found;
	const ends = [departure, arrival].flatMap((record) => record?.view.id ?? []);
	const told: [id: string, state: FindingState, recordIds: readonly string[]][] = [
		...identityFindings(found).map((id): [string, FindingState, string[]] => [id, "present", ends]),
		...(departure === null ? [] : departureFindings(departure)),
		...(arrival === null ? [] : arrivalFindings(found, arrival)),
		...(arrival === null ? [] : laterFindings(found, arrival)),
	];
	if (found.comparison.outcome === "state-conflict") told.push(["better-on-arrival", "present", ends]);
	const contradicting = contradictions(found);
	if (contradicting.length > 0) told.push(["record-contradicts-itself", "present", contradicting]);
	const ofRecords = told
		.filter(([, state]) => state !== "unknown")
		.map(([id, state, recordIds]) => ({ id, state, recordIds, recordingIds: [], says: null, given: false }));
	return [...ofRecords, ...recorderFindings(shock)];
}

/** One recorder answers both: a shock beyond the design, and a whole way without one. */
function recorderFindings(shock: ShockOnLeg | null): DerivedFinding[] {
	if (shock === null) return [];
	const { state, says, recordingId } = shock;
	const finding = (id: string, state: FindingState, says: Sentence | null): DerivedFinding => ({
		id,
		state,
		recordIds: [],
		recordingIds: [recordingId],
		says,
		given: false,
	});
	if (state === "unknown") return [finding("shock-beyond-design", "unknown", says)];
	const isNone = state === "absent";
	return [
		finding("shock-beyond-design", state, isNone ? null : says),
		finding("no-shock-recorded", isNone ? "present" : "absent", isNone ? says : null),
	];
}

function identityFindings({ comparison }: ConsignmentComparison): string[] {
	const { identity } = comparison;
	if (comparison.outcome === "identity-mismatch") return ["marks-differ"];
	if (showsSameItem(comparison)) return ["marks-agree"];
	return identity.mismatches.length === 0 && isDecisiveSame(identity) ? ["number-agrees"] : [];
}

type Told = [id: string, state: FindingState, recordIds: readonly string[]][];

function departureFindings(departure: SealedRecord): Told {
	const { readings } = departure.statement;
	const at = [departure.view.id];
	const starts = readings.filter(({ check, trials }) => check.startsWith("starts-") && trials !== undefined);
	if (starts.length === 0) return [];
	const missed = starts.some(({ trials = 0, successes = 0 }) => successes < trials);
	const cold = starts.find(({ check }) => check === "starts-cold");
	const { hours, failures } = soakSoFar(readings);
	const long = !missed && (cold?.trials ?? 0) >= LONG_STARTS && failures === 0 && hours >= LONG_SOAK_H;
	return [
		["start-missed-before", missed ? "present" : "absent", at],
		["long-clean-test-before", long ? "present" : "absent", at],
	];
}

function arrivalFindings(found: ConsignmentComparison, arrival: SealedRecord): Told {
	const { parcel, firstPowerOn, setUp, readings, state } = arrival.statement;
	const at = [arrival.view.id];
	const both = [...(found.departure === null ? [] : [found.departure.view.id]), ...at];
	const starts = readings.filter(({ check, trials }) => check.startsWith("starts-") && trials !== undefined);
	const tried = starts.reduce((sum, { trials = 0 }) => sum + trials, 0);
	const well = starts.reduce((sum, { successes = 0 }) => sum + successes, 0);
	const dead = state === "does-not-start";
	const outside = parcel?.outerDamage;
	return [
		["parcel-damaged", seen(outside === undefined || outside === "not-looked" ? undefined : outside === "seen"), at],
		["indicator-tripped", seen(parcel?.indicatorTripped), at],
		["new-mechanical-damage", newlySeen(found.comparison.rows, MECHANICAL), both],
		["parts-loosened", newlySeen(found.comparison.rows, LOOSENED), both],
		["wetness-seen", wetness(found, firstPowerOn), at],
		["control-item-good", controlOf(found, setUp), at],
		["slot-limits", found.link.arrival?.result?.judgement === "slot-limited" ? "present" : "unknown", at],
		["some-starts-good", tried > 0 ? seen(well > 0 && well < tried) : "unknown", at],
		["good-on-other-computer", dead && (setUp.platforms ?? 1) >= 2 ? "absent" : "unknown", at],
	];
}

function seen(said: boolean | undefined): FindingState {
	if (said === undefined) return "unknown";
	return said ? "present" : "absent";
}

/** Whether one of the points was found on arrival and not before; absent only where all that were looked at stayed sound. */
function newlySeen(rows: readonly ComparisonRow[], ids: readonly string[]): FindingState {
	const looked = rows.filter(({ check }) => ids.includes(check.id)).map(({ comparison }) => comparison.result);
	if (looked.some((result) => result?.verdict === "differs" && result.direction === "worse")) return "present";
	const sound = looked.filter((result) => result?.verdict === "equivalent");
	const found = looked.some((result) => result !== null && goodnessFrom(result.conformity.arrival) === "not-good");
	return sound.length >= 2 && !found ? "absent" : "unknown";
}

function wetness(
	{ comparison }: ConsignmentComparison,
	firstPowerOn: SealedRecord["statement"]["firstPowerOn"],
): FindingState {
	const marks = comparison.rows.find(({ check }) => check.id === "visual-liquid-marks")?.comparison.result;
	const newMarks = marks?.verdict === "differs" && marks.direction === "worse";
	if (newMarks || firstPowerOn?.wetnessSeen === true || firstPowerOn?.stopSigns?.includes("liquid") === true)
		return "present";
	return seen(firstPowerOn?.wetnessSeen);
}

/** The control item before and after; or in the same slot, running its link as the card should. */
function controlOf({ arrival }: ConsignmentComparison, setUp: SealedRecord["statement"]["setUp"]): FindingState {
	if (setUp.controlBefore === false || setUp.controlAfter === false) return "absent";
	if (setUp.controlBefore === true && setUp.controlAfter === true) return "present";
	const { control, card } = arrival?.statement.link ?? {};
	if (control === undefined || card === undefined) return "unknown";
	return control.width >= card.width && control.speedGTPerS >= card.speedGTPerS ? "present" : "unknown";
}

/** What records after the first arrival tell. */
function laterFindings({ order, departure, records }: ConsignmentComparison, first: SealedRecord): Told {
	const told: Told = [];
	const since = (record: SealedRecord) => hoursBetween(first.statement.observed.at, record.statement.observed.at);
	const later = records.filter((record) => record.view.id !== first.view.id && since(record) > 0);
	const both = (record: SealedRecord) => [first.view.id, record.view.id];
	const isBad = ({ statement }: SealedRecord) =>
		["does-not-start", "partly-good", "intermittent"].includes(statement.state) || errorsIn(statement) > 0;
	// What the repairer finds good was mended; and only a computer that is named, and another one, is another computer.
	const elsewhere = later.find(
		({ statement, view }) =>
			view.holderId === first.view.holderId &&
			view.holderId !== order.repairer.id &&
			statement.state === "good" &&
			statement.firstPowerOn?.workDoneBefore !== true &&
			isOtherComputer(first.statement.setUp, statement.setUp),
	);
	if (first.statement.state !== "good" && elsewhere !== undefined && sameHolderThroughout(later, elsewhere)) {
		told.push(["good-on-other-computer", "present", both(elsewhere)]);
	}
	const bench = departure?.statement.setUp.benchId;
	const back = later.find((record) => bench !== undefined && record.statement.setUp.benchId === bench && isBad(record));
	if (back !== undefined) told.push(["bad-on-departure-bench", "present", both(back)]);
	const failed = later.find(isBad);
	if (first.statement.state === "good" && failed !== undefined) {
		told.push(["good-on-arrival", "present", both(failed)]);
		if (since(failed) <= SOON_AFTER_H) told.push(["good-at-first-then-bad", "present", both(failed)]);
		const grown = later.find((record) => since(record) >= GREW_AFTER_H && errorsIn(record.statement) > 0);
		const none = [first, ...later].find(({ statement }) => errorsCounted(statement) && errorsIn(statement) === 0);
		if (grown !== undefined && none !== undefined) told.push(["errors-grew-later", "present", both(grown)]);
	}
	return told;
}

/** Whether no other holder had it between the first arrival and this record. */
function sameHolderThroughout(later: readonly SealedRecord[], last: SealedRecord): boolean {
	return later.slice(0, later.indexOf(last)).every(({ view }) => view.holderId === last.view.holderId);
}

/** Both are named, and not the same. */
function isOtherComputer(one: SealedRecord["statement"]["setUp"], other: SealedRecord["statement"]["setUp"]): boolean {
	return typeof one.host === "string" && typeof other.host === "string" && one.host.trim() !== other.host.trim();
}

function errorsIn({ readings }: SealedRecord["statement"]): number {
	return Math.max(0, ...readings.map(({ count }) => count ?? 0));
}

function errorsCounted({ readings }: SealedRecord["statement"]): boolean {
	return readings.some(({ count }) => count !== undefined);
}

function hoursBetween(from: string, to: string): number {
	return (Date.parse(to) - Date.parse(from)) / 3_600_000;
}
