/** The check `bottoming`: whether a foam is driven beyond the energies that its data cover, on the side where it hardens. */
import { energyAtStrain, optimumOf } from "../cushioning/foam-model.ts";
import { energyRangeOf } from "../cushioning/foam-range.ts";
import { energyAtForceKJ, lockingStrain, type Pad, rowPeakKN } from "../cushioning/pad.ts";
import { sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import { dropSets, padsOf, type StackLayer, weightN } from "./face-stacks.ts";
import { FACES, type Face, type PackagingCheck } from "./types.ts";
import { atMost, unassessed, worse } from "./verdicts.ts";

/** Strain beyond which foam is densified, where a set names no range. Source: published, a note on foam regimes. */
const DENSIFIED_STRAIN = 0.65;
const REGIMES = cite("foam-regimes-note", "elastic to 5 %, mixed to 65 %, densified above", "published");
const RULE = cite(
	"our-derivation",
	"harder side of the optimum and beyond the highest tested energy: not supported by data",
	"our-choice",
);

interface Use {
	readonly face: Face;
	readonly layer: StackLayer;
	/** Energy density over the highest that the data cover. */
	readonly share: number;
	/** Beyond the optimum, where more energy means a steeper rise. */
	readonly hardening: boolean;
	readonly locked: boolean;
}

export function bottomingCheck({ input, designDropM, stacks }: CheckContext): PackagingCheck {
	const uses = FACES.flatMap((face) => dropSets(stacks[face]).flatMap((stack) => usesOf(face, stack)));
	const layers = FACES.flatMap((face) => stacks[face]);
	if (uses.length === 0 || layers.some((layer) => layer.foam === null))
		return unassessed("bottoming", sentence("packaging.bottoming-unknown"), sentence("packaging.mend-known-foam"), [
			RULE,
		]);
	const worst = uses.reduce((high, next) => (rank(next) > rank(high) ? next : high));
	const best = uses.reduce(
		(verdict, { layer }) => worse(verdict, layer.foam?.bestVerdict ?? "provisional"),
		"meets" as const as "meets" | "provisional" | "marginal" | "not-assessed" | "falls-short",
	);
	const held = worst.hardening ? atMost(worst.share, 1, best) : best;
	const verdict = worst.locked ? "falls-short" : held === "falls-short" ? "not-assessed" : held;
	const values = { face: worst.face, percent: 100 * Math.min(worst.share, 1e6), designM: designDropM };
	return {
		id: "bottoming",
		verdict,
		value: Math.min(worst.share, 1e6),
		limit: 1,
		unit: null,
		margin: 1 - Math.min(worst.share, 1e6),
		why: sentence(
			worst.locked
				? "packaging.bottoming-locked"
				: verdict === "not-assessed"
					? "packaging.bottoming-unsupported"
					: worst.hardening
						? "packaging.bottoming-holds"
						: "packaging.bottoming-soft",
			values,
		),
		mend: verdict === best ? null : sentence("packaging.mend-bottoming", { face: worst.face }),
		sources: [RULE, REGIMES, ...(worst.layer.foam?.sources ?? [])],
	};

	function usesOf(face: Face, stack: readonly StackLayer[]): Use[] {
		const pads = padsOf(stack);
		if (pads === null) return [];
		const weight = weightN(input.item);
		const energyKJ = (weight * designDropM) / 1000;
		const forceKN = rowPeakKN(pads, energyKJ);
		return stack.flatMap((layer, index): Use[] => {
			const pad = pads[index];
			if (layer.foam === null || pad === undefined) return [];
			const taken = pads.length === 1 ? energyKJ : energyAtForceKJ(pad, forceKN);
			return [useOf(face, layer, pad, taken / (pad.areaM2 * pad.thicknessM))];
		});
	}
}

/** Locked before hardening, hardening before the softer side, then by share. */
function rank({ locked, hardening, share }: Use): number {
	return (locked ? 2e9 : 0) + (hardening ? 1e9 : 0) + Math.min(share, 1e6);
}

function useOf(face: Face, layer: StackLayer, { model }: Pad, density: number): Use {
	const foam = layer.foam;
	const range = foam === null ? null : energyRangeOf(foam, model);
	const densified = Math.min(DENSIFIED_STRAIN, 0.99 * lockingStrain(model));
	const top = range === null ? energyAtStrain(model, densified) : range[1];
	const locking = Math.min(1, lockingStrain(model));
	return {
		face,
		layer,
		share: density / top,
		hardening: density > optimumOf(model).energyKJPerM3,
		locked: !(density < energyAtStrain(model, 0.999 * locking)),
	};
}
