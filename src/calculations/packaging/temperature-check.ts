/** The check `temperature`: every face computed anew at both ends of the trip's temperatures. */
import { modelAt } from "../cushioning/cushion.ts";
import type { Foam } from "../cushioning/foam.ts";
import { ROOM_DEG_C } from "../cushioning/foam-range.ts";
import { sentence } from "../judged.ts";
import type { CheckContext } from "./check-context.ts";
import { dropSets, weightN } from "./face-stacks.ts";
import { stackPeak } from "./stack-peak.ts";
import { FACES, type PackagingCheck } from "./types.ts";
import { atMost, bestOf, unassessed, worse } from "./verdicts.ts";

export function temperatureCheck({ input, designDropM, limit, stacks }: CheckContext): PackagingCheck {
	const { temperatureLowDegC: low, temperatureHighDegC: high } = input.route;
	const foams = FACES.flatMap((face) =>
		dropSets(stacks[face]).flatMap((stack) => stack.flatMap(({ foam }) => (foam === null ? [] : [foam]))),
	);
	const sources = [
		...new Set([...foams.flatMap((foam) => foam.overTemperature?.source ?? foam.sources), limit.source]),
	];
	if (low === undefined || high === undefined)
		return unassessed("temperature", sentence("packaging.no-temperatures"), sentence("packaging.mend-temperatures"));
	const layers = FACES.flatMap((face) => stacks[face]);
	if (layers.length === 0 || layers.some((layer) => layer.foam === null))
		return unassessed("temperature", sentence("packaging.temperature-unknown"), sentence("packaging.mend-known-foam"));
	const outside = foams.find((foam) => [low, high].some((at) => !coversTemperature(foam, at)));
	if (outside !== undefined) {
		const [least, most] = rangeOf(outside);
		return unassessed(
			"temperature",
			sentence("packaging.temperature-outside", { lowDegC: least, highDegC: most }),
			sentence("packaging.mend-temperature"),
			sources,
		);
	}
	const peaks = [low, high].flatMap((atDegC) =>
		FACES.flatMap((face) =>
			dropSets(stacks[face]).flatMap((stack) => {
				const peak = stackPeak(stack, weightN(input.item), designDropM, (foam) => modelAt(foam, atDegC));
				return peak === null ? [] : [{ face, atDegC, ...peak }];
			}),
		),
	);
	const worst = peaks.reduce((most, next) => (next.bandGn[1] > most.bandGn[1] ? next : most));
	const peakGn = Math.max(...peaks.map((peak) => peak.peakGn));
	const bandGn = [Math.max(...peaks.map((peak) => peak.bandGn[0])), worst.bandGn[1]] as const;
	const firm = worse(limit.best, bestOf([input.route.dropTable.source]));
	const best = foams.reduce((verdict, foam) => worse(verdict, foam.bestVerdict), worse(firm, "meets"));
	const held = atMost(peakGn, limit.limitGn, best, bandGn);
	const uncovered = held !== "falls-short" && peaks.some((peak) => !peak.covered);
	return {
		id: "temperature",
		verdict: uncovered ? "not-assessed" : held,
		value: peakGn,
		limit: limit.limitGn,
		unit: "gₙ",
		margin: (limit.limitGn - peakGn) / limit.limitGn,
		why: sentence(
			uncovered
				? "packaging.temperature-uncovered"
				: held === "falls-short"
					? "packaging.temperature-short"
					: "packaging.temperature-holds",
			{
				peakGn,
				limitGn: limit.limitGn,
				highGn: bandGn[1],
				face: worst.face,
				atDegC: worst.atDegC,
			},
		),
		mend: held === best && !uncovered ? null : sentence("packaging.mend-temperature"),
		sources,
	};
}

function rangeOf(foam: Foam): readonly [number, number] {
	return foam.overTemperature?.rangeDegC ?? foam.temperatureRangeDegC ?? ROOM_DEG_C;
}

function coversTemperature(foam: Foam, atDegC: number): boolean {
	const [low, high] = rangeOf(foam);
	return atDegC >= low && atDegC <= high;
}
