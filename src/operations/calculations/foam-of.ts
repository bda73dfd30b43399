/** A foam as a request names it, as the calculations take it. */
import type { Foam } from "../../calculations/cushioning/foam.ts";
import { cite } from "../../calculations/sources.ts";
import { foamById } from "../../catalogue/foams.ts";
import type { FoamInput } from "../../contract/cushion.ts";
import { invalid } from "../../faults.ts";

/** Pressure of the gas in closed cells: one atmosphere. Source: published, NIST Special Publication 811, appendix B. */
const ATMOSPHERE_KPA = 101.325;

/**
 * Null for a foam that is not known. A user's own model has no prediction interval, so the band that similar sets have
 * is taken and it gives `provisional` at best.
 * @throws bad-input for an id that the catalogue does not have, at `path`
 */
export function foamOf(input: FoamInput, path: string): Foam | null {
	if ("unknown" in input) return null;
	if ("id" in input) {
		const foam = foamById(input.id);
		if (foam === null) throw invalid([{ path: `${path}/id`, code: "unknown-id" }]);
		return foam;
	}
	return {
		id: "own",
		material: "user's own set",
		densityKgPerM3: null,
		model:
			input.model === "stress-energy"
				? { kind: "stress-energy", aKPa: input.aKPa, bPerKPa: input.bPerKPa }
				: {
						kind: "gas-compression",
						yieldStressKPa: input.yieldStressKPa,
						gasPressureKPa: input.gasPressureKPa ?? ATMOSPHERE_KPA,
						relativeDensity: input.relativeDensity,
					},
		energyRangeKJPerM3: null,
		strainRange: null,
		thicknessRangeM: [0.0254, null],
		temperatureRangeDegC: null,
		peakUncertainty: 0.25,
		optimumFactor: 1.35,
		dropNumber: "unknown",
		primary: false,
		bestVerdict: "provisional",
		sources: [cite("user", "own foam model, without a prediction interval", "user")],
		noteKey: "cushion.note-own",
	};
}
