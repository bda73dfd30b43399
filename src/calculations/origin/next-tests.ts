/** Which test to make next: by what it is expected to tell, those that destroy something or break custody last. */
import { sentence } from "../judged.ts";
import { informationBits } from "./evidence.ts";
import type { Origin } from "./origins.ts";
import type { Finding, NextTest, OriginTest, OriginTestRule } from "./types.ts";

/** The caller's tests by expected information. `weights`: what is held of the origins now, equal where nothing is. */
export function rankedTests(tests: readonly OriginTest[], weights: ReadonlyMap<Origin, number>): readonly NextTest[] {
	return tests
		.map((test) => {
			const bits = bitsOf(test, weights);
			const perCost = test.cost !== undefined && test.cost > 0 ? bits / test.cost : undefined;
			return {
				id: test.id,
				destructive: test.destructive,
				breaksCustody: test.breaksCustody,
				informationBits: bits,
				...(perCost === undefined ? {} : { bitsPerCost: perCost }),
				why: whyOf(test, sentence("origin.test-informs", { bits })),
				cost: test.cost ?? 0,
			};
		})
		.sort((a, b) => lastly(a) - lastly(b) || b.informationBits - a.informationBits || a.cost - b.cost)
		.map(({ cost: _, ...test }) => test);
}

/** The catalogue's tests by how many pairs of open origins they tell apart; no probabilities are invented for them. */
export function separatingTests(
	rules: readonly OriginTestRule[],
	open: readonly Origin[],
	findings: readonly Finding[],
): readonly NextTest[] {
	const made = findings.filter(({ state }) => state !== "unknown").map(({ id }) => id);
	return rules
		.filter(({ answers = [] }) => !answers.some((id) => made.includes(id)))
		.map((rule) => {
			const count = (origins: readonly Origin[]) => origins.filter((origin) => open.includes(origin)).length;
			return { rule, pairs: count(rule.likely) * count(rule.unlikely) };
		})
		.filter(({ pairs }) => pairs > 0)
		.sort((a, b) => lastly(a.rule) - lastly(b.rule) || b.pairs - a.pairs)
		.map(({ rule, pairs }) => ({
			id: rule.id,
			destructive: rule.destructive,
			breaksCustody: rule.breaksCustody,
			why: whyOf(
				rule,
				pairs === 1 ? sentence("origin.test-separates-one") : sentence("origin.test-separates", { pairs }),
			),
		}));
}

function bitsOf(test: OriginTest, weights: ReadonlyMap<Origin, number>): number {
	const named = (Object.keys(test.outcomes) as Origin[]).filter((origin) => (weights.get(origin) ?? 0) > 0);
	const total = named.reduce((sum, origin) => sum + (weights.get(origin) ?? 0), 0);
	if (!(total > 0)) return 0;
	return informationBits(
		named.map((origin) => (weights.get(origin) ?? 0) / total),
		named.map((origin) => test.outcomes[origin] ?? 0),
	);
}

function lastly({ destructive, breaksCustody }: { destructive: boolean; breaksCustody: boolean }): number {
	return Number(destructive) * 2 + Number(breaksCustody);
}

function whyOf(test: { destructive: boolean; breaksCustody: boolean }, why: ReturnType<typeof sentence>) {
	if (test.destructive) return sentence("origin.test-destructive");
	return test.breaksCustody ? sentence("origin.test-breaks-custody") : why;
}
