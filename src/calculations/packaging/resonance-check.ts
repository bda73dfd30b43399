/** The check `resonance`: the cushion's frequency against the board's, and what a published profile makes of both. */
import { sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite } from "../sources.ts";
import { BOARD_RULE, boardStrength } from "../strength/board-strength.ts";
import { weightedMeanSquareGn2 } from "../vibration/random-profile.ts";
import { CUSHION_DAMPING_RATIO, transmissibilityAt } from "../vibration/vibration.ts";
import type { CheckContext } from "./check-context.ts";
import type { PackagingCheck } from "./types.ts";
import { atLeast, unassessed } from "./verdicts.ts";

/** Keep board and cushion apart by this ratio either way. Source: published, the book's octave rule, figure 11.21. */
const OCTAVE = 2;
const RULE = cite(
	"vibration-analysis-book",
	"octave rule, figure 11.21: ratios from 0.5 to 2 are dangerous",
	"published",
);
const FREQUENCY = cite(
	"our-derivation",
	"the cushion as a linear spring with the same peak, f = G/(2π)·√(g/(2h)); static stress alone does not fix it",
	"our-choice",
);

export function resonanceCheck({ input, designDropM, faces }: CheckContext): PackagingCheck {
	const { item, route } = input;
	const boardHz = item.board === undefined ? null : (boardStrength(item.board).result?.naturalFrequencyHz ?? null);
	if (boardHz === null)
		return unassessed(
			"resonance",
			sentence("packaging.no-board-frequency"),
			sentence("packaging.mend-board-frequency"),
		);
	const cushions = faces.flatMap(({ face, peakGn }) => {
		if (peakGn === null) return [];
		const hz = (peakGn / (2 * Math.PI)) * Math.sqrt(STANDARD_GRAVITY_M_PER_S2 / (2 * designDropM));
		return [{ face, hz, ratio: Math.max(boardHz / hz, hz / boardHz) }];
	});
	const [first, ...others] = cushions;
	if (first === undefined || cushions.length < faces.length)
		return unassessed("resonance", sentence("packaging.no-cushion-frequency"), sentence("packaging.mend-known-foam"));
	const worst = others.reduce((least, next) => (next.ratio < least.ratio ? next : least), first);
	const q = Math.sqrt(boardHz);
	const responseGnRms = Math.sqrt(
		weightedMeanSquareGn2(
			route.vibrationProfile.points,
			(at) =>
				(transmissibilityAt(at / worst.hz, CUSHION_DAMPING_RATIO) * transmissibilityAt(at / boardHz, 1 / (2 * q))) ** 2,
		),
	);
	const verdict = atLeast(worst.ratio, OCTAVE, "provisional");
	return {
		id: "resonance",
		verdict,
		value: worst.ratio,
		limit: OCTAVE,
		unit: null,
		margin: (worst.ratio - OCTAVE) / OCTAVE,
		why: sentence(verdict === "falls-short" ? "packaging.resonates" : "packaging.apart", {
			face: worst.face,
			cushionHz: worst.hz,
			boardHz,
			responseGnRms,
		}),
		mend: verdict === "provisional" ? null : sentence("packaging.mend-resonance"),
		sources: [RULE, FREQUENCY, BOARD_RULE, route.vibrationProfile.source],
	};
}
