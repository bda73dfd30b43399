/** The cushion of each face: its static stress, its limit, and the drop that it protects to. */
import { type CheckVerdict, coversEnergy, cushion } from "../cushioning/cushion.ts";
import { energyWithin } from "../cushioning/foam-model.ts";
import { type Sentence, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite, type Source } from "../sources.ts";
import {
	FACES,
	type Face,
	type FoamLayer,
	type PackagingCheck,
	type PackagingInput,
	type PackedItem,
} from "./types.ts";

/** Design fragility is this share of a measured one. Source: published, a paper on flexible polyurethane cushions (opening read). */
const DESIGN_SHARE = 0.8;
/** Where nothing is known of the board. Source: our choice, the careful end of 30 to 50 gₙ for unknown cards. */
const DEFAULT_FRAGILITY_GN = 30;
const FRAGILITY_SHARE = cite("design-fragility-paper", "design fragility 80 % of the measured", "published");
const FRAGILITY_DEFAULT = cite("our-choice", "30 gₙ for a board of which nothing is known", "our-choice");

export interface FaceLimit {
	readonly limitGn: number;
	readonly source: Source;
	/** Best verdict that a limit on this basis carries. */
	readonly best: "meets" | "provisional";
}

/** The item's limit: 0.8 of a tested fragility, the level itself on other bases, which are levels passed. */
export function limitOf(item: PackedItem): FaceLimit {
	if (item.fragility === undefined)
		return { limitGn: DEFAULT_FRAGILITY_GN, source: FRAGILITY_DEFAULT, best: "provisional" };
	const { gn, basis } = item.fragility;
	if (basis === "tested") return { limitGn: DESIGN_SHARE * gn, source: FRAGILITY_SHARE, best: "meets" };
	const best = basis === "maker" ? "meets" : "provisional";
	return { limitGn: gn, source: cite("user", `fragility, basis ${basis}`, "user"), best };
}

/** Weight over what really touches, kPa. */
export function staticStressKPa(item: PackedItem, face: Face, layer: FoamLayer): number {
	const whole = {
		top: item.lengthM * item.widthM,
		bottom: item.lengthM * item.widthM,
		front: item.lengthM * item.heightM,
		back: item.lengthM * item.heightM,
		left: item.widthM * item.heightM,
		right: item.widthM * item.heightM,
	}[face];
	const areaM2 =
		"fullFace" in layer.bearing ? whole : layer.bearing.pads.reduce((sum, pad) => sum + pad.lengthM * pad.widthM, 0);
	return (item.massKg * STANDARD_GRAVITY_M_PER_S2) / areaM2 / 1000;
}

const ORDER: readonly CheckVerdict[] = ["meets", "provisional", "marginal", "not-assessed", "falls-short"];
/** The worse of two verdicts. */
export function worse(a: CheckVerdict, b: CheckVerdict): CheckVerdict {
	return ORDER.indexOf(a) > ORDER.indexOf(b) ? a : b;
}

/** One check per face. */
export function faceChecks(input: PackagingInput, dropHeightM: number): PackagingCheck[] {
	const limit = limitOf(input.item);
	return FACES.map((face) => faceCheck(input, face, dropHeightM, limit));
}

function faceCheck(input: PackagingInput, face: Face, dropHeightM: number, limit: FaceLimit): PackagingCheck {
	const base = { id: `cushion-${face}` as const, limit: limit.limitGn, unit: "gₙ" };
	const layers = input.pack.faces[face];
	const [layer] = layers;
	if (layer === undefined) {
		return {
			...base,
			verdict: "falls-short",
			value: null,
			margin: null,
			why: sentence("packaging.no-cushion", { face }),
			mend: sentence("packaging.mend-cushion"),
			sources: [limit.source],
		};
	}
	if (layers.length > 1) {
		return {
			...base,
			verdict: "not-assessed",
			value: null,
			margin: null,
			why: sentence("packaging.several-layers"),
			mend: null,
			sources: [limit.source],
		};
	}
	const answer = cushion({
		foam: layer.foam,
		thicknessM: layer.thicknessM,
		dropHeightM,
		staticStressKPa: staticStressKPa(input.item, face, layer),
		limitGn: limit.limitGn,
		catalogue: input.catalogue,
	});
	const sources = [...answer.sources, limit.source];
	if (answer.status !== "assessed")
		return {
			...base,
			verdict: "not-assessed",
			value: null,
			margin: null,
			why: answer.reason.message,
			mend: null,
			sources,
		};
	const { result } = answer;
	const value = result.peakGn ?? result.floorPeakGn;
	const verdict = result.verdict === "meets" ? limit.best : (result.verdict ?? "not-assessed");
	return {
		...base,
		verdict,
		value,
		margin: (limit.limitGn - value) / limit.limitGn,
		why: whyOf(answer, verdict, value, limit.limitGn),
		mend: verdict === "meets" || verdict === "provisional" ? null : mendOf(result.verdictCode, result),
		sources,
	};
}

type CushionAnswer = Extract<ReturnType<typeof cushion>, { status: "assessed" }>;

function whyOf({ result, validity }: CushionAnswer, verdict: CheckVerdict, peakGn: number, limitGn: number): Sentence {
	const band = result.peakBandGn ?? [peakGn, peakGn];
	const values = { peakGn, limitGn, lowGn: band[0], highGn: band[1] };
	if (result.peakGn === null)
		return sentence(verdict === "falls-short" ? "packaging.floor-short" : "packaging.foam-unknown", values);
	if (verdict === "falls-short") {
		if (result.verdictCode === "pad-too-large") return sentence("packaging.pad-too-large", values);
		return sentence(result.verdictCode === "within-band" ? "packaging.short-within-band" : "packaging.short", values);
	}
	if (verdict === "not-assessed")
		return sentence(validity.within ? "packaging.not-assessed" : "packaging.outside-range", values);
	return sentence(verdict === "marginal" ? "packaging.marginal" : "packaging.holds", values);
}

function mendOf(code: CushionAnswer["result"]["verdictCode"], result: CushionAnswer["result"]): Sentence {
	if (code === "pad-too-large") return sentence("packaging.mend-smaller-pads");
	if (result.peakGn === null)
		return sentence("packaging.mend-unknown", { leastMm: 1000 * (result.leastThicknessPracticalM ?? 0) });
	if (code === "outside-range") return sentence("packaging.mend-range");
	if (result.verdict === "marginal") return sentence("packaging.mend-margin");
	if (result.minimumThicknessAtStressM !== null)
		return sentence("packaging.mend-thicker", { leastMm: 1000 * result.minimumThicknessAtStressM });
	return sentence("packaging.mend-cushion");
}

export interface ProtectedDrop {
	readonly dropHeightM: number;
	readonly bandM: readonly [low: number, high: number];
	readonly face: Face;
	/** A face whose foam is not known only bounds the drop from above: h = limit · thickness. */
	readonly onlyBound: boolean;
	/** The foam's data cover the energy of that drop. */
	readonly insideData: boolean;
}

/**
 * The drop at which the worst face reaches its limit. S(s·h/t) = limit·s is solved for h on each face, nominally and at
 * the six corners of the foam's band. Null where a face has no cushion or several layers.
 */
export function protectedDrop(input: PackagingInput): ProtectedDrop | null {
	const { limitGn } = limitOf(input.item);
	const faces = FACES.map((face): ProtectedDrop | null => {
		const [layer, ...more] = input.pack.faces[face];
		if (layer === undefined || more.length > 0) return null;
		if (layer.foam === null) {
			const bound = limitGn * layer.thicknessM;
			return { dropHeightM: bound, bandM: [0, bound], face, onlyBound: true, insideData: false };
		}
		const { foam, thicknessM } = layer;
		const stress = staticStressKPa(input.item, face, layer);
		// A shifted model reaches the limit at f times the energy at which the nominal one reaches limit / (peak · f).
		const height = (peak: number, factor: number) =>
			(factor * (energyWithin(foam.model, (limitGn * stress) / (peak * factor)) ?? 0) * thicknessM) / stress;
		const corners = [1 - foam.peakUncertainty, 1 + foam.peakUncertainty].flatMap((peak) =>
			[1 / foam.optimumFactor, 1, foam.optimumFactor].map((factor) => height(peak, factor)),
		);
		const dropHeightM = height(1, 1);
		return {
			dropHeightM,
			bandM: [Math.min(...corners), Math.max(...corners)],
			face,
			onlyBound: false,
			insideData: coversEnergy(foam, foam.model, (stress * dropHeightM) / thicknessM),
		};
	});
	if (faces.some((face) => face === null)) return null;
	return (faces as ProtectedDrop[]).reduce((worst, next) => (next.dropHeightM < worst.dropHeightM ? next : worst));
}
