/** A catalogue check at two ends as the rule and the ends that `reading-comparison` takes. */
import { isTested } from "./tested.ts";
import type { ComparedCheck, ReadingEnd, ReadingInstrument, ReadingKind, ReadingRule, StateReading } from "./types.ts";

/**
 * Leads that were not nulled add up to this much, and matter below `LEADS_MATTER_BELOW_OHM`. Published: a meter maker's
 * note on lead resistance ("0.2 to 0.5 Ω", read); that it is of no account from 10 Ω on is our choice.
 */
export const LEAD_OFFSET_OHM = 0.5;
export const LEADS_MATTER_BELOW_OHM = 10;

/** Something looked at once is an outcome of one trial. */
export function readingKindOf(check: ComparedCheck): ReadingKind {
	return check.kind === "visual" ? "outcome" : check.kind;
}

/** The rule of a check, its margin taken at the departure reading. */
export function ruleOf(check: ComparedCheck, departure: ReadingEnd | null): ReadingRule {
	return {
		kind: readingKindOf(check),
		comparability: check.comparability,
		betterIs: check.betterIs,
		limits: check.limits,
		equivalenceMargin: marginOf(check, departure),
		counter: check.counter,
		saturatesAt: check.saturatesAt,
		unit: check.unitSymbol,
	};
}

/**
 * A reading as an end: the bench it was made on; the item itself as the instrument where it reports the value. A check
 * whose limits are the item's own keeps those of the reading, any other check the class's.
 */
export function endOf(check: ComparedCheck, reading: StateReading | null, benchId: string | undefined): ReadingEnd {
	if (reading === null) return { notTested: "not-recorded" };
	if (!answersCondition(check, reading)) return { notTested: "other-condition" };
	return {
		...reading,
		benchId: reading.benchId ?? benchId,
		instrument: instrumentOf(check, reading),
		exposure: inHours(reading.exposure),
		limits: check.limitsFromItem === true ? reading.limits : undefined,
	};
}

/** Exposures in time stand in hours, so that minutes at one end compare with hours at the other. */
function inHours(exposure: ReadingEnd["exposure"]): ReadingEnd["exposure"] {
	return exposure?.unit === "s" ? { amount: exposure.amount / 3600, unit: "h" } : exposure;
}

function instrumentOf(check: ComparedCheck, reading: StateReading): ReadingInstrument | undefined {
	const { instrument } = reading;
	const resolution = check.itemReportsResolution;
	if (instrument === undefined) {
		return resolution === undefined ? undefined : { id: "item", percentOfReading: 0, resolution };
	}
	const leadsAdd =
		check.readThroughLeads === true &&
		reading.leadsNulled !== true &&
		(reading.values ?? []).some((ohm) => !(Math.abs(ohm) >= LEADS_MATTER_BELOW_OHM));
	return leadsAdd ? { leadOffset: LEAD_OFFSET_OHM, ...instrument } : instrument;
}

/** Whether a record has a reading that answers the check. */
export function answers(check: ComparedCheck, reading: StateReading | null): reading is StateReading {
	return reading !== null && answersCondition(check, reading) && isTested(readingKindOf(check), reading);
}

/** What a link or a temperature does at idle says nothing about load; an unknown condition answers other checks. */
export function answersCondition(check: ComparedCheck, reading: StateReading): boolean {
	if (check.condition === undefined || reading.condition === check.condition) return true;
	return reading.condition === "unknown" && check.condition !== "load";
}

/** The reading of a record that answers the check best: under its condition before any other. */
export function readingFor(check: ComparedCheck, readings: readonly StateReading[]): StateReading | null {
	const all = readings.filter((reading) => reading.check === check.id);
	return all.find((reading) => answersCondition(check, reading)) ?? all[0] ?? null;
}

function marginOf({ margin }: ComparedCheck, departure: ReadingEnd | null): number | undefined {
	if (margin === undefined) return undefined;
	const values = departure?.values ?? [];
	const mean = values.reduce((total, value) => total + Math.abs(value), 0) / Math.max(1, values.length);
	const larger = Math.max(margin.absolute ?? 0, (mean * (margin.percentOfDeparture ?? 0)) / 100);
	return larger > 0 ? larger : undefined;
}
