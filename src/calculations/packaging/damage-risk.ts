/**
 * The risk of damage on this trip, beside the verdict and never part of it: an interval over what is not known, with the
 * assumptions and the one that matters most. Only for an item whose strength was tested or stated by its maker.
 */

import type { Pad } from "../cushioning/pad.ts";
import { skewPeakKN } from "../cushioning/skew-drop.ts";
import { type Sentence, sentence } from "../judged.ts";
import { meetingsOf } from "./corner-edge-check.ts";
import { dropSets, type FaceStacks, faceStacks, padsOf, weightN } from "./face-stacks.ts";
import { cornersOf } from "./stack-peak.ts";
import { dropDamage, type Lognormal, lognormalThrough, tripDamage } from "./trip-damage.ts";
import { FACES, type Face, type PackagingInput } from "./types.ts";

export const RISK_FACTORS = ["network", "orientation", "curve", "strength-spread"] as const;
export type RiskFactor = (typeof RISK_FACTORS)[number];

/** Shares of impacts by what strikes first, and where they were seen. */
export interface OrientationShares {
	readonly id: string;
	readonly face: number;
	readonly edge: number;
	readonly corner: number;
}

export interface DamageRisk {
	/** Probability per trip, least and most over everything that is not known. */
	readonly probability: readonly [low: number, high: number];
	/** What changes it most when it alone is varied. */
	readonly turnsOn: RiskFactor;
	readonly assumptions: readonly Sentence[];
}

/** Spread of the strength of equal items, as a standard deviation of the logarithm. Source: our choice; none was found in print. */
const STRENGTH_SPREADS = [0.1, 0.2, 0.3];
/** Heights at which peaks are computed, m; straight between them on logarithmic axes. */
const HEIGHTS_M = [0.01, 0.04, 0.1, 0.2, 0.3, 0.45, 0.6, 0.8, 1, 1.25, 1.6, 2.2, 3.5];

const KINDS = ["face", "edge", "corner"] as const;
type Kind = (typeof KINDS)[number];
type Peaks = readonly { readonly kind: Kind; readonly count: number; readonly logPeaks: readonly number[] }[];
type Harm = Readonly<Record<Kind, number>>;

/** Null where strength or a foam is not known well enough to say anything. */
export function damageRisk(input: PackagingInput, shares: readonly OrientationShares[]): DamageRisk | null {
	const { item, route } = input;
	const { fragility } = item;
	if (fragility === undefined || (fragility.basis !== "tested" && fragility.basis !== "maker")) return null;
	const stacks = faceStacks(input);
	if (FACES.some((face) => stacks[face].length === 0 || stacks[face].some((layer) => layer.foam === null))) return null;
	const networks = route.measured.flatMap(({ p95M, maxM, dropsPerTrip, recordedDrops }) =>
		p95M === null || dropsPerTrip === null || recordedDrops === null
			? []
			: [{ dropsPerTrip, heightM: lognormalThrough([0.95, p95M], [recordedDrops / (recordedDrops + 1), maxM]) }],
	);
	const curves = curvesOf(input, stacks);
	// Harm per drop by what strikes first, once for each network, curve and spread.
	const harms = networks.map(({ heightM }) =>
		curves.map((peaks) => STRENGTH_SPREADS.map((spread) => harmOf(peaks, heightM, { median: fragility.gn, spread }))),
	);
	const at = (network: number, orientation: number, curve: number, spread: number) => {
		const [trip, share, harm] = [networks[network], shares[orientation], harms[network]?.[curve]?.[spread]];
		if (trip === undefined || share === undefined || harm === undefined) return Number.NaN;
		return tripDamage(
			trip.dropsPerTrip,
			KINDS.reduce((sum, kind) => sum + share[kind] * harm[kind], 0),
		);
	};
	const counts = [networks.length, shares.length, curves.length, STRENGTH_SPREADS.length] as const;
	const every = (count: number) => Array.from({ length: count }, (_, index) => index);
	const all = every(counts[0]).flatMap((network) =>
		every(counts[1]).flatMap((orientation) =>
			every(counts[2]).flatMap((curve) => every(counts[3]).map((spread) => at(network, orientation, curve, spread))),
		),
	);
	if (all.length === 0 || !all.every(Number.isFinite)) return null;
	// From the middle of what is known, each factor alone over its range.
	const middle = [0, 0, 1, 1] as const;
	const swings = RISK_FACTORS.map((factor, place) => {
		const values = every(counts[place] ?? 0).map((value) => {
			const [network, orientation, curve, spread] = middle.map((usual, index) => (index === place ? value : usual));
			return at(network ?? 0, orientation ?? 0, curve ?? 0, spread ?? 0);
		});
		const floor = (value: number) => Math.log(Math.max(value, 1e-12));
		return { factor, swing: floor(Math.max(...values)) - floor(Math.min(...values)) };
	});
	const turnsOn = swings.reduce((most, next) => (next.swing > most.swing ? next : most)).factor;
	return {
		probability: [Math.min(...all), Math.max(...all)],
		turnsOn,
		assumptions: [
			sentence("risk.heights"),
			sentence("risk.independent"),
			sentence("risk.orientation"),
			sentence("risk.curve"),
			sentence(fragility.basis === "maker" ? "risk.strength-maker" : "risk.strength-tested", {
				gn: fragility.gn,
				low: STRENGTH_SPREADS[0] ?? 0,
				high: STRENGTH_SPREADS.at(-1) ?? 0,
			}),
			sentence("risk.only-drops"),
		],
	};
}

/** Peaks of faces, edges and corners by height, at the better edge of the foams' bands, nominally and at the worse edge. */
function curvesOf(input: PackagingInput, stacks: FaceStacks): readonly Peaks[] {
	const weight = weightN(input.item);
	const later = Object.fromEntries(
		FACES.map((face) => [face, dropSets(stacks[face]).at(-1) ?? []]),
	) as unknown as FaceStacks;
	const groups = meetingsOf(later);
	const peaksOf = (padsAt: (face: Face) => readonly Pad[]): Peaks =>
		groups.map(({ faces, count }) => ({
			kind: KINDS[faces.length - 1] ?? "corner",
			count,
			logPeaks: HEIGHTS_M.map((heightM) =>
				Math.log((1000 * skewPeakKN(faces.map(padsAt), (weight * heightM) / 1000)) / weight),
			),
		}));
	const edge = (index: number) => peaksOf((face) => cornersOf(later[face])[index] ?? []);
	// Of the six corners of the band: peak low or high, the optimum where it is.
	return [edge(1), peaksOf((face) => padsOf(later[face]) ?? []), edge(4)];
}

function harmOf(peaks: Peaks, heightM: Lognormal, strengthGn: Lognormal): Harm {
	const mean = (kind: Kind) => {
		const some = peaks.filter((peak) => peak.kind === kind);
		const total = some.reduce((sum, { count }) => sum + count, 0);
		return some.reduce(
			(sum, { logPeaks, count }) =>
				sum + (count / total) * dropDamage(heightM, strengthGn, (logHeight) => between(logPeaks, logHeight)),
			0,
		);
	};
	return { face: mean("face"), edge: mean("edge"), corner: mean("corner") };
}

/** Straight between heights on logarithmic axes; beyond the highest everything is harmed, below the lowest as there. */
function between(logPeaks: readonly number[], logHeight: number): number {
	const [first = 0] = LOG_HEIGHTS;
	if (logHeight <= first) return logPeaks[0] ?? Number.NaN;
	const index = LOG_HEIGHTS.findIndex((height) => height >= logHeight);
	if (index < 1) return Number.POSITIVE_INFINITY;
	const [low, high] = [LOG_HEIGHTS[index - 1] ?? 0, LOG_HEIGHTS[index] ?? 0];
	const [before = 0, after = 0] = [logPeaks[index - 1], logPeaks[index]];
	if (!Number.isFinite(after)) return Number.POSITIVE_INFINITY;
	return before + ((after - before) * (logHeight - low)) / (high - low);
}

const LOG_HEIGHTS = HEIGHTS_M.map(Math.log);
