/** Every way to cushion the two faces of an axis from the sheets in stock, judged as far as one face can be. */
import { type Compressed, rowPressed } from "../../cushioning/pad.ts";
import { dropSets, firstDropOnly, padsOf, type StackLayer, stackOf, staticStressKPa, weightN } from "../face-stacks.ts";
import { PLAY_M, ROUNDING_M } from "../fit-checks.ts";
import { limitOf } from "../fragility.ts";
import { leastPadAreaM2 } from "../pad-checks.ts";
import { stackPeak } from "../stack-peak.ts";
import type { FoamLayer, PackedItem } from "../types.ts";
import type { AxisOption, Cushion, Exclusion, SearchInput, StockSheet } from "./search-types.ts";

/** Compressions at which a cushion is sampled for the screen of edges and corners. */
const STEP_M = 5e-4;
const STEPS = 400;
/** Shares of a face that pads cover, and how many they are. Our choice: from the whole face to a twentieth. */
const SHARES = [1, 0.7, 0.5, 0.35, 0.25, 0.18, 0.13, 0.09, 0.06];
const COUNTS = [1, 2, 4];
const SHARES_IN_GAP = [1, 0.5, 0.25, 0.12];
const COUNTS_IN_GAP = [1, 4];
/** Sheets on a face at most. */
const MOST_SHEETS = 6;
const NONE = new Float64Array(0);
const LOCKED: Compressed = { forceKN: Number.POSITIVE_INFINITY, energyKJ: Number.POSITIVE_INFINITY };

export interface Room {
	/** Free along the axis, for the cushions of both faces. */
	readonly freeM: number;
	/** Sides of the face that the cushions bear. */
	readonly sidesM: readonly [number, number];
}

interface Cut {
	readonly cushion: Cushion;
	readonly layers: readonly FoamLayer[];
	/** Of both faces; null where a sheet has no price. */
	readonly cost: number | null;
}

/** Options of an axis; none where no stack of sheets fills the room. */
export function axisOptions(input: SearchInput, designDropM: number, around: Room, gap: Room | null): AxisOption[] {
	const inner = cuts(
		input.stock.sheets,
		around,
		gap === null ? SHARES : SHARES_IN_GAP,
		gap === null ? COUNTS : COUNTS_IN_GAP,
	);
	const outer: readonly (Cut | null)[] =
		gap === null ? [null] : cuts(input.stock.sheets, gap, SHARES_IN_GAP, COUNTS_IN_GAP);
	const made = compositions(input.stock.sheets);
	return inner.flatMap((inside) =>
		outer.map((outside) => ({
			composition: [inside, outside].map((one) => made(one?.layers ?? [])).join("|"),
			...judged(input, designDropM, around, gap, inside, outside),
		})),
	);
}

/** Names what layers are made of: foams and thicknesses, from whatever sheets they are cut. */
function compositions(sheets: readonly StockSheet[]): (layers: readonly FoamLayer[]) => string {
	const written = sheets.map(({ foam }) => JSON.stringify(foam));
	const kinds = new Map(sheets.map(({ foam }, place) => [foam, written.indexOf(written[place] ?? "")]));
	return (layers) => layers.map(({ foam, thicknessM }) => `${thicknessM.toFixed(6)} of ${kinds.get(foam)}`).join("+");
}

/** Sheets that fill half the room to within the play that counts as none, cut in every pattern. */
function cuts(sheets: readonly StockSheet[], room: Room, shares: readonly number[], counts: readonly number[]): Cut[] {
	return fillings(sheets, room.freeM / 2).flatMap((filling) =>
		shares.flatMap((share) =>
			counts.flatMap((count) => (share === 1 && count > 1 ? [] : [cut(filling, room, share, count)])),
		),
	);
}

type Filling = readonly { readonly sheet: StockSheet; readonly count: number }[];

/** One kind of sheet, or two. */
function fillings(sheets: readonly StockSheet[], halfM: number): Filling[] {
	if (halfM <= ROUNDING_M / 2) return [];
	const fills = (thicknessM: number) => {
		const left = 2 * (halfM - thicknessM);
		return left >= -ROUNDING_M && left <= PLAY_M;
	};
	return sheets.flatMap((sheet, place) =>
		Array.from({ length: MOST_SHEETS }, (_, index) => index + 1).flatMap((count): Filling[] => {
			const own = count * sheet.thicknessM;
			if (fills(own)) return [[{ sheet, count }]];
			return sheets.slice(place + 1).flatMap((other) =>
				Array.from({ length: MOST_SHEETS - count }, (_, index) => index + 1)
					.filter((more) => fills(own + more * other.thicknessM))
					.map((more) => [
						{ sheet, count },
						{ sheet: other, count: more },
					]),
			);
		}),
	);
}

function cut(filling: Filling, { sidesM: [lengthM, widthM] }: Room, share: number, count: number): Cut {
	const scale = Math.sqrt(share / count);
	const pad = { lengthM: lengthM * scale, widthM: widthM * scale };
	const pads = share === 1 ? null : Array.from({ length: count }, () => pad);
	const bearing = pads === null ? { fullFace: true as const } : { pads };
	const areaM2 = 2 * share * lengthM * widthM;
	return {
		cushion: {
			sheets: filling.map(({ sheet, count: sheetCount }) => ({ id: sheet.id, count: sheetCount })),
			thicknessM: filling.reduce((sum, one) => sum + one.count * one.sheet.thicknessM, 0),
			pads,
		},
		layers: filling.map(({ sheet, count: sheetCount }) => ({
			foam: sheet.foam,
			thicknessM: sheetCount * sheet.thicknessM,
			bearing,
		})),
		cost: filling.reduce<number | null>(
			(sum, { sheet, count: sheetCount }) =>
				sum === null || sheet.price === undefined ? null : sum + sheet.price * sheetCount * areaM2,
			0,
		),
	};
}

function judged(
	input: SearchInput,
	designDropM: number,
	around: Room,
	gap: Room | null,
	inside: Cut,
	outside: Cut | null,
): Omit<AxisOption, "composition"> {
	const { item } = input;
	const limit = limitOf(item).limitGn;
	const stack = [
		...stackOf(inside.layers, around.sidesM, false),
		...(outside === null || gap === null ? [] : stackOf(outside.layers, gap.sidesM, true)),
	];
	const peaks = dropSets(stack).map((set) => stackPeak(set, weightN(item), designDropM));
	const known = peaks.flatMap((peak) => (peak === null ? [] : [peak]));
	const peakGn = Math.max(...known.map((peak) => peak.peakGn));
	const excluded: Exclusion | null =
		known.length < peaks.length
			? "unknown-foam"
			: stack.some(buckles)
				? "buckling"
				: stack.some((layer) => creeps(item, layer))
					? "creep"
					: !(peakGn <= limit)
						? "peak"
						: !known.every((peak) => peak.covered)
							? "outside-data"
							: firstDropOnly(stack)
								? "first-drop-only"
								: null;
	const sampled = excluded === null ? samples(dropSets(stack).at(-1) ?? stack) : { forcesKN: NONE, energiesKJ: NONE };
	return {
		around: inside.cushion,
		gap: outside?.cushion ?? null,
		aroundLayers: inside.layers,
		gapLayers: outside?.layers ?? [],
		excluded,
		margin: (limit - peakGn) / limit,
		cost: inside.cost === null || outside?.cost === null ? null : inside.cost + (outside?.cost ?? 0),
		...sampled,
	};
}

function buckles({ lines, pads, thicknessM }: StackLayer): boolean {
	return !lines && pads.some((pad) => !(pad.lengthM * pad.widthM >= leastPadAreaM2(thicknessM)));
}

function creeps(item: PackedItem, layer: StackLayer): boolean {
	const limit = layer.foam?.creepLimit;
	return limit !== undefined && !(staticStressKPa(item, layer) <= limit.stressKPa);
}

/** Force and energy of the stack in steps of compression. */
function samples(stack: readonly StackLayer[]): { forcesKN: Float64Array; energiesKJ: Float64Array } {
	const pads = padsOf(stack) ?? [];
	const [forcesKN, energiesKJ] = [new Float64Array(STEPS), new Float64Array(STEPS)];
	let locked = false;
	for (let step = 0; step < STEPS; step += 1) {
		const { forceKN, energyKJ }: Compressed = locked ? LOCKED : rowPressed(pads, step * STEP_M);
		locked ||= !Number.isFinite(energyKJ);
		forcesKN[step] = forceKN;
		energiesKJ[step] = energyKJ;
	}
	return { forcesKN, energiesKJ };
}
