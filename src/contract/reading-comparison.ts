/** Request and result of `reading-comparison`: one check at two ends. All numbers of a request stand in one unit. */
import { z } from "zod";
import { text } from "./common.ts";

/** Large enough for every quantity here, small enough that no square overflows. */
const value = z.number().min(-1e15).max(1e15);

const readingInstrument = z
	.strictObject({
		id: text(100),
		percentOfReading: z.number().min(0).max(100).optional(),
		counts: z.number().min(0).max(1e6).optional(),
		resolution: z.number().min(0).max(1e15).optional(),
		certificate: z.strictObject({ expanded: z.number().min(0).max(1e15), k: z.number().min(0.5).max(10) }).optional(),
		leadOffset: z.number().min(0).max(1e15).optional(),
	})
	.refine((instrument) => instrument.counts === undefined || instrument.resolution !== undefined, {
		path: ["resolution"],
		error: "counts need the size of one count",
	});

const readingEnd = z.strictObject({
	values: z.array(value).min(1).max(1000).optional(),
	instrument: readingInstrument.optional(),
	benchId: text(100).optional(),
	successes: z.number().int().min(0).max(10_000).optional(),
	trials: z.number().int().min(1).max(10_000).optional(),
	count: z.number().int().min(0).max(1e9).optional(),
	exposure: z.strictObject({ amount: z.number().min(1e-9).max(1e12), unit: text(40) }).optional(),
	/** Counts: the bursts that the events came in, or the events' times, seconds. */
	bursts: z.number().int().min(0).max(1e9).optional(),
	eventTimesS: z.array(z.number().min(0).max(1e12)).max(100_000).optional(),
	notTested: text(500).optional(),
});
type End = z.infer<typeof readingEnd>;

const KINDS = ["measured", "count", "score", "outcome", "ratio"] as const;
type Kind = (typeof KINDS)[number];

/** What a kind is judged by, and what does not belong to it. */
const MEMBERS: Readonly<Record<Kind, readonly (keyof End)[]>> = {
	measured: ["values"],
	score: ["values"],
	ratio: ["values"],
	count: ["count"],
	outcome: ["trials", "successes"],
};
const READING_MEMBERS = ["values", "count", "trials", "successes"] as const;

export const readingComparisonRequest = z
	.strictObject({
		kind: z.enum(KINDS),
		comparability: z.enum(["any-bench", "stated-uncertainty", "same-instrument", "same-bench"]),
		betterIs: z.enum(["higher", "lower", "neither"]),
		/** `outcome`: of the share of attempts that went well, 0 to 1. `count`: of the events counted. */
		limits: z.strictObject({ low: value.optional(), high: value.optional() }).optional(),
		equivalenceMargin: z.number().positive().max(1e15).optional(),
		/** A counter that the item keeps over its life and that never falls, and where it stops. */
		counter: z.enum(["lifetime"]).optional(),
		saturatesAt: z.number().int().positive().max(1e18).optional(),
		coverageProbability: z.number().min(0.5).max(0.9999).optional(),
		/** Symbol of the unit, for the sentence only. */
		unit: text(20).optional(),
		departure: readingEnd,
		arrival: readingEnd,
		control: z.strictObject({ departure: readingEnd, arrival: readingEnd }).optional(),
	})
	.superRefine((request, context) => {
		const fault = (path: string[], message: string) => context.addIssue({ code: "custom", path, message });
		const { low, high } = request.limits ?? {};
		if (low !== undefined && high !== undefined && !(low <= high)) fault(["limits", "low"], "low lies above high");
		if (request.kind !== "count" && (request.counter ?? request.saturatesAt) !== undefined) {
			fault(["counter"], "only counts come from a counter");
		}
		if (request.kind === "outcome" && [low, high].some((limit) => limit !== undefined && !(limit >= 0 && limit <= 1))) {
			fault(["limits"], "limits of an outcome are shares from 0 to 1");
		}
		for (const [path, end] of endsOf(request)) {
			for (const [member, message] of faultsOfEnd(request.kind, end)) fault([...path, member], message);
		}
	});
export type ReadingComparisonRequest = z.infer<typeof readingComparisonRequest>;

function endsOf(request: { departure: End; arrival: End; control?: { departure: End; arrival: End } | undefined }) {
	const ends: [string[], End][] = [
		[["departure"], request.departure],
		[["arrival"], request.arrival],
	];
	if (request.control !== undefined) {
		ends.push([["control", "departure"], request.control.departure], [["control", "arrival"], request.control.arrival]);
	}
	return ends;
}

function faultsOfEnd(kind: Kind, end: End): [member: string, message: string][] {
	if (end.notTested !== undefined) {
		return READING_MEMBERS.filter((member) => end[member] !== undefined).map((member) => [
			member,
			"an end that was not tested has no reading",
		]);
	}
	const wanted = MEMBERS[kind];
	const faults: [string, string][] = wanted
		.filter((member) => end[member] === undefined)
		.map((member) => [member, `the kind ${kind} needs it, or notTested with the reason`]);
	for (const member of READING_MEMBERS) {
		if (end[member] !== undefined && !wanted.includes(member)) faults.push([member, `not part of the kind ${kind}`]);
	}
	if ((end.bursts ?? 0) > (end.count ?? 0)) faults.push(["bursts", "no more bursts than events"]);
	if (end.eventTimesS !== undefined && end.eventTimesS.length !== end.count) {
		faults.push(["eventTimesS", "one time for each event counted"]);
	}
	if ((end.successes ?? 0) > (end.trials ?? Number.POSITIVE_INFINITY)) {
		faults.push(["successes", "no more successes than trials"]);
	}
	return faults;
}

const conformityResult = z.strictObject({
	verdict: z.enum(["proven-good", "held-as-tested", "inconclusive", "proven-bad"]),
	probability: z.number().nullable(),
	/** Counts and outcomes: what this exposure can not exclude, one-sided. */
	upperBound: z.number().nullable(),
	upperBoundOf: z.enum(["rate", "failure-share"]).nullable(),
});

export const readingComparisonResult = z.strictObject({
	verdict: z.enum(["differs", "equivalent", "inconclusive", "not-comparable", "not-tested"]),
	direction: z.enum(["worse", "better", "sideways"]).nullable(),
	/** Null where no limit is given, or that end was not tested. */
	conformity: z.strictObject({ departure: conformityResult.nullable(), arrival: conformityResult.nullable() }),
	difference: z.number().nullable(),
	expandedUncertainty: z.number().nullable(),
	enNumber: z.number().nullable(),
	pValue: z.number().nullable(),
	/** Arrival over departure, where the interval is one of a ratio of values. */
	ratio: z.number().nullable(),
	interval: z.tuple([z.number().nullable(), z.number().nullable()]).nullable(),
	intervalOf: z.enum(["difference", "ratio", "rate-ratio"]).nullable(),
	why: z.string(),
});
