/** What a rule on the time of a claim says, as data. The rules themselves stand in the catalogue. */
import type { Source } from "../sources.ts";

export const REGIMES = [
	"cmr",
	"montreal",
	"cim",
	"upu",
	"de-hgb",
	"de-removals",
	"de-sale",
	"nl-road",
	"fr-road",
	"fr-post",
	"ch-or",
	"uk-domestic",
	"uk-sale",
	"us-motor",
] as const;
export type Regime = (typeof REGIMES)[number];

export const DAMAGES = ["apparent", "not-apparent", "loss", "delay"] as const;
export type Damage = (typeof DAMAGES)[number];

export const CLAIM_EVENTS = [
	"delivered",
	"inHand",
	"discovered",
	"posted",
	"takenOver",
	"placedAtDisposal",
	"jointlyChecked",
	"agreedLimit",
	"claimed",
	"rejected",
	"documentsReturned",
	"noticeSent",
] as const;
export type ClaimEvent = (typeof CLAIM_EVENTS)[number];

/** What follows when the date passes. They differ: a shifted burden of proof is not a lost claim. */
export const CONSEQUENCES = [
	"presumption",
	"burden-shift",
	"extinction",
	"no-liability",
	"contractual",
	"time-bar",
	"deemed-accepted",
	"deemed-lost",
	"incontestable",
	"carrier-duty",
] as const;
export type Consequence = (typeof CONSEQUENCES)[number];

export const FORMS = [
	"any",
	"writing",
	"text-form",
	"registered-letter",
	"carrier-report",
	"request-for-report",
	"confirmed-in-writing",
	"written-claim-with-amount",
	"notice-to-operator",
	"inquiry",
	"court-action",
	"none",
	"none-stated",
] as const;
export type Form = (typeof FORMS)[number];

/** Days that a period does not count. */
export type Skipping = "none" | "sundays-and-holidays" | "weekends-and-holidays";

export type Period =
	/** On the day of the event itself. */
	| { readonly unit: "same-day" }
	/** No number of days: without undue delay, in good time. */
	| { readonly unit: "promptly" }
	/** The law read fixes no period; the contract may. */
	| { readonly unit: "contract" }
	| { readonly unit: "days"; readonly count: number; readonly skipping?: Skipping }
	| { readonly unit: "months"; readonly count: number }
	| { readonly unit: "years"; readonly count: number; readonly ifWilful?: number }
	/** The delivery period once more, at least so many days. */
	| { readonly unit: "period-again"; readonly least: number; readonly leastAcrossBorders: number };

/** Where an end falls on a day off: the next day that is none. */
export type Rolling = "none" | "weekends-and-holidays" | "sundays-and-holidays";

export type Start =
	/** The first of these that is given. */
	| { readonly events: readonly ClaimEvent[] }
	/** Total loss: so many days after the agreed limit; without one, so many after taking over, where the rule has that. */
	| { readonly afterLimitDays: number; readonly afterTakingOverDays?: number };

/** Another way to read the text, that gives another date. */
export type OtherReading =
	| "start-day-counts"
	| "sundays-count"
	| "day-after-posting-counts"
	| "saturday-rolls"
	| "at-once-on-discovery"
	| "across-borders"
	| "status-every-60-days";

export interface ClaimRule {
	readonly id: string;
	readonly regime: Regime;
	readonly damage: readonly Damage[];
	readonly start: Start;
	/** For a total loss, where it starts otherwise. */
	readonly startForLoss?: Start;
	readonly period: Period;
	readonly rolling?: Rolling;
	readonly otherReadings?: readonly OtherReading[];
	/** A claim in the right form stops the time until it is refused, or refused and the documents are returned. */
	readonly suspendedUntil?: "rejected" | "rejected-and-returned";
	readonly form: Form;
	/** Sending in time is enough, by the text read. */
	readonly dispatchSuffices?: true;
	readonly consequence: Consequence;
	readonly article: string;
	/** State of the text in the copy that was read; null where none was read. */
	readonly readOn: string | null;
	readonly source: Source;
}
