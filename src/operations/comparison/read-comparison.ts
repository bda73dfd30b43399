/** A leg's comparison as it stands now, with what its recordings say. */
import type { Caller } from "../../access/caller.ts";
import { noticesOf } from "../../database/notices.ts";
import type { Deps } from "../deps.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { readSettlement } from "../settling/settlement.ts";
import { type ShockOnLeg, shockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import { readTransitRecordings } from "../transit-recordings/transit-recordings.ts";
import { type ChosenRecords, type ConsignmentComparison, compareConsignment } from "./compare-consignment.ts";
import type { Handled } from "./what-next.ts";

export interface ReadComparison {
	readonly found: ConsignmentComparison;
	/** Null where no recorder travelled. */
	readonly shock: ShockOnLeg | null;
	readonly handled: Handled;
}

/** @throws not-found; bad-input as `compareConsignment` */
export async function readComparison(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	chosen: ChosenRecords,
): Promise<ReadComparison> {
	const found = await compareConsignment(deps, caller, consignmentId, chosen);
	const [recordings, notices, settlement] = await Promise.all([
		readTransitRecordings(deps, caller, consignmentId),
		// Whoever reads the order may know that the carrier was told; the notice itself is for its two sides.
		noticesOf(deps.database, consignmentId),
		readSettlement(deps, caller, found.order.id),
	]);
	const handled = { carrierTold: notices.length > 0, settled: settlement.status === "agreed" };
	if (recordings.length === 0) return { found, shock: null, handled };
	const packs = await readAssessments(deps, caller, consignmentId);
	return { found, shock: shockOnLeg(found, recordings, packs.at(-1) ?? null), handled };
}
