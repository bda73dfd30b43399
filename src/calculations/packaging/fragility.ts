/** The shock that the item withstands: by which basis, and what the other bases would give. */
import { cite, type Source } from "../sources.ts";
import { boardStrength } from "../strength/board-strength.ts";
import type { FragilityBasis, PackagingInput, PackedItem } from "./types.ts";

/** Design fragility is this share of a measured one. Source: published, a paper on flexible polyurethane cushions (opening read). */
const DESIGN_SHARE = 0.8;
/** Where nothing is known of the board. Source: our choice, the careful end of 30 to 50 gₙ for unknown cards. */
const DEFAULT_FRAGILITY_GN = 30;
const FRAGILITY_SHARE = cite("design-fragility-paper", "design fragility 80 % of the measured", "published");
const FRAGILITY_DEFAULT = cite("our-choice", "30 gₙ for a board of which nothing is known", "our-choice");

export interface FaceLimit {
	readonly limitGn: number;
	readonly basis: FragilityBasis;
	readonly source: Source;
	/** Best verdict that a limit on this basis carries. */
	readonly best: "meets" | "provisional";
}

/** The item's limit: 0.8 of a tested fragility, the level itself on other bases, which are levels passed. */
export function limitOf(item: PackedItem): FaceLimit {
	if (item.fragility === undefined)
		return { limitGn: DEFAULT_FRAGILITY_GN, basis: "our-choice", source: FRAGILITY_DEFAULT, best: "provisional" };
	const { gn, basis } = item.fragility;
	if (basis === "tested") return { limitGn: DESIGN_SHARE * gn, basis, source: FRAGILITY_SHARE, best: "meets" };
	const best = basis === "maker" ? "meets" : "provisional";
	return { limitGn: gn, basis, source: cite("user", `fragility, basis ${basis}`, "user"), best };
}

/** Limits that the other bases would set: strength of the board where it is described, class where it has a figure, our choice. */
export function otherLimits({ item, classLevel }: PackagingInput): FaceLimit[] {
	const chosen = limitOf(item).basis;
	const strength = item.board === undefined ? null : boardStrength(item.board);
	const allowable = strength?.result?.allowableShockGn ?? null;
	const others: FaceLimit[] = [
		...(allowable === null || strength === null
			? []
			: [
					{
						limitGn: allowable,
						basis: "board-strength" as const,
						source: strength.sources[0] ?? FRAGILITY_DEFAULT,
						best: "provisional" as const,
					},
				]),
		...(classLevel === null
			? []
			: [{ limitGn: classLevel.gn, basis: "class" as const, source: classLevel.source, best: "provisional" as const }]),
		{ limitGn: DEFAULT_FRAGILITY_GN, basis: "our-choice", source: FRAGILITY_DEFAULT, best: "provisional" },
	];
	return others.filter((other) => other.basis !== chosen);
}
