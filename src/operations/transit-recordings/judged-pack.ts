/** What the newest sealed pack of a leg was judged by, as it was sealed. */
import type { CheckVerdict } from "../../calculations/cushioning/cushion.ts";
import type { JudgedPack } from "../../calculations/shock/recording/recorded-shock.ts";
import type { AssessmentView } from "../../contract/packaging.ts";

/** Null where no pack was sealed, or it could not be judged. */
export function judgedPackOf(pack: AssessmentView | null): (JudgedPack & { readonly verdict: CheckVerdict }) | null {
	const judged = pack?.statement.result as
		| {
				result: {
					verdict: CheckVerdict;
					protectedDropHeightM: number | null;
					fragility: { limitGn: number };
					checks: { id: string; limit: number | null }[];
				} | null;
		  }
		| undefined;
	const result = judged?.result ?? null;
	if (result === null) return null;
	return {
		verdict: result.verdict,
		protectedDropHeightM: result.protectedDropHeightM,
		limitGn: result.fragility.limitGn,
		designDropHeightM: result.checks.find(({ id }) => id === "drop-height")?.limit ?? null,
	};
}
