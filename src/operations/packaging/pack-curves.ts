/** The curve of each different cushion of a pack, sampled for the plot. */
import { cushion } from "../../calculations/cushioning/cushion.ts";
import { limitOf, staticStressKPa } from "../../calculations/packaging/face-cushions.ts";
import { FACES, type Face } from "../../calculations/packaging/types.ts";
import { FOAMS } from "../../catalogue/foams.ts";
import type { CurvePoint } from "../../charts/cushion-curve.ts";
import type { PackagingRequest } from "../../contract/packaging.ts";
import { packagingInput } from "../calculations/packaging.ts";

export interface PackCurve {
	/** Faces that share this cushion and stress. */
	readonly faces: readonly Face[];
	readonly foamId: string;
	readonly thicknessM: number;
	readonly points: readonly CurvePoint[];
	readonly operating: { readonly staticStressKPa: number; readonly peakGn: number };
	readonly limitGn: number;
}

const SAMPLES = 121;
/** The plot reaches this factor beyond the point and the optimum on either side. */
const REACH = 6;

export function packCurves(request: PackagingRequest, dropHeightM: number): PackCurve[] {
	const input = packagingInput(request);
	const { limitGn } = limitOf(input.item);
	const curves = new Map<string, PackCurve>();
	for (const face of FACES) {
		const [layer, ...more] = input.pack.faces[face];
		if (layer === undefined || layer.foam === null || more.length > 0) continue;
		const { foam, thicknessM } = layer;
		const stress = staticStressKPa(input.item, face, layer);
		const key = [foam.id, thicknessM, stress.toPrecision(6)].join(" ");
		const known = curves.get(key);
		if (known !== undefined) {
			curves.set(key, { ...known, faces: [...known.faces, face] });
			continue;
		}
		const at = (staticStress: number) =>
			cushion({ foam, thicknessM, dropHeightM, staticStressKPa: staticStress, catalogue: FOAMS });
		const working = at(stress).result;
		if (working?.peakGn == null || working.optimumStaticStressKPa === null) continue;
		const low = Math.min(stress, working.optimumStaticStressKPa) / REACH;
		const high = Math.max(stress, working.optimumStaticStressKPa) * REACH;
		const points = Array.from({ length: SAMPLES }, (_, index) => low * (high / low) ** (index / (SAMPLES - 1))).flatMap(
			(staticStress): CurvePoint[] => {
				const { result, validity } = at(staticStress);
				if (result?.peakGn == null || result.peakBandGn === null) return [];
				const [lowGn, highGn] = result.peakBandGn;
				return [{ staticStressKPa: staticStress, peakGn: result.peakGn, lowGn, highGn, inside: validity.within }];
			},
		);
		curves.set(key, {
			faces: [face],
			foamId: foam.id,
			thicknessM,
			points,
			operating: { staticStressKPa: stress, peakGn: working.peakGn },
			limitGn,
		});
	}
	return [...curves.values()];
}
