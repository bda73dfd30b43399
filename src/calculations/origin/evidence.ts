/**
 * Weight of findings by probabilities: how much likelier the findings are under one origin than under others, and what a
 * further test is expected to tell. Everything is P(finding | origin); only priors turn it round.
 */
import type { Origin } from "./origins.ts";
import type { Finding, OriginProbabilities } from "./types.ts";

/** P(findings | origin) for every origin that the numbers name, each group of findings counted once. */
export function jointLikelihoods(
	findings: readonly Finding[],
	likelihoods: Readonly<Record<string, OriginProbabilities>>,
): ReadonlyMap<Origin, number> {
	const joint = new Map<Origin, number>();
	for (const [origin] of entriesOf(Object.values(likelihoods)[0] ?? {})) joint.set(origin, 1);
	const groups = new Map<string, OriginProbabilities>();
	for (const { id, state, group } of findings) {
		const given = likelihoods[id];
		if (given === undefined || state === "unknown") continue;
		const seen = state === "present" ? given : complement(given);
		const key = group === undefined ? `one ${id}` : `group ${group}`;
		const other = groups.get(key);
		// Of findings that tell of one fact the one that tells most stands for all.
		if (other === undefined || spread(seen) > spread(other)) groups.set(key, seen);
	}
	for (const probabilities of groups.values()) {
		for (const [origin, likelihood] of joint) joint.set(origin, likelihood * (probabilities[origin] ?? 1));
	}
	return joint;
}

/** P(origin | findings) from priors over the same origins; null where the findings are impossible under all of them. */
export function posterior(
	joint: ReadonlyMap<Origin, number>,
	priors: OriginProbabilities,
): ReadonlyMap<Origin, number> | null {
	const weighed = [...joint].map(([origin, likelihood]) => [origin, likelihood * (priors[origin] ?? 0)] as const);
	const total = weighed.reduce((sum, [, weight]) => sum + weight, 0);
	return total > 0 ? new Map(weighed.map(([origin, weight]) => [origin, weight / total])) : null;
}

/**
 * How many times likelier the findings are under an origin than under the others: the others weighed by their priors, or,
 * without priors, against the one that explains them best. Null where nothing else leaves them any probability.
 */
export function likelihoodRatio(
	origin: Origin,
	joint: ReadonlyMap<Origin, number>,
	priors?: OriginProbabilities,
): number | null {
	const others = [...joint].filter(([other]) => other !== origin);
	const own = joint.get(origin) ?? 0;
	const against = priors === undefined ? Math.max(0, ...others.map(([, l]) => l)) : weighedMean(others, priors);
	return against > 0 ? own / against : null;
}

/** Shannon entropy, bits. */
export function entropyBits(weights: readonly number[]): number {
	return weights.reduce((bits, weight) => (weight > 0 ? bits - weight * Math.log2(weight) : bits), 0);
}

/** Expected fall of the entropy by a test with two outcomes: Σ p·P(o|h)·log₂(P(o|h)/P(o)), bits. */
export function informationBits(weights: readonly number[], positive: readonly number[]): number {
	const overall = weights.reduce((sum, weight, index) => sum + weight * (positive[index] ?? 0), 0);
	return Math.max(
		0,
		weights.reduce((bits, weight, index) => {
			const chance = positive[index] ?? 0;
			return bits + weight * (told(chance, overall) + told(1 - chance, 1 - overall));
		}, 0),
	);
}

function told(given: number, overall: number): number {
	return given > 0 && overall > 0 ? given * Math.log2(given / overall) : 0;
}

function weighedMean(others: readonly (readonly [Origin, number])[], priors: OriginProbabilities): number {
	const total = others.reduce((sum, [other]) => sum + (priors[other] ?? 0), 0);
	if (!(total > 0)) return 0;
	return others.reduce((sum, [other, likelihood]) => sum + likelihood * (priors[other] ?? 0), 0) / total;
}

function complement(probabilities: OriginProbabilities): OriginProbabilities {
	return Object.fromEntries(entriesOf(probabilities).map(([origin, probability]) => [origin, 1 - probability]));
}

/** How far the likeliest and the unlikeliest origin lie apart. */
function spread(probabilities: OriginProbabilities): number {
	const values = entriesOf(probabilities).map(([, probability]) => probability);
	const least = Math.min(...values);
	return least > 0 ? Math.max(...values) / least : Number.POSITIVE_INFINITY;
}

/** Origins with their probabilities. */
export function entriesOf(probabilities: OriginProbabilities): [Origin, number][] {
	return Object.entries(probabilities) as [Origin, number][];
}
