/** A foam as a request names it, as the calculations take it. */
import { cushionFit } from "../../calculations/cushioning/cushion-fit.ts";
import type { Filler, Foam, FoamModel } from "../../calculations/cushioning/foam.ts";
import { optimumOf } from "../../calculations/cushioning/foam-model.ts";
import { cite } from "../../calculations/sources.ts";
import { fillerById } from "../../catalogue/fillers.ts";
import { foamById } from "../../catalogue/foams.ts";
import type { FoamInput } from "../../contract/cushion.ts";
import { invalid } from "../../faults.ts";
import { speak } from "../../texts/say.ts";

/** Pressure of the gas in closed cells: one atmosphere. Source: published, NIST Special Publication 811, appendix B. */
const ATMOSPHERE_KPA = 101.325;

/** No cushion beats a constant force over its whole thickness. Source: published, elementary energy balance. */
const LEAST_CUSHION_FACTOR = 1;
/** Strains for which the gas form was held against data. Source: cushioning page part II section 4, our choice. */
const GAS_STRAIN_RANGE = [0.25, 0.8] as const;

/** The filler that a request names; null where it names a foam or none. */
export function fillerOf(input: FoamInput): Filler | null {
	return "id" in input ? fillerById(input.id) : null;
}

/**
 * Null for a foam that is not known, and for a filler, of which no curve is. A user's own model has no prediction interval,
 * so the band that similar sets have is taken and it gives `provisional` at best; points of a curve give theirs.
 * @throws bad-input at `path` for an id that the catalogue does not have, or a set that no foam can have
 */
export function foamOf(input: FoamInput, path: string): Foam | null {
	if ("unknown" in input || fillerOf(input) !== null) return null;
	if ("id" in input) {
		const foam = foamById(input.id);
		if (foam === null) throw invalid([{ path: `${path}/id`, code: "unknown-id" }]);
		return foam;
	}
	if ("points" in input) return foamOfPoints(input.points, path);
	const model = ownModel(input);
	if (!(optimumOf(model).cushionFactor >= LEAST_CUSHION_FACTOR))
		throw invalid([{ path: `${path}/bPerKPa`, code: "impossible-foam" }]);
	return {
		id: "own",
		material: "user's own set",
		densityKgPerM3: null,
		model,
		energyRangeKJPerM3: null,
		strainRange: model.kind === "gas-compression" ? GAS_STRAIN_RANGE : null,
		thicknessRangeM: [0.0254, null],
		temperatureRangeDegC: null,
		peakUncertainty: 0.25,
		optimumFactor: 1.35,
		dropNumber: "unknown",
		primary: false,
		bestVerdict: "provisional",
		sources: [
			cite("user", "own foam model, without a prediction interval", "user"),
			cite(
				"our-choice",
				"band of 25 % on the peak and a factor of 1.35 on the optimum, as similar sets have",
				"our-choice",
			),
		],
		noteKey: "cushion.note-own",
	};
}

/** A foam of the shop's own: `meets` is earned with a prediction interval. */
function foamOfPoints(points: Extract<FoamInput, { points: unknown }>["points"], path: string): Foam {
	const fit = cushionFit(points);
	if (fit.status !== "assessed")
		throw invalid([{ path: `${path}/points`, code: "points-refused", facts: { why: speak(fit.reason.message) } }]);
	const { aKPa, bPerKPa, predictionIntervalPercent, energyDensityRangeKJPerM3 } = fit.result;
	const known = predictionIntervalPercent !== null;
	return {
		id: "own-points",
		material: "user's own points",
		densityKgPerM3: null,
		model: { kind: "stress-energy", aKPa, bPerKPa },
		energyRangeKJPerM3: energyDensityRangeKJPerM3,
		strainRange: null,
		thicknessRangeM: [Math.min(...points.map((point) => point.thicknessM)), null],
		temperatureRangeDegC: null,
		// A prediction interval has the shift of the optimum in it.
		peakUncertainty: known ? Math.min(predictionIntervalPercent / 100, MOST_UNCERTAIN) : 0.25,
		optimumFactor: known ? 1 : 1.35,
		dropNumber: points.some((point) => (point.drop ?? 1) > 1)
			? "mean-2-to-5"
			: points.every((point) => point.drop === 1)
				? "first"
				: "unknown",
		primary: false,
		bestVerdict: known ? "meets" : "provisional",
		sources: fit.sources,
		noteKey: known ? "cushion.note-points" : "cushion.note-two-points",
	};
}

/** Beyond it the lower edge of the band would be below nothing. */
const MOST_UNCERTAIN = 0.99;

function ownModel(input: Extract<FoamInput, { model: string }>): FoamModel {
	if (input.model === "stress-energy") return { kind: "stress-energy", aKPa: input.aKPa, bPerKPa: input.bPerKPa };
	return {
		kind: "gas-compression",
		yieldStressKPa: input.yieldStressKPa,
		gasPressureKPa: input.gasPressureKPa ?? ATMOSPHERE_KPA,
		relativeDensity: input.relativeDensity,
	};
}
