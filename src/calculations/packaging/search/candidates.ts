/** The numeric core of the search: every combination of the three axes' options, screened and ranked. */

import type { AxisOption, Exclusion, Objective, StockBox } from "./search-types.ts";
import { cornerForceKN, edgeForceKN } from "./skew-screen.ts";

/** A box, or a box in a box, with its options by axis. */
export interface Frame {
	readonly box: StockBox;
	readonly innerBox: StockBox | null;
	readonly volumeM3: number;
	/** Of boxes and bag; null where a price is missing. */
	readonly cost: number | null;
	readonly options: readonly [readonly AxisOption[], readonly AxisOption[], readonly AxisOption[]];
}

export interface Candidate {
	readonly frame: Frame;
	readonly options: readonly [AxisOption, AxisOption, AxisOption];
	readonly margin: number;
	readonly cost: number | null;
}

export interface Screened {
	readonly considered: number;
	readonly excluded: ReadonlyMap<Exclusion, number>;
	/** The best of each composition, best first. */
	readonly best: readonly Candidate[];
}

/** Screens every candidate of a frame. */
export function screen(
	frame: Frame,
	energyKJ: number,
	weightKN: number,
	limitGn: number,
	objective: Objective,
): Screened {
	const excluded = new Map<Exclusion, number>();
	const count = (reason: Exclusion, number: number) => excluded.set(reason, (excluded.get(reason) ?? 0) + number);
	const [all1, all2, all3] = frame.options;
	const held = (options: readonly AxisOption[], rest: number) =>
		options.filter((option) => {
			if (option.excluded !== null) count(option.excluded, rest);
			return option.excluded === null;
		});
	const first = held(all1, all2.length * all3.length);
	const second = held(all2, first.length * all3.length);
	const third = held(all3, first.length * second.length);
	const most = limitGn * weightKN;
	const edges23 = second.map((two) => Float64Array.from(third, (three) => edgeForceKN(two, three, energyKJ)));
	const edges13 = first.map((one) => Float64Array.from(third, (three) => edgeForceKN(one, three, energyKJ)));
	const best = new Map<string, Candidate>();
	for (const [i, one] of first.entries()) {
		for (const [j, two] of second.entries()) {
			const edge12 = edgeForceKN(one, two, energyKJ);
			for (const [k, three] of third.entries()) {
				const edges = Math.max(edge12, edges13[i]?.[k] ?? Number.NaN, edges23[j]?.[k] ?? Number.NaN);
				const force = Math.max(edges, cornerForceKN(one, two, three, energyKJ));
				if (!(force <= most)) {
					count("corner-edge", 1);
					continue;
				}
				const costs = [frame.cost, one.cost, two.cost, three.cost];
				const cost = costs.reduce((sum, next) => (sum === null || next === null ? null : sum + next), 0);
				if (objective === "cost" && cost === null) {
					count("no-price", 1);
					continue;
				}
				const margin = Math.min(one.margin, two.margin, three.margin, (most - force) / most);
				const key = `${one.composition}/${two.composition}/${three.composition}`;
				const known = best.get(key);
				const candidate = { frame, options: [one, two, three] as const, margin, cost };
				if (known === undefined || isBetter(candidate, known, objective)) best.set(key, candidate);
			}
		}
	}
	return {
		considered: all1.length * all2.length * all3.length,
		excluded,
		best: [...best.values()].sort((a, b) => (isBetter(a, b, objective) ? -1 : 1)),
	};
}

/** By the objective, then by margin, then by cost. */
export function isBetter(a: Candidate, b: Candidate, objective: Objective): boolean {
	const cheaper = (a.cost ?? Number.POSITIVE_INFINITY) < (b.cost ?? Number.POSITIVE_INFINITY);
	if (objective === "cost" && a.cost !== b.cost) return cheaper;
	if (objective === "volume" && a.frame.volumeM3 !== b.frame.volumeM3) return a.frame.volumeM3 < b.frame.volumeM3;
	return a.margin === b.margin ? cheaper : a.margin > b.margin;
}
