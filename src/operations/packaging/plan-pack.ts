/** A pack as someone plans it: what the checks say, the design drop beside others, a curve per cushion. Nothing is kept. */
import { type CushionResult, cushion } from "../../calculations/cushioning/cushion.ts";
import type { Foam } from "../../calculations/cushioning/foam.ts";
import { energyRangeOf } from "../../calculations/cushioning/foam-range.ts";
import type { DropHeight } from "../../calculations/handling/drop-height.ts";
import type { Judged, Sentence } from "../../calculations/judged.ts";
import { type DamageRisk, damageRisk } from "../../calculations/packaging/damage-risk.ts";
import { faceStacks, staticStressKPa } from "../../calculations/packaging/face-stacks.ts";
import { limitOf } from "../../calculations/packaging/fragility.ts";
import { designDropOf, packaging, REQUIRED_CHECKS } from "../../calculations/packaging/packaging.ts";
import {
	AT_LEAST_CHECKS,
	FACES,
	type Face,
	type Packaging,
	type PackagingInput,
} from "../../calculations/packaging/types.ts";
import type { Source } from "../../calculations/sources.ts";
import { ORIENTATION_SHARES } from "../../catalogue/drop-tables.ts";
import type { CurvePoint } from "../../charts/peak-curve.ts";
import type { PackagingRequest } from "../../contract/packaging.ts";
import { canonicalBytes, sha256Hex } from "../../records/canonical.ts";
import { packagingInput } from "../calculations/packaging.ts";
import { type PackSection, packSections } from "./pack-sections.ts";

export interface PackPlan {
	/** Of the request: sealing asks for the same one that was looked at. */
	readonly requestSha256: string;
	readonly answer: Judged<Packaging>;
	/** The design drop of the basis asked for, other bases and what was measured; null above its table. */
	readonly drop: (DropHeight & { readonly standing: Source["standing"] }) | null;
	readonly curves: readonly PackCurve[];
	readonly sections: readonly PackSection[];
	/** Beside the verdict and never sealed; null where the item's strength is neither tested nor stated by its maker. */
	readonly damageRisk: DamageRisk | null;
}

export interface PackCurve {
	/** Faces that share this cushion and stress. */
	readonly faces: readonly Face[];
	readonly thicknessM: number;
	readonly dropHeightM: number;
	/** Over static stress, kPa. */
	readonly points: readonly CurvePoint[];
	/** Over thickness, mm, at this stress. */
	readonly byThickness: readonly CurvePoint[];
	readonly staticStressKPa: number;
	readonly limitGn: number;
	readonly result: Known<CushionResult>;
	/** What is uncertain about the foam, and what lies outside its data. */
	readonly notes: readonly Sentence[];
	/** The foam's own checked range; null where it names none. */
	readonly energyRangeKJPerM3: Foam["energyRangeKJPerM3"];
}

/** A cushion of a known foam: peak and optimum are there. */
type Known<R extends CushionResult> = R & {
	readonly peakGn: number;
	readonly peakBandGn: readonly [number, number];
	readonly optimumStaticStressKPa: number;
	readonly optimumPeakGn: number;
};

const SAMPLES = 301;
/** The plot reaches this factor beyond the point and the optimum on either side. */
const REACH = 6;
/** The plot over thickness reaches at least here, and to twice this cushion's. */
const LEAST_THICKEST_M = 0.15;

/** Computes a pack. @throws bad-input for a foam or a basis that the catalogue does not have */
export function planPack(request: PackagingRequest): PackPlan {
	const input = packagingInput(request);
	const { dropTable } = input.route;
	const drop = designDropOf(input).result;
	return {
		requestSha256: sha256Hex(canonicalBytes(JSON.parse(JSON.stringify(request)))),
		answer: packaging(input),
		drop: drop === null ? null : { ...drop, standing: dropTable.source.standing },
		curves: drop === null ? [] : curvesOf(input, drop.dropHeightM),
		sections: packSections(input),
		damageRisk: damageRisk(input, ORIENTATION_SHARES),
	};
}

/** Whether a pack is not adequate without this check. */
export function isRequiredCheck(id: string): boolean {
	return (REQUIRED_CHECKS as ReadonlySet<string>).has(id);
}

/** Whether a check's value is to reach its limit; that of others is to stay below. */
export function reachesItsLimit(id: string): boolean {
	return (AT_LEAST_CHECKS as ReadonlySet<string>).has(id);
}

function curvesOf(input: PackagingInput, dropHeightM: number): PackCurve[] {
	const curves = new Map<string, PackCurve>();
	const stacks = faceStacks(input);
	for (const face of FACES) {
		const [layer, ...more] = stacks[face];
		if (layer === undefined || layer.foam === null || more.length > 0) continue;
		const { foam, thicknessM } = layer;
		const stress = staticStressKPa(input.item, layer);
		const key = JSON.stringify([foam.id, foam.model, thicknessM, stress.toPrecision(6)]);
		const known = curves.get(key);
		const curve =
			known === undefined
				? curveOf(input, { face, foam, thicknessM, dropHeightM, stress })
				: { ...known, faces: [...known.faces, face] };
		if (curve !== null) curves.set(key, curve);
	}
	return [...curves.values()];
}

interface FaceCushion {
	readonly face: Face;
	readonly foam: Foam;
	readonly thicknessM: number;
	readonly dropHeightM: number;
	readonly stress: number;
}

function curveOf(
	{ item, catalogue }: PackagingInput,
	{ face, foam, thicknessM, dropHeightM, stress }: FaceCushion,
): PackCurve | null {
	const { limitGn } = limitOf(item);
	const working = cushion({ foam, thicknessM, dropHeightM, staticStressKPa: stress, limitGn, catalogue });
	if (!isKnown(working.result)) return null;
	// For the curves alone: what is practical with other foams is not asked at each of their points.
	const at = (place: number, staticStress: number, thickM: number): CurvePoint[] => {
		const { result, validity } = cushion({
			foam,
			thicknessM: thickM,
			dropHeightM,
			staticStressKPa: staticStress,
			catalogue: [],
		});
		if (!isKnown(result)) return [];
		const [lowGn, highGn] = result.peakBandGn;
		const { peakGn, floorPeakGn: floorGn } = result;
		return [{ at: place, peakGn, lowGn, highGn, inside: validity.within, floorGn }];
	};
	const optimum = working.result.optimumStaticStressKPa;
	const low = Math.min(stress, optimum) / REACH;
	const high = Math.max(stress, optimum) * REACH;
	const points = Array.from({ length: SAMPLES }, (_, index) => low * (high / low) ** (index / (SAMPLES - 1))).flatMap(
		(staticStress) => at(staticStress, staticStress, thicknessM),
	);
	const thickest = Math.max(2 * thicknessM, LEAST_THICKEST_M);
	const byThickness = Array.from({ length: SAMPLES }, (_, index) => (thickest * (index + 10)) / (SAMPLES + 9)).flatMap(
		(thickM) => at(1000 * thickM, stress, thickM),
	);
	return {
		faces: [face],
		thicknessM,
		dropHeightM,
		points: points.map(({ floorGn: _, ...point }) => point),
		byThickness,
		staticStressKPa: stress,
		limitGn,
		result: working.result,
		notes: working.validity.notes,
		energyRangeKJPerM3: energyRangeOf(foam, foam.model),
	};
}

function isKnown(result: CushionResult | null): result is Known<CushionResult> {
	return result !== null && result.peakGn !== null && Number.isFinite(result.peakGn) && result.optimumPeakGn !== null;
}
