/** The checks of the six faces: the peak of each in a flat drop, its band, against the item's limit. */
import { type CheckVerdict, cushion } from "../cushioning/cushion.ts";
import { type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { dropSets, type FaceStacks, firstDropOnly, type StackLayer, staticStressKPa, weightN } from "./face-stacks.ts";
import { type FaceLimit, limitOf } from "./fragility.ts";
import { stackPeak } from "./stack-peak.ts";
import { FACES, type Face, type PackagingCheck, type PackagingInput } from "./types.ts";
import { atMost, bestOf, worse } from "./verdicts.ts";

export interface FaceAnswer {
	readonly face: Face;
	readonly check: PackagingCheck;
	/** Null where a foam is not known, and where it is crushed flat. */
	readonly peakGn: number | null;
	readonly bandGn: readonly [low: number, high: number] | null;
}

const IN_A_ROW = cite(
	"our-derivation",
	"cushions in a row share one force: Σ energy(force) = weight · drop",
	"our-choice",
);

/** One answer per face. */
export function faceAnswers(input: PackagingInput, stacks: FaceStacks, dropHeightM: number): FaceAnswer[] {
	const limit = limitOf(input.item);
	return FACES.map((face) => {
		const stack = stacks[face];
		const sets = dropSets(stack).map((set) =>
			set.length === 1 && set[0] !== undefined && set[0].foam !== null
				? singleAnswer(input, face, set[0], dropHeightM, limit)
				: stackAnswer(input, face, set, dropHeightM, limit),
		);
		const answer = sets.reduce((worst, next) => (isWorse(next, worst) ? next : worst));
		return firstDropOnly(stack) && isHeld(answer.check.verdict) ? onlyFirst(answer) : answer;
	});
}

function isHeld(verdict: CheckVerdict): boolean {
	return verdict !== "falls-short" && verdict !== "not-assessed";
}

function isWorse(next: FaceAnswer, than: FaceAnswer): boolean {
	if (next.check.verdict !== than.check.verdict)
		return worse(next.check.verdict, than.check.verdict) === next.check.verdict;
	return (next.peakGn ?? Number.POSITIVE_INFINITY) > (than.peakGn ?? Number.POSITIVE_INFINITY);
}

/** A trip has several drops, and this foam is known for the first alone. */
function onlyFirst(answer: FaceAnswer): FaceAnswer {
	return {
		...answer,
		check: {
			...answer.check,
			verdict: "not-assessed",
			why: sentence("packaging.first-drop-only", { face: answer.face, peakGn: answer.peakGn ?? 0 }),
			mend: sentence("packaging.mend-later-drops"),
		},
	};
}

function baseOf(input: PackagingInput, face: Face, limit: FaceLimit) {
	return {
		base: { id: `cushion-${face}` as const, limit: limit.limitGn, unit: "gₙ" },
		/** What the verdict rests on beside the foam. */
		firm: worse(limit.best, bestOf([input.route.dropTable.source])),
		sources: [limit.source, input.route.dropTable.source],
	};
}

/** Several layers in a row, none, or one of which nothing is known. */
function stackAnswer(
	input: PackagingInput,
	face: Face,
	stack: readonly StackLayer[],
	dropHeightM: number,
	limit: FaceLimit,
): FaceAnswer {
	const { base, sources } = baseOf(input, face, limit);
	const bare = { face, peakGn: null, bandGn: null };
	const without = (
		verdict: CheckVerdict,
		value: number | null,
		why: Sentence,
		mend: Sentence,
		more: readonly Source[],
	) => ({
		...bare,
		check: {
			...base,
			verdict,
			value,
			margin: value === null ? null : (limit.limitGn - value) / limit.limitGn,
			why,
			mend,
			sources: [...sources, ...more],
		},
	});
	if (stack.length === 0)
		return without(
			"falls-short",
			null,
			sentence("packaging.no-cushion", { face }),
			sentence("packaging.mend-cushion"),
			[],
		);
	const unknown = stack.find((layer) => layer.foam === null);
	if (unknown !== undefined) {
		const floor = dropHeightM / stack.reduce((sum, layer) => sum + layer.thicknessM, 0);
		const { result, sources: more } = cushion({
			foam: null,
			thicknessM: dropHeightM / floor,
			dropHeightM,
			staticStressKPa: staticStressKPa(input.item, unknown),
			limitGn: limit.limitGn,
			catalogue: input.catalogue,
		});
		const short = !(floor <= limit.limitGn);
		const values = { peakGn: floor, limitGn: limit.limitGn };
		return without(
			short ? "falls-short" : "not-assessed",
			floor,
			short
				? sentence("packaging.floor-short", values)
				: unknown.filler
					? sentence(unknown.filler.whyKey)
					: sentence("packaging.foam-unknown", values),
			sentence("packaging.mend-unknown", { leastMm: 1000 * (result?.leastThicknessPracticalM ?? 0) }),
			[...more, ...(unknown.filler?.sources ?? [])],
		);
	}
	const peak = stackPeak(stack, weightN(input.item), dropHeightM);
	const more = [IN_A_ROW, ...stack.flatMap((layer) => layer.foam?.sources ?? [])];
	if (peak === null || !Number.isFinite(peak.bandGn[1])) {
		const why = sentence("packaging.crushed", { limitGn: limit.limitGn });
		return without("falls-short", null, why, sentence("packaging.mend-margin"), more);
	}
	const held = atMost(peak.peakGn, limit.limitGn, "provisional", peak.bandGn);
	const verdict = isHeld(held) && !peak.covered ? "not-assessed" : held;
	const [lowGn, highGn] = peak.bandGn;
	const values = { peakGn: peak.peakGn, limitGn: limit.limitGn, lowGn, highGn };
	return {
		face,
		...peak,
		check: {
			...base,
			verdict,
			value: peak.peakGn,
			margin: (limit.limitGn - peak.peakGn) / limit.limitGn,
			why: sentence(
				verdict === "falls-short"
					? lowGn <= limit.limitGn
						? "packaging.short-within-band"
						: "packaging.short"
					: verdict === "not-assessed"
						? "packaging.outside-range"
						: verdict === "marginal"
							? "packaging.marginal"
							: "packaging.holds",
				values,
			),
			mend:
				verdict === "provisional"
					? null
					: sentence(verdict === "not-assessed" ? "packaging.mend-range" : "packaging.mend-margin"),
			sources: [...more, ...sources],
		},
	};
}

/** One layer of a known foam. */
function singleAnswer(
	input: PackagingInput,
	face: Face,
	layer: StackLayer,
	dropHeightM: number,
	limit: FaceLimit,
): FaceAnswer {
	const { base, firm, sources: more } = baseOf(input, face, limit);
	const answer = cushion({
		foam: layer.foam,
		thicknessM: layer.thicknessM,
		dropHeightM,
		staticStressKPa: staticStressKPa(input.item, layer),
		limitGn: limit.limitGn,
		catalogue: input.catalogue,
	});
	const sources = [...answer.sources, ...more];
	if (answer.status !== "assessed")
		return {
			face,
			peakGn: null,
			bandGn: null,
			check: {
				...base,
				verdict: "not-assessed",
				value: null,
				margin: null,
				why: answer.reason.message,
				mend: sentence("packaging.mend-range"),
				sources,
			},
		};
	const { result } = answer;
	const value = result.peakGn ?? result.floorPeakGn;
	const verdict = result.verdict === "meets" ? firm : (result.verdict ?? "not-assessed");
	return {
		face,
		peakGn: result.peakGn,
		bandGn: result.peakBandGn,
		check: {
			...base,
			verdict,
			value,
			margin: (limit.limitGn - value) / limit.limitGn,
			why: whyOf(answer, verdict, value, limit.limitGn),
			mend: verdict === "meets" || verdict === "provisional" ? null : mendOf(result, weightN(input.item)),
			sources,
		},
	};
}

type CushionAnswer = Extract<ReturnType<typeof cushion>, { status: "assessed" }>;

function whyOf({ result, validity }: CushionAnswer, verdict: CheckVerdict, peakGn: number, limitGn: number): Sentence {
	const band = result.peakBandGn ?? [peakGn, peakGn];
	const values = { peakGn, limitGn, lowGn: band[0], highGn: band[1] };
	if (result.peakGn === null) return sentence("packaging.crushed", values);
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
	const [least, most] = result.staticStressRangeKPa ?? [null, null];
	if (result.loading === "over-supported" && least !== null && most !== null)
		return sentence("packaging.mend-pads-of", { leastCm2: (10 * weightN) / most, mostCm2: (10 * weightN) / least });
	if (result.minimumThicknessAtStressReason === "pad-too-large") return sentence("packaging.mend-smaller-pads");
	if (result.verdictCode === "outside-range") return sentence("packaging.mend-range");
	if (result.verdict === "marginal") return sentence("packaging.mend-margin");
	return sentence("packaging.mend-thicker", { leastMm: 1000 * (result.minimumThicknessAtStressM ?? 0) });
}
