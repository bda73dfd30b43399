/** What the newest sealed pack of a leg was judged by, as it was sealed. */
import type { JudgedPack } from "../../calculations/shock/recording/recorded-shock.ts";
import type { AssessmentView } from "../../contract/packaging.ts";

/** Null where no pack was sealed, or it could not be judged. */
export function judgedPackOf(pack: AssessmentView | null): JudgedPack | null {
	const judged = pack?.statement.result as
		| {
				result: {
					protectedDropHeightM: number | null;
					fragility: { limitGn: number };
					checks: { id: string; limit: number | null }[];
				} | null;
		  }
		| undefined;
	const result = judged?.result ?? null;
	if (result === null) return null;
	return {
		protectedDropHeightM: result.protectedDropHeightM,
		limitGn: result.fragility.limitGn,
		designDropHeightM: result.checks.find(({ id }) => id === "drop-height")?.limit ?? null,
	};
}
