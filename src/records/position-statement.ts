/**
 * The sealed form of what a party states, `handover-risk/position/1`:
 *
 *   { "$format", "answers"?: { "positionId", "stance", "statementSha256" }, "checkIds": [ … ], "consignmentId"?, "kind",
 *     "orderId", "partyId", "positionId", "recordIds": [ … ],
 *     "test"?: { "dates": [ "YYYY-MM-DD" … ], "doneBy", "id" }, "text": { "commitment" } }
 *
 * `kind` is one of POSITION_KINDS; `test` is there for `asks-for-test` and `offers-test` alone. `answers` names a position
 * of the other party and the hash of its exact sealed bytes, so that nobody can say later that another text was answered.
 * `partyId` is the party for whom it was stated; by whom and when stands in the entry. Lists stand as they were given.
 *
 * Plain inside: ids, codes, dates, hashes. Committed: the text as typed. A position has no number of its own: its place
 * among the order's positions in the log is its number.
 */
import type { DoneBy, PositionKind, PositionTest, Stance } from "../catalogue/codes.ts";
import type { JsonValue } from "./canonical.ts";
import type { Commitment, Committer } from "./commitment.ts";

export const POSITION_FORMAT = "handover-risk/position/1";

export interface PositionFacts {
	readonly positionId: string;
	readonly orderId: string;
	readonly partyId: string;
	readonly kind: PositionKind;
	readonly consignmentId?: string;
	readonly recordIds: readonly string[];
	readonly checkIds: readonly string[];
	readonly answers?: { readonly positionId: string; readonly stance: Stance; readonly statementSha256: string };
	readonly test?: { readonly id: PositionTest; readonly doneBy: DoneBy; readonly dates: readonly string[] };
}

export interface PositionStatement<Text> extends PositionFacts {
	readonly $format: typeof POSITION_FORMAT;
	readonly text: Text;
}
export type SealedPosition = PositionStatement<Commitment>;
/** The text is null once it was erased. */
export type OpenedPosition = PositionStatement<string | null>;

/** Builds the statement; the text goes through `committer`. */
export function positionStatement(facts: PositionFacts, text: string, committer: Committer): JsonValue {
	const statement: SealedPosition = { $format: POSITION_FORMAT, ...facts, text: committer.commit(text) };
	return statement as unknown as JsonValue;
}
