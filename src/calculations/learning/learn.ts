/** What a shop's legs show: shares by carrier, pack, foam and soak, and when a difference could show. No cause is named. */
import { type CivilDate, daysBetween } from "../civil-date.ts";
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import { type Counts, type KnownShare, knownShare } from "./known-share.ts";
import {
	FACTORS,
	type Factor,
	LEG_OUTCOMES,
	type LearnedLeg,
	type LegOutcome,
	NEAR_MISSES,
	type NearMiss,
} from "./learned-leg.ts";
import { type TimeToShow, timeToShow } from "./time-to-show.ts";

const DAYS_PER_YEAR = 365.25;
/** Span below which a rate per year is not told. Our choice. */
const LEAST_SPAN_DAYS = 30;

/** Of what a share is: `bad` is changed or dead. */
export const EVENTS = ["bad", "dead", ...NEAR_MISSES] as const;
export type LearnedEvent = (typeof EVENTS)[number];

export interface LearnedGroup {
	/** Null where it is not known. */
	readonly name: string | null;
	readonly legs: number;
	readonly outcomes: Readonly<Record<LegOutcome, number>>;
	readonly shares: Readonly<Record<LearnedEvent, KnownShare>>;
}

export interface Learning {
	readonly firstOn: CivilDate;
	readonly lastOn: CivilDate;
	readonly legsPerYear: number | null;
	readonly all: LearnedGroup;
	/** The largest group first. */
	readonly by: Readonly<Record<Factor, readonly LearnedGroup[]>>;
	/** Of each event that was seen: how long until half of its share, and twice it, could be told from it. */
	readonly toShow: readonly {
		readonly event: LearnedEvent;
		readonly halved: TimeToShow | null;
		readonly doubled: TimeToShow | null;
	}[];
}

export function learn(legs: readonly LearnedLeg[]): Judged<Learning> {
	const days = legs.map(({ sentOn }) => sentOn).sort();
	const [firstOn, lastOn] = [days[0], days.at(-1)];
	if (firstOn === undefined || lastOn === undefined) return notAssessed("no-legs", sentence("learning.no-legs"));
	const all = groupOf(null, legs);
	const spanDays = daysBetween(firstOn, lastOn) + 1;
	const legsPerYear = spanDays < LEAST_SPAN_DAYS ? null : (legs.length * DAYS_PER_YEAR) / spanDays;
	const by = {
		carrier: groupsBy("carrier", legs),
		pack: groupsBy("pack", legs),
		foam: groupsBy("foam", legs),
		soak: groupsBy("soak", legs),
	};
	return assessed(
		{ firstOn, lastOn, legsPerYear, all, by, toShow: toShowOf(all, legsPerYear) },
		{
			cautions: [
				sentence("learning.no-cause"),
				sentence("learning.many-groups", { groups: FACTORS.reduce((sum, factor) => sum + by[factor].length, 0) }),
				...(all.outcomes.silent > 0 ? [sentence("learning.silence")] : []),
			],
			sources: [
				cite("nist-e-handbook", "7.2.4.1, interval of a proportion", "from-memory"),
				cite("r-stats-recalled", "power.prop.test", "from-memory"),
				cite("our-choice", "30 known cases, bands of soak hours", "our-choice"),
			],
		},
	);
}

function groupsBy(factor: Factor, legs: readonly LearnedLeg[]): LearnedGroup[] {
	const names = [...new Set(legs.map(({ factors }) => factors[factor]))];
	return names
		.map((name) =>
			groupOf(
				name,
				legs.filter(({ factors }) => factors[factor] === name),
			),
		)
		.sort((a, b) => b.legs - a.legs || String(a.name).localeCompare(String(b.name), "en"));
}

function groupOf(name: string | null, legs: readonly LearnedLeg[]): LearnedGroup {
	const count = (outcome: LegOutcome) => legs.filter((leg) => leg.outcome === outcome).length;
	const outcomes = Object.fromEntries(LEG_OUTCOMES.map((one) => [one, count(one)])) as Record<LegOutcome, number>;
	const shares = Object.fromEntries(EVENTS.map((event) => [event, knownShare(countsOf(event, legs, outcomes))]));
	return { name, legs: legs.length, outcomes, shares: shares as LearnedGroup["shares"] };
}

function countsOf(event: LearnedEvent, legs: readonly LearnedLeg[], counts: LearnedGroup["outcomes"]): Counts {
	if (event === "bad" || event === "dead") {
		const unknown = counts.untested + counts.silent;
		const seen = counts.dead + (event === "bad" ? counts.changed : 0);
		return { seen, known: legs.length - unknown, unknown };
	}
	const told = legs.map(({ nearMisses }) => nearMisses[event satisfies NearMiss]);
	const unknown = told.filter((one) => one === null).length;
	return { seen: told.filter((one) => one === true).length, known: told.length - unknown, unknown };
}

function toShowOf(all: LearnedGroup, legsPerYear: number | null): Learning["toShow"] {
	return EVENTS.flatMap((event) => {
		const { share, known } = all.shares[event];
		if (share === null || share === 0) return [];
		const rate = (legsPerYear ?? 0) * (known / all.legs);
		return [{ event, halved: timeToShow(share, share / 2, rate), doubled: timeToShow(share, 2 * share, rate) }];
	});
}
