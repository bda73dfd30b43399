/** A leg's comparison as it stands now, with what its recordings say. */
import type { Caller } from "../../access/caller.ts";
import type { Deps } from "../deps.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { type ShockOnLeg, shockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import { readTransitRecordings } from "../transit-recordings/transit-recordings.ts";
import { type ChosenRecords, type ConsignmentComparison, compareConsignment } from "./compare-consignment.ts";

export interface ReadComparison {
	readonly found: ConsignmentComparison;
	/** Null where no recorder travelled. */
	readonly shock: ShockOnLeg | null;
}

/** @throws not-found; bad-input as `compareConsignment` */
export async function readComparison(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	chosen: ChosenRecords,
): Promise<ReadComparison> {
	const found = await compareConsignment(deps, caller, consignmentId, chosen);
	const recordings = await readTransitRecordings(deps, caller, consignmentId);
	if (recordings.length === 0) return { found, shock: null };
	const packs = await readAssessments(deps, caller, consignmentId);
	return { found, shock: shockOnLeg(found, recordings, packs.at(-1) ?? null) };
}
