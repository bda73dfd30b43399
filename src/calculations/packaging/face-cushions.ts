/** The cushion of each face: its static stress, its limit, and the drop that it protects to. */
import { type CheckVerdict, cushion } from "../cushioning/cushion.ts";
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

/** Area of a face of the item, m². */
function faceAreaM2({ lengthM, widthM, heightM }: PackedItem, face: Face): number {
	return {
		top: lengthM * widthM,
		bottom: lengthM * widthM,
		front: lengthM * heightM,
		back: lengthM * heightM,
		left: widthM * heightM,
		right: widthM * heightM,
	}[face];
}

/** Whether pads are larger than the face that they bear, which then touches with no more than itself. */
export function padsExceedFace(item: PackedItem, face: Face, bearing: FoamLayer["bearing"]): boolean {
	return "pads" in bearing && padAreaM2(bearing.pads) > faceAreaM2(item, face) * (1 + 1e-9);
}

function padAreaM2(pads: readonly { readonly lengthM: number; readonly widthM: number }[]): number {
	return pads.reduce((sum, pad) => sum + pad.lengthM * pad.widthM, 0);
}

/** Standings of a figure on which `meets` can rest. Source: the contract page. */
const FIRM: readonly Source["standing"][] = ["published", "user"];

/** Best verdict that a design drop of this basis carries. */
function bestOfDrop({ route }: PackagingInput): CheckVerdict {
	return FIRM.includes(route.dropTable.source.standing) ? "meets" : "provisional";
}

/** Weight over what really touches, kPa. */
export function staticStressKPa(item: PackedItem, face: Face, bearing: FoamLayer["bearing"]): number {
	const whole = faceAreaM2(item, face);
	const areaM2 = "fullFace" in bearing ? whole : Math.min(padAreaM2(bearing.pads), whole);
	return weightN(item) / areaM2 / 1000;
}

function weightN({ massKg }: PackedItem): number {
	return massKg * STANDARD_GRAVITY_M_PER_S2;
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
		staticStressKPa: staticStressKPa(input.item, face, layer.bearing),
		limitGn: limit.limitGn,
		catalogue: input.catalogue,
	});
	const sources = [...answer.sources, limit.source, input.route.dropTable.source];
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
	const verdict =
		result.verdict === "meets" ? worse(limit.best, bestOfDrop(input)) : (result.verdict ?? "not-assessed");
	return {
		...base,
		verdict,
		value,
		margin: (limit.limitGn - value) / limit.limitGn,
		why: whyOf(answer, verdict, value, limit.limitGn),
		mend: verdict === "meets" || verdict === "provisional" ? null : mendOf(result, weightN(input.item)),
		sources,
	};
}

type CushionAnswer = Extract<ReturnType<typeof cushion>, { status: "assessed" }>;

function whyOf({ result, validity }: CushionAnswer, verdict: CheckVerdict, peakGn: number, limitGn: number): Sentence {
	const band = result.peakBandGn ?? [peakGn, peakGn];
	const values = { peakGn, limitGn, lowGn: band[0], highGn: band[1] };
	if (result.peakGn === null && result.loading !== null) return sentence("packaging.crushed", values);
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

/** What helps: pads of a size that keeps the limit where the weight is too small for them, else more foam. */
function mendOf(result: CushionAnswer["result"], weightN: number): Sentence {
	if (result.loading === null)
		return sentence("packaging.mend-unknown", { leastMm: 1000 * (result.leastThicknessPracticalM ?? 0) });
	const [least, most] = result.staticStressRangeKPa ?? [null, null];
	if (result.loading === "over-supported" && least !== null && most !== null)
		return sentence("packaging.mend-pads-of", { leastCm2: (10 * weightN) / most, mostCm2: (10 * weightN) / least });
	if (result.minimumThicknessAtStressReason === "pad-too-large") return sentence("packaging.mend-smaller-pads");
	if (result.verdictCode === "outside-range") return sentence("packaging.mend-range");
	if (result.verdict === "marginal") return sentence("packaging.mend-margin");
	return sentence("packaging.mend-thicker", { leastMm: 1000 * (result.minimumThicknessAtStressM ?? 0) });
}
