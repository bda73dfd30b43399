/**
 * The sealed form of a packaging assessment, `handover-risk/assessment/1`: the pack as shipped as it was entered, and
 * what was computed from it at that time. A recomputation with newer data stands beside it, never in its place.
 *
 *   { "$format", "assessmentId", "catalogueVersion", "consignmentId", "item": as requested, "orderId", "pack": as
 *     requested, "result": { "status", "result" or null, "reason"?, "cautions": [ { "sentence", "values" } ],
 *     "validity" }, "route": as requested, "sources": [ { "id", "document", "locator", "standing" } ] }
 *
 * Plain inside: numbers with units in their names, codes, ids of foams and tables; sentences stand by their key with
 * the values that they name. Committed: what was typed as free text (`closedHow`, the edition of a bag's test).
 */
import type { JsonValue } from "./canonical.ts";
import type { Committer } from "./commitment.ts";

export const ASSESSMENT_FORMAT = "handover-risk/assessment/1";

/** Members that hold what a person typed, wherever they stand in the pack. */
const TYPED_MEMBERS: ReadonlySet<string> = new Set(["closedHow", "edition"]);

export interface AssessmentFacts {
	readonly assessmentId: string;
	readonly orderId: string;
	readonly consignmentId: string;
	/** Of the catalogue of foams, drop tables and checks that was in force. */
	readonly catalogueVersion: string;
	readonly item: unknown;
	readonly pack: unknown;
	readonly route: unknown;
	/** The calculation's answer, sentences not yet in words. */
	readonly result: unknown;
	readonly sources: unknown;
}

/** Builds the statement; every typed text goes through `committer`. */
export function assessmentStatement(facts: AssessmentFacts, committer: Committer): JsonValue {
	return committed({ $format: ASSESSMENT_FORMAT, ...facts }, committer);
}

function committed(value: unknown, committer: Committer): JsonValue {
	if (Array.isArray(value)) return value.map((entry) => committed(entry, committer));
	if (value === null || typeof value !== "object") return value as JsonValue;
	return Object.fromEntries(
		Object.entries(value)
			.filter(([, entry]) => entry !== undefined)
			.map(([name, entry]): [string, JsonValue] => [
				name,
				TYPED_MEMBERS.has(name) && typeof entry === "string"
					? { commitment: committer.commit(entry).commitment }
					: committed(entry, committer),
			]),
	);
}
