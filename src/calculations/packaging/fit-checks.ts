/** The checks `fit` and `movement`: item and cushions against the inside of the box on each axis. */
import { sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import { CALIPER_M, outerSidesM } from "./face-stacks.ts";
import type { Face, PackagingCheck } from "./types.ts";
import { worse } from "./verdicts.ts";

const GEOMETRY = cite("mechanics", "item and cushions laid end to end", "published");
const SQUEEZE = cite(
	"our-choice",
	"cushions pressed by at most 5 % of their thickness when the box is closed",
	"our-choice",
);
const SQUEEZE_SHARE = 0.05;
/** Play along an axis that is still none. Source: our choice; the advice is that nothing moves when shaken. */
export const PLAY_M = 0.005;
const ADVICE = cite("packing-advice", "fill until nothing moves when shaken; 51 mm all round at least", "published");
const PLAY = cite("our-choice", "5 mm of play along an axis", "our-choice");
/** The trade's clearance, folk practice: shown, and never a verdict. Source: published, several pages. */
const ADVISED_M = 0.051;
/** Rounding of inches and of sums is not a misfit. */
export const ROUNDING_M = 2e-4;

type Axis = readonly [
	side: "lengthM" | "widthM" | "heightM",
	inner: "innerLengthM" | "innerWidthM" | "innerHeightM",
	Face,
	Face,
];
const AXES: readonly Axis[] = [
	["lengthM", "innerLengthM", "left", "right"],
	["widthM", "innerWidthM", "front", "back"],
	["heightM", "innerHeightM", "top", "bottom"],
];

interface Fit {
	/** Room left over; negative where the cushions are pressed. */
	readonly slackM: number;
	readonly cushionM: number;
	/** Least distance from item to outer box. */
	readonly clearanceM: number;
}

/** Every axis, that between item and inner box and that between the boxes apart. */
function fitsOf({ input, stacks }: CheckContext): Fit[] {
	const { item, pack } = input;
	const { innerBox, box } = pack;
	const thickness = (face: Face, gap: boolean) =>
		stacks[face].filter((layer) => layer.inGap === gap).reduce((sum, layer) => sum + layer.thicknessM, 0);
	const clearance = (faces: readonly [Face, Face]) =>
		Math.min(
			...faces.map(
				(face) =>
					thickness(face, false) +
					thickness(face, true) +
					(innerBox === undefined ? 0 : (innerBox.caliperM ?? CALIPER_M)),
			),
		);
	return AXES.flatMap(([side, inner, low, high]) => {
		const along = (packedM: number, roomM: number, gap: boolean): Fit => {
			const cushionM = thickness(low, gap) + thickness(high, gap);
			return { slackM: roomM - packedM - cushionM, cushionM, clearanceM: clearance([low, high]) };
		};
		if (innerBox === undefined) return [along(item[side], box[inner], false)];
		return [along(item[side], innerBox[inner], false), along(outerSidesM(innerBox)[side], box[inner], true)];
	});
}

/** Nothing sticks out: what is too thick is pressed, and a little of that is welcome. */
export function fitCheck(context: CheckContext): PackagingCheck {
	const fits = fitsOf(context);
	const shares = fits.map(({ slackM, cushionM }) =>
		slackM >= -ROUNDING_M ? 0 : cushionM > 0 ? -slackM / cushionM : Number.POSITIVE_INFINITY,
	);
	const worst = Math.max(...shares);
	const clearanceMm = 1000 * Math.min(...fits.map((fit) => fit.clearanceM));
	const verdict = worst === 0 ? "meets" : worst <= SQUEEZE_SHARE ? "provisional" : "falls-short";
	const values = { percent: Number.isFinite(worst) ? 100 * worst : 100, clearanceMm, advisedMm: 1000 * ADVISED_M };
	return {
		id: "fit",
		verdict,
		value: values.percent,
		limit: 100 * SQUEEZE_SHARE,
		unit: "%",
		margin: (SQUEEZE_SHARE - values.percent / 100) / SQUEEZE_SHARE,
		why: sentence(
			verdict === "falls-short"
				? "packaging.fit-short"
				: verdict === "provisional"
					? "packaging.fit-pressed"
					: "packaging.fits",
			values,
		),
		mend: verdict === "falls-short" ? sentence("packaging.mend-fit") : null,
		sources: [GEOMETRY, ...(worst > 0 ? [SQUEEZE] : []), ADVICE],
	};
}

/** Loose room lets the item gather speed inside the box and strike once more. */
export function movementCheck(context: CheckContext): PackagingCheck {
	const slackM = Math.max(0, ...fitsOf(context).map((fit) => fit.slackM));
	const held = slackM <= ROUNDING_M ? "meets" : slackM <= PLAY_M ? "provisional" : "falls-short";
	const verdict = Number.isFinite(slackM) ? held : worse(held, "falls-short");
	return {
		id: "movement",
		verdict,
		value: 1000 * slackM,
		limit: 1000 * PLAY_M,
		unit: "mm",
		margin: (PLAY_M - slackM) / PLAY_M,
		why: sentence(verdict === "falls-short" ? "packaging.moves" : "packaging.still", {
			slackMm: 1000 * slackM,
			playMm: 1000 * PLAY_M,
		}),
		mend: verdict === "falls-short" ? sentence("packaging.mend-movement") : null,
		sources: [ADVICE, PLAY],
	};
}
