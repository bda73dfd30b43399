/**
 * The sealed form of a step towards a settlement, `handover-risk/settlement/1`. A proposal:
 *
 *   { "$format", "act": "proposes", "amounts": [ { "amount", "currency", "from", "to" } ], "itemNext", "orderId", "outcome",
 *     "partyId", "stepId", "text"?: { "commitment" } }
 *
 * and what follows it, `act` being `assents`, `declines`, `retracts` or `reopens`:
 *
 *   { "$format", "act", "orderId", "partyId", "proposal": { "statementSha256", "stepId" }, "stepId", "text"?: … }
 *
 * A proposal holds the assent of the party that makes it; the other party's assent names the proposal with the hash of its
 * exact sealed bytes. `amount` is in the currency's major unit, with at most two decimals. Plain inside: ids, codes, numbers,
 * hashes. Committed: the text as typed.
 */
import type { ItemNext, Payer, SettlementAct, SettlementOutcome } from "../catalogue/codes.ts";
import type { JsonValue } from "./canonical.ts";
import type { Commitment, Committer } from "./commitment.ts";

export const SETTLEMENT_FORMAT = "handover-risk/settlement/1";

export interface SettlementAmount {
	readonly amount: number;
	readonly currency: string;
	readonly from: Payer;
	readonly to: Payer;
}

interface Step {
	readonly stepId: string;
	readonly orderId: string;
	readonly partyId: string;
}
export interface ProposalFacts extends Step {
	readonly act: "proposes";
	readonly outcome: SettlementOutcome;
	readonly amounts: readonly SettlementAmount[];
	readonly itemNext: ItemNext;
}
export interface AnswerFacts extends Step {
	readonly act: Exclude<SettlementAct, "proposes">;
	readonly proposal: { readonly stepId: string; readonly statementSha256: string };
}
export type SettlementFacts = ProposalFacts | AnswerFacts;

export type SettlementStatement<Text> = SettlementFacts & {
	readonly $format: typeof SETTLEMENT_FORMAT;
	readonly text?: Text;
};
export type SealedSettlementStep = SettlementStatement<Commitment>;
/** A text is null once it was erased. */
export type OpenedSettlementStep = SettlementStatement<string | null>;

/** Builds the statement; a text goes through `committer`. */
export function settlementStatement(facts: SettlementFacts, text: string | undefined, committer: Committer): JsonValue {
	const statement: SealedSettlementStep = {
		$format: SETTLEMENT_FORMAT,
		...facts,
		...(text === undefined ? {} : { text: committer.commit(text) }),
	};
	return statement as unknown as JsonValue;
}
