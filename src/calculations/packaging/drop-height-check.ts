/** The check `drop-height`. */
import type { CheckVerdict } from "../cushioning/cushion.ts";
import { sentence } from "../judged.ts";
import type { CheckContext } from "./check-context.ts";
import type { PackagingCheck } from "./types.ts";
import { worse } from "./verdicts.ts";

/** The drop that the pack protects to against the design drop: at least. */
export function dropHeightCheck({ input, designDropM: design, limit, found, faces }: CheckContext): PackagingCheck {
	const sources = [input.route.dropTable.source, limit.source];
	const base = { id: "drop-height" as const, limit: design, unit: "m", sources };
	if (found === null) {
		const short = faces.some(({ check }) => check.verdict === "falls-short");
		return {
			...base,
			verdict: short ? "falls-short" : "not-assessed",
			value: null,
			margin: null,
			why: sentence("packaging.no-protected-drop"),
			mend: sentence("packaging.mend-cushion"),
		};
	}
	const { dropHeightM, bandM, face, complete } = found;
	const values = { dropHeightM, designM: design, lowM: bandM[0], highM: bandM[1], face };
	const result = (verdict: CheckVerdict, key: string, mend: boolean): PackagingCheck => ({
		...base,
		verdict,
		value: dropHeightM,
		margin: (dropHeightM - design) / design,
		why: sentence(key, values),
		mend: mend ? sentence("packaging.mend-worst-face", { face }) : null,
	});
	if (!(dropHeightM >= design)) {
		if (!complete) return result("falls-short", "packaging.bound-short", true);
		const may = bandM[1] >= design;
		return result("falls-short", may ? "packaging.drop-short-within-band" : "packaging.drop-short", true);
	}
	// What the faces' own checks cannot claim at the design drop, the drop that they protect to cannot claim either.
	const carried = faces.map(({ check }) => check.verdict).reduce(worse);
	if (carried === "not-assessed") return result("not-assessed", "packaging.drop-outside", true);
	if (!(bandM[0] >= design)) return result("marginal", "packaging.drop-marginal", true);
	return result(worse(carried, "meets"), "packaging.drop-holds", false);
}
