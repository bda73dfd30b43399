/** A foam as a request names it, as the calculations take it. */
import type { Foam, FoamModel } from "../../calculations/cushioning/foam.ts";
import { optimumOf } from "../../calculations/cushioning/foam-model.ts";
import { cite } from "../../calculations/sources.ts";
import { foamById } from "../../catalogue/foams.ts";
import type { FoamInput } from "../../contract/cushion.ts";
import { invalid } from "../../faults.ts";

/** Pressure of the gas in closed cells: one atmosphere. Source: published, NIST Special Publication 811, appendix B. */
const ATMOSPHERE_KPA = 101.325;

/** No cushion beats a constant force over its whole thickness. Source: published, elementary energy balance. */
const LEAST_CUSHION_FACTOR = 1;
/** Strains for which the gas form was held against data. Source: cushioning page part II section 4, our choice. */
const GAS_STRAIN_RANGE = [0.25, 0.8] as const;

/**
 * Null for a foam that is not known. A user's own model has no prediction interval, so the band that similar sets have
 * is taken and it gives `provisional` at best.
 * @throws bad-input at `path` for an id that the catalogue does not have, or a set that no foam can have
 */
export function foamOf(input: FoamInput, path: string): Foam | null {
	if ("unknown" in input) return null;
	if ("id" in input) {
		const foam = foamById(input.id);
		if (foam === null) throw invalid([{ path: `${path}/id`, code: "unknown-id" }]);
		return foam;
	}
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

function ownModel(input: Extract<FoamInput, { model: string }>): FoamModel {
	if (input.model === "stress-energy") return { kind: "stress-energy", aKPa: input.aKPa, bPerKPa: input.bPerKPa };
	return {
		kind: "gas-compression",
		yieldStressKPa: input.yieldStressKPa,
		gasPressureKPa: input.gasPressureKPa ?? ATMOSPHERE_KPA,
		relativeDensity: input.relativeDensity,
	};
}
