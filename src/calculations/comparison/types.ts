/**
 * What is compared and what a comparison says. Three levels, each made from the one before:
 * one reading at two ends (`reading-comparison.ts`), two whole state records (`state-comparison.ts`), and any number
 * of records along the custody line (`custody-line.ts`).
 *
 * Numbers of one check all stand in one unit, the check's own; the arithmetic does not depend on which.
 */
import type { Interval, Judged, Sentence } from "../judged.ts";

// ---- One reading at two ends ------------------------------------------------------------------------------------

export type ReadingKind = "measured" | "count" | "score" | "outcome" | "ratio";

/** Between which records a value may be compared: anywhere, with stated uncertainty, with one instrument, on one bench. */
export type Comparability = "any-bench" | "stated-uncertainty" | "same-instrument" | "same-bench";
export type BetterIs = "higher" | "lower" | "neither";

/**
 * Limits of conformity, both inclusive. `measured` and `score`: of the value. `count`: of the events counted in the
 * recorded exposure. `outcome`: of the share of attempts that went well, 0..1 (1 = every attempt must).
 */
export interface Limits {
	readonly low?: number | undefined;
	readonly high?: number | undefined;
}

/** Accuracy of an instrument at the reading; all errors are half widths of rectangular distributions. */
export interface ReadingInstrument {
	readonly id: string;
	/** ± percent of the reading. 0 says that the instrument adds no error of its own (a register that is read). */
	readonly percentOfReading?: number | undefined;
	/** ± this many counts of the last digit. */
	readonly counts?: number | undefined;
	/** Size of one count. Where `counts` is given it adds no term of its own; else ± half of it. */
	readonly resolution?: number | undefined;
	/** Expanded uncertainty and its coverage factor, from a calibration certificate; takes the place of the specification. */
	readonly certificate?: { readonly expanded: number; readonly k: number } | undefined;
	/** ± what leads that were not nulled may add, in the reading's unit. */
	readonly leadOffset?: number | undefined;
}

/** One end: the departure or the arrival member of `reading-comparison`. */
export interface ReadingEnd {
	readonly values?: readonly number[] | undefined;
	readonly instrument?: ReadingInstrument | undefined;
	readonly benchId?: string | undefined;
	readonly successes?: number | undefined;
	readonly trials?: number | undefined;
	readonly count?: number | undefined;
	readonly exposure?: { readonly amount: number; readonly unit: string } | undefined;
	/** Counts: bursts that the events came in, or the events' times in seconds from which they are counted. */
	readonly bursts?: number | undefined;
	readonly eventTimesS?: readonly number[] | undefined;
	/** Why it was not tested; its presence means that it was not. */
	readonly notTested?: string | undefined;
	/** Limits that this reading carries (the item's own capability); they stand in for the check's at this end. */
	readonly limits?: Limits | undefined;
}

/** How the two ends of a check are judged. */
export interface ReadingRule {
	readonly kind: ReadingKind;
	readonly comparability: Comparability;
	readonly betterIs: BetterIs;
	readonly limits?: Limits | undefined;
	/** A difference up to this much does not matter. `ratio`: a share, 0.05 is 5 %. */
	readonly equivalenceMargin?: number | undefined;
	/** Counts: `lifetime` is a counter that the item keeps and that never falls; otherwise events over the exposure. */
	readonly counter?: "lifetime" | undefined;
	/** Where such a counter stops counting. */
	readonly saturatesAt?: number | undefined;
	/** 0.5..1 exclusive, 0.95 where not given; errors of the first kind are 1 minus this. */
	readonly coverageProbability?: number | undefined;
	/** Symbol of the unit, for sentences only. */
	readonly unit?: string | undefined;
}

export interface ReadingComparisonInput extends ReadingRule {
	readonly departure: ReadingEnd;
	readonly arrival: ReadingEnd;
	/** One control item measured on both benches: it makes them comparable. */
	readonly control?: { readonly departure: ReadingEnd; readonly arrival: ReadingEnd } | undefined;
}

export type ComparisonVerdict = "differs" | "equivalent" | "inconclusive" | "not-comparable" | "not-tested";
export type Direction = "worse" | "better" | "sideways";
export type ConformityVerdict = "proven-good" | "held-as-tested" | "inconclusive" | "proven-bad";

/** Whether one end keeps its limits. Null in place of this: no limit is known, or this end was not tested. */
export interface Conformity {
	readonly verdict: ConformityVerdict;
	/** Probability that the true value keeps the limits (JCGM 106); null for counts, outcomes and unknown uncertainty. */
	readonly probability: number | null;
	/** Counts and outcomes: one-sided upper bound of what this exposure can not exclude; null otherwise. */
	readonly upperBound: number | null;
	/** What the upper bound is of: events per unit of exposure, or the share of attempts that fail. */
	readonly upperBoundOf: "rate" | "failure-share" | null;
}

export interface ReadingComparison {
	readonly verdict: ComparisonVerdict;
	/** Null where no difference is shown either way. */
	readonly direction: Direction | null;
	readonly conformity: { readonly departure: Conformity | null; readonly arrival: Conformity | null };
	/** Arrival minus departure: of values, of rates, of shares of attempts that went well. */
	readonly difference: number | null;
	/** Half width of the difference's interval, measured values only. */
	readonly expandedUncertainty: number | null;
	/** Difference over the root sum of squares of both ends' expanded uncertainties; null where they are not independent. */
	readonly enNumber: number | null;
	readonly pValue: number | null;
	/** Arrival over departure, where the interval is one of a ratio of values. */
	readonly ratio: number | null;
	readonly interval: Interval | null;
	readonly intervalOf: "difference" | "ratio" | "rate-ratio" | null;
	readonly why: Sentence;
}

// ---- Two state records ------------------------------------------------------------------------------------------

/** A check as the comparison needs it; the catalogue's definitions extend it. */
export interface ComparedCheck {
	readonly id: string;
	/** `visual`: something was looked at once; 1 of 1 is nothing found, 0 of 1 is something found. */
	readonly kind: Exclude<ReadingKind, "ratio"> | "visual";
	readonly comparability: Comparability;
	readonly betterIs: BetterIs;
	/** Limits that hold for every item of the class. */
	readonly limits?: Limits | undefined;
	/** In place of `limits`: they are the item's own and come with the reading; without them there is no conformity. */
	readonly limitsFromItem?: boolean | undefined;
	/** The larger of an absolute margin and a share of the departure reading. */
	readonly margin?:
		| { readonly absolute?: number | undefined; readonly percentOfDeparture?: number | undefined }
		| undefined;
	/** The condition that the check is defined for; a reading under another condition does not answer it. */
	readonly condition?: string | undefined;
	/** The item itself reports the value: read without error beyond this resolution (0: exact). */
	readonly itemReportsResolution?: number | undefined;
	/** Ohms read through two test leads: what leads add that were not nulled goes into the uncertainty. */
	readonly readThroughLeads?: boolean | undefined;
	/** Counts: a counter that the item keeps over its life, and where it stops. */
	readonly counter?: "lifetime" | undefined;
	readonly saturatesAt?: number | undefined;
	/** Symbol of the unit, for sentences only. */
	readonly unitSymbol?: string | undefined;
}

/** A reading of a state record, numbers already in the check's unit and the instrument resolved. */
export interface StateReading extends ReadingEnd {
	readonly check: string;
	/** `cold`, `warm`, `idle`, `load`, `unknown`. */
	readonly condition: string;
	readonly provenance?: string | undefined;
	/** Unit of the values where the check allows several that do not convert (rpm, percent); two units do not compare. */
	readonly unit?: string | undefined;
	/** Whether the test leads were nulled; anything but true counts as not. */
	readonly leadsNulled?: boolean | undefined;
	/** The definition of a shop's own check (`own-1` …), sealed with the reading. */
	readonly definition?: ComparedCheck | undefined;
	/** Name of the own check: two ends answer the same check only under the same name. */
	readonly definitionName?: string | undefined;
}

export type StateOfItem = "good" | "partly-good" | "intermittent" | "does-not-start" | "not-tested" | "unrepaired";

/** One end of a comparison: what a sealed state record says. Texts are null once erased. */
export interface ComparedState {
	readonly recordId: string;
	readonly stateOfItem: StateOfItem;
	/** Mark → what was read: `serial-number`, `uuid`, `maker`, `model`. */
	readonly identity: Readonly<Record<string, string | null | undefined>>;
	/** Natural marks, as described. */
	readonly marks: readonly (string | null)[];
	readonly benchId?: string | undefined;
	readonly driver?: string | null | undefined;
	readonly firmware?: string | null | undefined;
	readonly ambientDegC?: number | undefined;
	readonly readings: readonly StateReading[];
	/** Check id → what a control item that is known to be good showed on the same bench. */
	readonly controls?: Readonly<Record<string, ReadingEnd>> | undefined;
	/** Arrival: repair, flashing, cleaning or taking apart before the test; then it is no first state. */
	readonly workDoneBefore?: boolean | undefined;
	/** Arrival: water, a wet card, or liquid was seen. */
	readonly wetnessSeen?: boolean | undefined;
}

export interface StateComparisonInput {
	/** Null: this end was not recorded. */
	readonly departure: ComparedState | null;
	readonly arrival: ComparedState | null;
	/** Whether the two are the ends of one hand-over: only then is better on arrival a conflict. True where not given. */
	readonly handOver?: boolean | undefined;
	/** The checks of the item's class, in the order to show them. Own checks come from the readings. */
	readonly checks: readonly ComparedCheck[];
}

export type ComparisonOutcome =
	| "compared"
	| "identity-mismatch"
	| "no-first-state"
	| "state-conflict"
	| "moisture-hold";

/** Names of marks, sorted by what the two ends say. */
export interface IdentityComparison {
	readonly agree: readonly string[];
	readonly differ: readonly string[];
	/** Equal but for letters that are easily read for digits (O and 0, I or L and 1). */
	readonly readAlike: readonly string[];
	/** Recorded at one end only. */
	readonly notSeen: readonly string[];
	/** Of those that differ: by one character or two neighbours swapped, as a slip would. */
	readonly likelySlips: readonly string[];
	/** Independent points that differ: serial number, device id, model, mass. */
	readonly mismatches: readonly string[];
	/**
	 * Of the marks recorded at departure that a board shows without power (mass where weighed): how many can be held against
	 * the arrival, and how many of these agree. A natural mark in other words is not compared.
	 */
	readonly withoutPower: { readonly agree: number; readonly compared: number; readonly of: number };
}

export interface ComparisonRow {
	readonly check: ComparedCheck;
	/** Null: the record says nothing about this check. */
	readonly departure: StateReading | null;
	readonly arrival: StateReading | null;
	readonly comparison: Judged<ReadingComparison>;
}

export interface StateComparison {
	readonly outcome: ComparisonOutcome;
	readonly why: Sentence;
	readonly identity: IdentityComparison;
	readonly rows: readonly ComparisonRow[];
	/** Check ids that were not good when the item left and are good on arrival; `state-of-item` for its state as a whole. */
	readonly betterOnArrival: readonly string[];
	/** How many differences were tested together; their p-values were adjusted for it (Holm). */
	readonly adjustedFor: number;
}

// ---- The custody line -------------------------------------------------------------------------------------------

/** Whether a check was good in one record. `unclear`: tested, not decided. `no-limit`: tested, but nothing says what good is. */
export type Goodness = "good" | "not-good" | "unclear" | "untested" | "no-limit";

/** A sealed record's place on the line. Times are RFC 3339; order is by `observedAt`. */
export interface CustodyRecord {
	readonly recordId: string;
	readonly stage: "departure" | "arrival" | "bench";
	readonly holderId: string;
	readonly consignmentId: string | null;
	readonly observedAt: string;
	/** Check id → goodness; a check that is missing is untested. */
	readonly goodness: Readonly<Record<string, Goodness>>;
}

/** What is known of a leg's times. */
export interface CustodyLeg {
	readonly consignmentId: string;
	readonly dispatchedAt?: string | undefined;
	readonly deliveredAt?: string | undefined;
	readonly inHandAt?: string | undefined;
}

/**
 * A span between two neighbouring moments. `stay`: with `holderId`. `transit`: on the way. `nobody`: delivered and not
 * yet in hand. `unrecorded`: the holder changed and no record says when.
 */
export interface CustodySpan {
	readonly kind: "stay" | "transit" | "nobody" | "unrecorded";
	readonly holderId: string | null;
	readonly consignmentId: string | null;
	readonly startsAt: string;
	readonly endsAt: string;
	/** The records between which the span lies. */
	readonly afterRecordId: string;
	readonly beforeRecordId: string;
}

/** A change of one check, placed between two records. */
export interface CustodyChange {
	readonly check: string;
	/**
	 * `lost`: good, then not good. `mended`: not good, then good, with a stay between in which work can be done.
	 * `conflict`: not good when it left, good on arrival. `first-seen`: not good in the first record that tested it.
	 */
	readonly kind: "lost" | "mended" | "conflict" | "first-seen";
	/** The last record before the change that tested the check; null for `first-seen`. */
	readonly afterRecordId: string | null;
	readonly beforeRecordId: string;
	/** Indexes into `spans`: the change lies somewhere in these. Empty for `first-seen`. */
	readonly spans: readonly number[];
	/** Records in between that did not decide the check and so widen the place. */
	readonly widenedBy: readonly string[];
}

export interface CustodyLine {
	/** Record ids in observed order. */
	readonly recordIds: readonly string[];
	readonly spans: readonly CustodySpan[];
	readonly changes: readonly CustodyChange[];
}
