/** Packs from a stock of boxes, sheets and bags: every combination screened, the best judged in full. */
import type { CheckVerdict } from "../../cushioning/cushion.ts";
import { assessed, type Judged, notAssessed, sentence } from "../../judged.ts";
import { cite } from "../../sources.ts";
import { outerSidesM, weightN } from "../face-stacks.ts";
import { limitOf } from "../fragility.ts";
import { designDropOf, packaging } from "../packaging.ts";
import { bagCheck } from "../static-check.ts";
import { FACES, type FaceLayers, type FoamLayer, type Pack, type PackedItem } from "../types.ts";
import { worse } from "../verdicts.ts";
import { axisOptions } from "./axis-options.ts";
import { type Candidate, type Frame, isBetter, screen } from "./candidates.ts";
import {
	AXIS_NAMES,
	type AxisOption,
	type Design,
	type Exclusion,
	type PackagingSearch,
	type SearchInput,
	type StockBag,
	type StockBox,
} from "./search-types.ts";

/** Designs judged in full for each that is asked for. */
const JUDGED_PER_DESIGN = 4;
const SOURCE = cite(
	"our-choice",
	"pads of fixed shares of a face, one, two or four; one or two kinds of sheet",
	"our-choice",
);

type Sides = Pick<PackedItem, "lengthM" | "widthM" | "heightM">;

export function packagingSearch(input: SearchInput): Judged<PackagingSearch> {
	const { item, stock, objective, most } = input;
	const bags = stock.bags.map((bag) => ({ bag, check: bagCheck(item, bag.layers) }));
	const usable = bags.filter(({ check }) => check.verdict !== "falls-short" && check.verdict !== "not-assessed");
	const bag = usable.reduce<(typeof usable)[number] | null>(
		(best, next) => (best === null || bagIsBetter(next, best, objective === "cost") ? next : best),
		null,
	);
	const [first] = stock.boxes;
	if (first === undefined) return notAssessed("no-box", sentence("search.no-box"), { sources: [SOURCE] });
	const drop = designDropOf({ ...input, pack: barePack(first) });
	if (drop.status !== "assessed") return notAssessed(drop.reason.code, drop.reason.message, drop);
	const designDropM = drop.result.dropHeightM;
	const weight = weightN(item);

	let considered = 0;
	const excluded: Partial<Record<Exclusion, number>> = {};
	const exclude = (reason: Exclusion, count: number) => {
		excluded[reason] = (excluded[reason] ?? 0) + count;
	};
	const ranked: Candidate[] = [];
	for (const [box, innerBox] of boxPairs(stock.boxes)) {
		const frame = frameOf(input, designDropM, box, innerBox, bag?.bag ?? null);
		// A box that cannot be filled is one candidate, left out for that reason.
		if (typeof frame === "string") {
			considered += bags.length;
			exclude(frame, bags.length);
			continue;
		}
		const found = screen(frame, (weight * designDropM) / 1000, weight / 1000, limitOf(item).limitGn, objective);
		considered += found.considered * bags.length;
		exclude("static", found.considered * (bags.length - usable.length));
		for (const [reason, count] of found.excluded) exclude(reason, count * usable.length);
		if (usable.length > 0) ranked.push(...found.best.slice(0, most * JUDGED_PER_DESIGN));
	}
	ranked.sort((a, b) => (isBetter(a, b, objective) ? -1 : 1));
	const judged = ranked
		.slice(0, most * JUDGED_PER_DESIGN)
		.map((candidate) => designOf(input, candidate, bag?.bag ?? null));
	const holding = judged.filter(({ packaging: { result } }) => result !== null && result.verdict !== "falls-short");
	if (holding.length < judged.length) exclude("other-check", judged.length - holding.length);
	// Verdict first: a pack that holds at its pessimistic edge goes before one that holds nominally by more. The sort is
	// stable, so within a verdict the objective stays.
	const designs = holding.sort(byVerdict).slice(0, most);
	for (const reason of Object.keys(excluded) as Exclusion[]) if (excluded[reason] === 0) delete excluded[reason];
	return assessed<PackagingSearch>(
		{ designs, considered, excluded },
		{
			notes: [sentence("search.screened"), ...(designs.length === 0 ? [sentence("search.none")] : [])],
			sources: [SOURCE, ...drop.sources, limitOf(item).source],
		},
	);
}

function byVerdict(a: Design, b: Design): number {
	const [first, second] = [verdictOf(a), verdictOf(b)];
	if (first === second) return 0;
	return worse(first, second) === second ? -1 : 1;
}

function verdictOf({ packaging: { result } }: Design): CheckVerdict {
	return result?.verdict ?? "not-assessed";
}

/** Every box alone, and every box inside every other that it goes into. */
function boxPairs(boxes: readonly StockBox[]): (readonly [StockBox, StockBox | null])[] {
	return boxes.flatMap((box) => [
		[box, null] as const,
		...boxes
			.filter((inner) => {
				const { lengthM, widthM, heightM } = outerSidesM(inner);
				return inner !== box && lengthM < box.innerLengthM && widthM < box.innerWidthM && heightM < box.innerHeightM;
			})
			.map((inner) => [box, inner] as const),
	]);
}

/** The frame, or why there is none. */
function frameOf(
	input: SearchInput,
	designDropM: number,
	box: StockBox,
	innerBox: StockBox | null,
	bag: StockBag | null,
): Frame | Exclusion {
	const { item } = input;
	const around = innerBox ?? box;
	const inside = insideOf(around);
	if (AXIS_NAMES.some((axis) => inside[sideOf(axis)] < item[sideOf(axis)])) return "item-does-not-fit";
	const outside = innerBox === null ? null : outerSidesM(innerBox);
	const options = AXIS_NAMES.map((axis) => {
		const side = sideOf(axis);
		return axisOptions(
			input,
			designDropM,
			{ freeM: inside[side] - item[side], sidesM: faceSides(item, axis) },
			outside === null ? null : { freeM: insideOf(box)[side] - outside[side], sidesM: faceSides(outside, axis) },
		);
	});
	const [one = [], two = [], three = []] = options;
	if (one.length * two.length * three.length === 0) return "play";
	const { lengthM, widthM, heightM } = outerSidesM(box);
	const prices = [box.price, ...(innerBox === null ? [] : [innerBox.price]), ...(bag === null ? [] : [bag.price])];
	return {
		box,
		innerBox,
		volumeM3: lengthM * widthM * heightM,
		cost: prices.reduce<number | null>((sum, price) => (sum === null || price === undefined ? null : sum + price), 0),
		options: [one, two, three],
	};
}

function designOf(input: SearchInput, { frame, options, margin, cost }: Candidate, bag: StockBag | null): Design {
	const [length, width, height] = options;
	const axes = { length, width, height };
	return {
		boxId: frame.box.id,
		innerBoxId: frame.innerBox?.id ?? null,
		bagId: bag?.id ?? null,
		axes: {
			length: { around: length.around, gap: length.gap },
			width: { around: width.around, gap: width.gap },
			height: { around: height.around, gap: height.gap },
		},
		margin,
		cost,
		volumeM3: frame.volumeM3,
		packaging: packaging({ ...input, pack: packOf(frame, axes, bag) }),
	};
}

function packOf(frame: Frame, axes: Record<(typeof AXIS_NAMES)[number], AxisOption>, bag: StockBag | null): Pack {
	const faces = (pick: (option: AxisOption) => readonly FoamLayer[]): FaceLayers => ({
		left: pick(axes.length),
		right: pick(axes.length),
		front: pick(axes.width),
		back: pick(axes.width),
		top: pick(axes.height),
		bottom: pick(axes.height),
	});
	return {
		box: frame.box,
		faces: faces((option) => option.aroundLayers),
		innerBox: frame.innerBox === null ? undefined : { ...frame.innerBox, faces: faces((option) => option.gapLayers) },
		bagLayers: bag?.layers ?? [],
	};
}

function barePack(box: StockBox): Pack {
	const faces = Object.fromEntries(FACES.map((face) => [face, []])) as unknown as FaceLayers;
	return { box, faces, bagLayers: [] };
}

function insideOf(box: StockBox): Sides {
	return { lengthM: box.innerLengthM, widthM: box.innerWidthM, heightM: box.innerHeightM };
}

function sideOf(axis: (typeof AXIS_NAMES)[number]): keyof Sides {
	return ({ length: "lengthM", width: "widthM", height: "heightM" } as const)[axis];
}

/** Sides of the two faces that are square to an axis. */
function faceSides({ lengthM, widthM, heightM }: Sides, axis: (typeof AXIS_NAMES)[number]): readonly [number, number] {
	if (axis === "height") return [lengthM, widthM];
	return axis === "width" ? [lengthM, heightM] : [widthM, heightM];
}

type JudgedBag = { readonly bag: StockBag; readonly check: ReturnType<typeof bagCheck> };

function bagIsBetter(next: JudgedBag, than: JudgedBag, byPrice: boolean): boolean {
	const price = ({ bag }: JudgedBag) => bag.price ?? Number.POSITIVE_INFINITY;
	if (byPrice && price(next) !== price(than)) return price(next) < price(than);
	if (next.check.verdict === than.check.verdict) return price(next) < price(than);
	return worse(next.check.verdict, than.check.verdict) === than.check.verdict;
}
