import type { LegClaimView } from "../../contract/leg-claim.ts";

/** Periods whose dates somebody should keep: by both readings, until someone has said which of them it is. */
export function watchedPeriods({
	periods,
	otherReading,
	damageBasis,
}: Pick<LegClaimView, "periods" | "otherReading" | "damageBasis">): LegClaimView["periods"] {
	return damageBasis === "suggested" ? [...periods, ...(otherReading?.periods ?? [])] : periods;
}
