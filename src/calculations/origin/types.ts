/** What is found, what a finding speaks for, and what follows for each origin. */
import type { Sentence } from "../judged.ts";
import type { Source } from "../sources.ts";
import type { Origin } from "./origins.ts";

export type FindingState = "present" | "absent" | "unknown";

/** What a finding does to an origin: it fits it better than the others, it fits it worse, or it leaves no room for it. */
export type FindingDirection = "for" | "against" | "rules-out";
export type Directions = Readonly<Partial<Record<Origin, FindingDirection>>>;

/** A documented rule; the catalogue holds them. */
export interface FindingRule {
	readonly id: string;
	/** Findings of one group tell of one fact and count once. */
	readonly group?: string | undefined;
	/** At which end, or on the way, it can be looked for. */
	readonly side: "departure" | "transit" | "arrival" | "either";
	readonly whenPresent: Directions;
	readonly whenAbsent?: Directions | undefined;
	readonly source: Source;
}

/** A test that the catalogue knows, by what it is expected to show under each origin. */
export interface OriginTestRule {
	readonly id: string;
	/** Origins under which it is expected to come out positive, and under which negative; it says nothing of the others. */
	readonly likely: readonly Origin[];
	readonly unlikely: readonly Origin[];
	/** Findings that it would make; once one of them is made there is nothing left to test. */
	readonly answers?: readonly string[] | undefined;
	/** The item gets power in it. */
	readonly needsPower: boolean;
	/** Tells only of an item that starts: at a dead one there is nothing to count or to change. */
	readonly needsStart: boolean;
	readonly destructive: boolean;
	readonly breaksCustody: boolean;
	readonly source: Source;
}

export interface Finding {
	readonly id: string;
	readonly state: FindingState;
	readonly group?: string | undefined;
}

/** Origin → probability, 0..1. */
export type OriginProbabilities = Readonly<Partial<Record<Origin, number>>>;

/** A test of the caller's own; `outcomes`: probability of a positive result under each origin. */
export interface OriginTest {
	readonly id: string;
	readonly outcomes: OriginProbabilities;
	readonly cost?: number | undefined;
	readonly destructive: boolean;
	readonly breaksCustody: boolean;
}

export interface FaultOriginInput {
	readonly findings: readonly Finding[];
	/** Finding → origin → probability of the finding being present. A user's own numbers, or counted comparable cases. */
	readonly likelihoods?: Readonly<Record<string, OriginProbabilities>> | undefined;
	/** Cases counted for the likelihoods; without it they are judgement. */
	readonly countedCases?: number | undefined;
	/** One party's own. */
	readonly priors?: OriginProbabilities | undefined;
	readonly tests?: readonly OriginTest[] | undefined;
	/** The documented rules. */
	readonly rules: readonly FindingRule[];
	readonly testRules: readonly OriginTestRule[];
}

export type OriginSupport = "supports" | "does-not-support" | "neutral" | "not-tested";

export interface OriginJudgement {
	readonly id: Origin;
	readonly support: OriginSupport;
	/** Finding ids. */
	readonly for: readonly string[];
	readonly against: readonly string[];
	/** Findings that would speak about this origin and were not made, at either end. */
	readonly missing: readonly string[];
	/** Groups of findings, each counted once. */
	readonly countedFor: number;
	readonly countedAgainst: number;
	/** From the user's numbers only; null where no alternative leaves the findings any probability. */
	readonly likelihoodRatio?: number | null | undefined;
	/** Word for the ratio, with the scale that it stands in. */
	readonly scale?: { readonly name: string; readonly word: Sentence } | undefined;
	/** From the party's own priors only. */
	readonly posteriorProbability?: number | undefined;
	readonly why: Sentence;
}

export interface NextTest {
	readonly id: string;
	readonly destructive: boolean;
	readonly breaksCustody: boolean;
	/** Expected information about the origin, bits; only for tests with probabilities. */
	readonly informationBits?: number | undefined;
	readonly bitsPerCost?: number | undefined;
	readonly why: Sentence;
}

export interface FaultOrigin {
	/** Best supported first. */
	readonly origins: readonly OriginJudgement[];
	readonly nextTests: readonly NextTest[];
	/** The finding without which another origin would stand first; null where there is none. */
	readonly turnsOn: string | null;
}
