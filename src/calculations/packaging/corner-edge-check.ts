/** The check `corner-edge`: drops on every edge and corner by a derived rule, or a corner drop of the shop's own. */
import { skewPeakKN } from "../cushioning/skew-drop.ts";
import { sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import { dropSets, type FaceStacks, firstDropOnly, padsOf, type StackLayer, weightN } from "./face-stacks.ts";
import { cornersOf } from "./stack-peak.ts";
import type { CornerDrop, Face, PackagingCheck } from "./types.ts";
import { atMost, bestOf, unassessed, worse } from "./verdicts.ts";

const RULE = cite(
	"our-derivation",
	"edge and corner as faces pressed together, F = Σ n·F(n·d); not validated",
	"our-choice",
);
const SHARES = cite(
	"parcel-orientation",
	"edges and corners: 93 % of impacts in one network, 44 % in another",
	"published",
);
const OWN = cite("user", "corner drop of the shop's own, recorded", "user");

/** What was dropped has this item's mass to within this share. Source: our choice. */
const SAME_MASS = 0.05;
/** Ten samples on a pulse of 10 ms: a cushion's pulse is longer. Source: published, the sampling rule of shock processing; the pulse is our choice. */
const LEAST_SAMPLE_RATE_HZ = 1000;

const [UPRIGHT, SIDES, ENDS] = [
	["top", "bottom"],
	["left", "right"],
	["front", "back"],
] as const satisfies readonly (readonly Face[])[];
const meet = (first: readonly Face[], second: readonly Face[]) =>
	first.flatMap((one) => second.map((other) => [one, other] as const));

/** Every edge (two faces) and corner (three faces) of the pack. */
const MEETINGS: readonly (readonly Face[])[] = [
	...meet(UPRIGHT, SIDES),
	...meet(UPRIGHT, ENDS),
	...meet(SIDES, ENDS),
	...meet(UPRIGHT, SIDES).flatMap((edge) => ENDS.map((face) => [...edge, face])),
];

export function cornerEdgeCheck(context: CheckContext): PackagingCheck {
	return measured(context) ?? derived(context);
}

/** By the shop's own drops, where one counts: on a corner, from the design drop at least, with this mass, sampled finely enough. */
function measured({ input, designDropM, limit }: CheckContext): PackagingCheck | null {
	const counts = ({ dropHeightM, orientation, sampleRateHz, massKg }: CornerDrop) =>
		orientation === "corner" &&
		dropHeightM >= designDropM &&
		sampleRateHz >= LEAST_SAMPLE_RATE_HZ &&
		massKg >= input.item.massKg * (1 - SAME_MASS) &&
		massKg <= input.item.massKg * (1 + SAME_MASS);
	const drops = (input.pack.cornerDrops ?? []).filter(counts);
	if (drops.length === 0) return null;
	const peakGn = Math.max(...drops.map((drop) => drop.peakGn));
	const best = worse(limit.best, bestOf([input.route.dropTable.source]));
	const held = peakGn <= limit.limitGn;
	return {
		id: "corner-edge",
		verdict: held ? best : "falls-short",
		value: peakGn,
		limit: limit.limitGn,
		unit: "gₙ",
		margin: (limit.limitGn - peakGn) / limit.limitGn,
		why: sentence(held ? "packaging.corner-measured" : "packaging.corner-measured-short", {
			peakGn,
			limitGn: limit.limitGn,
			count: drops.length,
		}),
		mend: held ? null : sentence("packaging.mend-corner"),
		sources: [OWN, limit.source, input.route.dropTable.source, SHARES],
	};
}

function derived({ input, designDropM, limit, stacks }: CheckContext): PackagingCheck {
	const sources = [RULE, SHARES, limit.source, input.route.dropTable.source];
	const base = { id: "corner-edge" as const, limit: limit.limitGn, unit: "gₙ", sources };
	const all = Object.values(stacks);
	if (all.some((stack) => stack.length === 0))
		return {
			...base,
			verdict: "falls-short",
			value: null,
			margin: null,
			why: sentence("packaging.corner-bare"),
			mend: sentence("packaging.mend-cushion"),
		};
	if (all.some((stack) => stack.some((layer) => layer.foam === null)))
		return unassessed(
			"corner-edge",
			sentence("packaging.corner-unknown"),
			sentence("packaging.mend-corner-drop"),
			sources,
		);
	const weight = weightN(input.item);
	const energyKJ = (weight * designDropM) / 1000;
	const peakOf = (rows: readonly (readonly StackLayer[])[], corner: number | null) => {
		const pads = rows.flatMap((stack) => {
			const row = corner === null ? padsOf(stack) : cornersOf(stack)[corner];
			return row === undefined || row === null ? [] : [row];
		});
		return (1000 * skewPeakKN(pads, energyKJ)) / weight;
	};
	const peaks = distinct(stacks).map(({ faces, rows }) => {
		const corners = [0, 1, 2, 3, 4, 5].map((corner) => peakOf(rows, corner));
		return { faces, nominal: peakOf(rows, null), lowGn: Math.min(...corners), highGn: Math.max(...corners) };
	});
	const worst = peaks.reduce((high, next) => (next.nominal > high.nominal ? next : high));
	const lowGn = Math.max(...peaks.map((peak) => peak.lowGn));
	const highGn = Math.max(...peaks.map((peak) => peak.highGn));
	const held = atMost(worst.nominal, limit.limitGn, "provisional", [lowGn, highGn]);
	const once = Object.values(stacks).some(firstDropOnly);
	const verdict = once && held !== "falls-short" ? "not-assessed" : held;
	return {
		...base,
		verdict,
		value: worst.nominal,
		margin: (limit.limitGn - worst.nominal) / limit.limitGn,
		why: sentence(
			!Number.isFinite(worst.nominal)
				? "packaging.corner-crushed"
				: held === "falls-short"
					? "packaging.corner-short"
					: once
						? "packaging.corner-first-drop"
						: held === "marginal"
							? "packaging.corner-marginal"
							: "packaging.corner-holds",
			{
				where: worst.faces.join("-"),
				peakGn: worst.nominal,
				limitGn: limit.limitGn,
				lowGn,
				highGn,
			},
		),
		mend: sentence(verdict === "falls-short" ? "packaging.mend-corner" : "packaging.mend-corner-drop"),
		sources,
	};
}

interface Meeting {
	readonly faces: readonly Face[];
	readonly rows: readonly (readonly StackLayer[])[];
	/** How many edges or corners are like it. */
	readonly count: number;
}

/** Every face, edge and corner, those with equal cushions once. */
export function meetingsOf(stacks: FaceStacks): Meeting[] {
	const alone = (Object.keys(stacks) as Face[]).map((face) => [face]);
	return grouped([...alone, ...MEETINGS].map((faces) => ({ faces, rows: faces.map((face) => stacks[face]) })));
}

/** Edges and corners whose cushions differ, first and later drops apart: equal ones are computed once. */
function distinct(stacks: FaceStacks): Meeting[] {
	return grouped(
		MEETINGS.flatMap((faces) => {
			const sets = faces.map((face) => dropSets(stacks[face]));
			return [0, 1].map((place) => ({
				faces,
				rows: sets.map((all) => all[Math.min(place, all.length - 1)] ?? []),
			}));
		}),
	);
}

function grouped(all: readonly Omit<Meeting, "count">[]): Meeting[] {
	const found = new Map<string, Meeting>();
	for (const { faces, rows } of all) {
		const key = rows
			.map((stack) => JSON.stringify(stack.map((layer) => [layer.foam?.model, layer.thicknessM, layer.areaM2])))
			.sort()
			.join();
		const known = found.get(key);
		found.set(key, known === undefined ? { faces, rows, count: 1 } : { ...known, count: known.count + 1 });
	}
	return [...found.values()];
}
