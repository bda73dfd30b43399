/** What the shop's legs show, and the same as a table. */
import type { Caller } from "../../access/caller.ts";
import type { Judged } from "../../calculations/judged.ts";
import { EVENTS, type LearnedGroup, type Learning, learn } from "../../calculations/learning/learn.ts";
import { FACTORS, LEG_OUTCOMES } from "../../calculations/learning/learned-leg.ts";
import { say } from "../../texts/say.ts";
import type { Deps } from "../deps.ts";
import { type CsvCell, csvOf } from "./csv.ts";
import { learnedLegs } from "./learned-legs.ts";

export async function readLearning(deps: Deps, caller: Caller): Promise<Judged<Learning>> {
	return learn(await learnedLegs(deps, caller));
}

const SHARE_COLUMNS = [
	"seen",
	"known",
	"unknown",
	"share",
	"low",
	"high",
	"all-others-good",
	"all-others-bad",
] as const;

/** One row for all legs and one for each group; shares are fractions, an empty cell is not known. */
export function learningCsv({ all, by }: Learning): string {
	return csvOf([
		[
			"factor",
			"group",
			"legs",
			...LEG_OUTCOMES,
			...EVENTS.flatMap((event) => SHARE_COLUMNS.map((name) => `${event} ${name}`)),
		],
		rowOf("all", "", all),
		...FACTORS.flatMap((factor) =>
			by[factor].map((group) => rowOf(factor, group.name ?? say("learning.not-known"), group)),
		),
	]);
}

function rowOf(factor: string, name: string, { legs, outcomes, shares }: LearnedGroup): CsvCell[] {
	return [
		factor,
		name,
		legs,
		...LEG_OUTCOMES.map((outcome) => outcomes[outcome]),
		...EVENTS.flatMap((event): CsvCell[] => {
			const { seen, known, unknown, share, interval, allGood, allBad } = shares[event];
			return [seen, known, unknown, share, interval?.[0] ?? null, interval?.[1] ?? null, allGood, allBad];
		}),
	];
}
