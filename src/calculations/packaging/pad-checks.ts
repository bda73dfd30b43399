/** The checks `buckling` and `creep` of pads. */
import { sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import { staticStressKPa } from "./face-stacks.ts";
import { FACES, type PackagingCheck } from "./types.ts";
import { atLeast, atMost, unassessed } from "./verdicts.ts";

/** A pad buckles unless its area is over (1.33 · thickness)². Source: published, a course text's worked example: 5 cm, 44 cm². */
const BUCKLING_FACTOR = 1.33;
const BUCKLING = cite("pad-buckling-course", "each pad over (1.33·t)²; 5 cm thick, 44 cm²", "published");
/** The rule is for pads that stand free; a sheet from wall to wall has the walls and its neighbours beside it. */
const LINED = cite("our-choice", "a sheet that lines the box does not buckle", "our-choice");
/** Creep limits are for a temperature up to this. Source: published, a supplier's design guide (120 °F). */
const CREEP_WARM_DEG_C = 49;

/** Area, m², that a pad of a thickness needs so that it does not buckle. */
export function leastPadAreaM2(thicknessM: number): number {
	return (BUCKLING_FACTOR * thicknessM) ** 2;
}

export function bucklingCheck({ stacks }: CheckContext): PackagingCheck {
	const pads = FACES.flatMap((face) =>
		stacks[face].flatMap(({ pads, lines, thicknessM }) =>
			(lines ? [] : pads).map(({ lengthM, widthM }) => {
				const [areaCm2, leastCm2] = [1e4 * lengthM * widthM, 1e4 * leastPadAreaM2(thicknessM)];
				return { face, areaCm2, leastCm2, margin: (areaCm2 - leastCm2) / leastCm2 };
			}),
		),
	);
	const [first, ...others] = pads;
	if (first === undefined && FACES.some((face) => stacks[face].length > 0))
		return unassessed("buckling", sentence("packaging.lined"), null, [BUCKLING, LINED]);
	if (first === undefined)
		return unassessed("buckling", sentence("packaging.no-pads"), sentence("packaging.mend-cushion"), [BUCKLING]);
	const worst = others.reduce((least, next) => (next.margin < least.margin ? next : least), first);
	const { face, areaCm2, leastCm2, margin } = worst;
	const verdict = atLeast(areaCm2, leastCm2, "meets");
	return {
		id: "buckling",
		verdict,
		value: areaCm2,
		limit: leastCm2,
		unit: "cm²",
		margin,
		why: sentence(verdict === "falls-short" ? "packaging.buckles" : "packaging.no-buckling", {
			face,
			areaCm2,
			leastCm2,
		}),
		mend: verdict === "meets" ? null : sentence("packaging.mend-buckling", { leastCm2 }),
		sources: [BUCKLING],
	};
}

export function creepCheck({ input, stacks }: CheckContext): PackagingCheck {
	const loaded = FACES.flatMap((face) =>
		stacks[face].map((layer) => ({ face, limit: layer.foam?.creepLimit, stress: staticStressKPa(input.item, layer) })),
	);
	const known = loaded.flatMap(({ face, limit, stress }) =>
		limit === undefined ? [] : [{ face, stress, limitKPa: limit.stressKPa, source: limit.source }],
	);
	const [first, ...others] = known;
	const sources = known.map((one) => one.source).slice(0, 1);
	if (first === undefined || known.length < loaded.length)
		return unassessed("creep", sentence("packaging.creep-unknown"), sentence("packaging.mend-creep-data"), sources);
	const worst = others.reduce(
		(most, next) => (next.stress / next.limitKPa > most.stress / most.limitKPa ? next : most),
		first,
	);
	const { face, stress, limitKPa } = worst;
	const high = input.route.temperatureHighDegC;
	const held = atMost(stress, limitKPa, "meets");
	const hot = high !== undefined && !(high <= CREEP_WARM_DEG_C) && held !== "falls-short";
	return {
		id: "creep",
		verdict: hot ? "not-assessed" : held,
		value: stress,
		limit: limitKPa,
		unit: "kPa",
		margin: (limitKPa - stress) / limitKPa,
		why: sentence(hot ? "packaging.creep-hot" : held === "falls-short" ? "packaging.creeps" : "packaging.no-creep", {
			face,
			stress,
			limitKPa,
			warmDegC: CREEP_WARM_DEG_C,
		}),
		mend: held === "meets" && !hot ? null : sentence("packaging.mend-creep"),
		sources: [worst.source],
	};
}
