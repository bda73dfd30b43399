/**
 * Two benches made comparable by one control item measured on both: what the benches differ by, the control shows too.
 * Measured values by difference, scores and ratios by ratio. It rests on the control item itself being unchanged.
 */
import { type Sentence, sentence } from "../judged.ts";
import { tCumulative, tQuantile } from "../statistics/distributions.ts";
import { summary } from "../statistics/summary.ts";
import { combined, errorDistribution, type NormalPart } from "../statistics/uncertainty.ts";
import { type Difference, directionOf, NO_DIFFERENCE_KNOWN } from "./difference.ts";
import { judgedDifference, rounded, spreadKnown, spreadUnknown } from "./measured-difference.ts";
import { type MeasuredError, measuredError, partsOfDifference } from "./measured-error.ts";
import { isTested } from "./tested.ts";
import type { ReadingComparisonInput, ReadingEnd } from "./types.ts";

interface Control {
	readonly departure: ReadingEnd;
	readonly arrival: ReadingEnd;
}

/** Why the control does not make the two benches comparable; null where it does. */
export function controlFails(input: ReadingComparisonInput, control: Control): Sentence | null {
	if (input.kind === "count" || input.kind === "outcome") return sentence("comparison.control-not-for-counts");
	for (const end of ["departure", "arrival"] as const) {
		if (!isTested(input.kind, control[end])) return sentence("comparison.control-not-measured");
		const [own, its] = [input[end].benchId, control[end].benchId];
		if (own !== undefined && its !== undefined && own !== its) return sentence("comparison.control-other-bench");
	}
	return null;
}

/** The difference that the control item does not show as well. */
export function throughControl(input: ReadingComparisonInput, control: Control): Difference {
	return input.kind === "measured" ? byDifference(input, control) : byRatio(input, control);
}

/** (arrival − its control) − (departure − its control); on one bench a constant error of the bench cancels. */
function byDifference(input: ReadingComparisonInput, control: Control): Difference {
	const ends = [input.departure, control.departure, input.arrival, control.arrival] as const;
	const [left, leftControl, came, cameControl] = ends.map(measuredError) as [
		MeasuredError,
		MeasuredError,
		MeasuredError,
		MeasuredError,
	];
	const difference = rounded(
		came.summary.mean - cameControl.summary.mean - (left.summary.mean - leftControl.summary.mean),
		[left, leftControl, came, cameControl],
	);
	const onBench = { comparability: "same-bench" } as const;
	if (!spreadKnown(leftControl, left, onBench) || !spreadKnown(cameControl, came, onBench))
		return spreadUnknown(difference);
	const same = (one: ReadingEnd, other: ReadingEnd) => one.instrument?.id === other.instrument?.id;
	const departing = partsOfDifference(leftControl, left, same(ends[0], ends[1]));
	const arriving = partsOfDifference(cameControl, came, same(ends[2], ends[3]));
	return judgedDifference(
		difference,
		errorDistribution({
			rectangular: [...departing.rectangular, ...arriving.rectangular],
			normal: [...departing.normal, ...arriving.normal],
		}),
		input,
	);
}

/**
 * (arrival / its control) / (departure / its control), on logarithms, so that the scatter of all four counts. A single run
 * takes the scatter of the other set on its bench.
 */
function byRatio(input: ReadingComparisonInput, control: Control): Difference {
	const sets = [input.departure, control.departure, input.arrival, control.arrival].map(({ values = [] }) => values);
	if (sets.flat().some((value) => !(value > 0))) return spreadUnknown(null, sentence("comparison.ratio-open"));
	const logs = sets.map((values) => summary(values.map(Math.log)));
	const [left = 0, leftControl = 0, came = 0, cameControl = 0] = logs.map(({ mean }) => mean);
	const shift = came - cameControl - (left - leftControl);
	const departureMean = summary(sets[0] ?? []).mean;
	const ratio = Math.exp(shift);
	const difference = departureMean * (ratio - 1);
	if (!Number.isFinite(ratio)) return spreadUnknown(null, sentence("comparison.ratio-open"));
	const parts = logs.map((own, index) => scatterOf(own, logs[index % 2 === 0 ? index + 1 : index - 1]));
	if (parts.some((part) => part === null)) return spreadUnknown(difference, sentence("comparison.control-no-spread"));
	const { standardUncertainty, degreesOfFreedom } = combined(parts as NormalPart[]);
	if (!(standardUncertainty > 0)) return spreadUnknown(difference, sentence("comparison.control-no-spread"));
	const coverage = input.coverageProbability ?? 0.95;
	const half = tQuantile((1 + coverage) / 2, degreesOfFreedom) * standardUncertainty;
	const facts = {
		...NO_DIFFERENCE_KNOWN,
		difference,
		pValue: 2 * tCumulative(-Math.abs(shift) / standardUncertainty, degreesOfFreedom),
		ratio,
		interval: [Math.exp(shift - half), finite(Math.exp(shift + half))],
		intervalOf: "ratio",
	} as const;
	const given = input.equivalenceMargin ?? 0;
	const margin = input.kind === "ratio" ? given : given / departureMean;
	// Two one-sided tests at the level that the coverage leaves.
	const narrow = tQuantile(coverage, degreesOfFreedom) * standardUncertainty;
	const values = { ratio, low: Math.exp(shift - half), high: Math.exp(shift + half), percent: margin * 100 };
	if (shift - narrow > Math.log(Math.max(0, 1 - margin)) && shift + narrow < Math.log(1 + margin)) {
		return {
			...facts,
			verdict: "equivalent",
			direction: "sideways",
			why: sentence("comparison.control-within", values),
		};
	}
	if (Math.abs(shift) > half) {
		const direction = directionOf(shift, input.betterIs);
		return { ...facts, verdict: "differs", direction, why: sentence("comparison.control-differs", values) };
	}
	return { ...facts, verdict: "inconclusive", direction: null, why: sentence("comparison.control-undecided", values) };
}

function scatterOf(own: ReturnType<typeof summary>, other: ReturnType<typeof summary> | undefined): NormalPart | null {
	const shown = own.standardDeviation === null ? other : own;
	if (shown === undefined || shown.standardDeviation === null) return null;
	return {
		standardUncertainty: shown.standardDeviation / Math.sqrt(own.n),
		degreesOfFreedom: shown.n - 1,
	};
}

/** An open end where the bound can not be held. */
function finite(bound: number): number | null {
	return Number.isFinite(bound) ? bound : null;
}
