/**
 * What the steps of a settlement come to, and who may do what next. A proposal is open until the other party assents or
 * declines, or its maker retracts it; an assent ends the other open proposals. A settlement can be reopened by either party:
 * the proposal then no longer holds, and new ones can be made.
 */
import type { SettlementAct } from "../catalogue/codes.ts";
import type { SettlementFacts } from "./settlement-statement.ts";

export type ProposalState = "open" | "agreed" | "declined" | "retracted" | "lapsed" | "reopened";

export interface SettlementState {
	readonly status: "none" | "proposed" | "agreed" | "reopened";
	/** The proposal that both parties assented to and that holds. */
	readonly agreedId: string | null;
	readonly proposals: ReadonlyMap<string, { readonly partyId: string; readonly state: ProposalState }>;
}

/** From the steps in log order. */
export function settlementState(steps: readonly SettlementFacts[]): SettlementState {
	const proposals = new Map<string, { partyId: string; state: ProposalState }>();
	let agreedId: string | null = null;
	let wasReopened = false;
	for (const step of steps) {
		if (step.act === "proposes") {
			proposals.set(step.stepId, { partyId: step.partyId, state: "open" });
			continue;
		}
		const proposal = proposals.get(step.proposal.stepId);
		if (proposal === undefined) continue;
		proposal.state = AFTER[step.act];
		if (step.act === "assents") {
			agreedId = step.proposal.stepId;
			for (const other of proposals.values()) if (other.state === "open") other.state = "lapsed";
		}
		if (step.act === "reopens") {
			agreedId = null;
			wasReopened = true;
		}
	}
	const isOpen = [...proposals.values()].some(({ state }) => state === "open");
	return {
		status: agreedId !== null ? "agreed" : isOpen ? "proposed" : wasReopened ? "reopened" : "none",
		agreedId,
		proposals,
	};
}

const AFTER = {
	assents: "agreed",
	declines: "declined",
	retracts: "retracted",
	reopens: "reopened",
} as const satisfies Record<Exclude<SettlementAct, "proposes">, ProposalState>;

/** Why a party cannot take a step now; null where it can. */
export type StepRefusal = "already-settled" | "not-settled" | "proposal-closed" | "own-proposal" | "others-proposal";

export function stepRefusal(
	state: SettlementState,
	act: SettlementAct,
	partyId: string,
	proposalId: string | null,
): StepRefusal | null {
	if (act === "proposes") return state.agreedId === null ? null : "already-settled";
	if (act === "reopens") return state.agreedId !== null && state.agreedId === proposalId ? null : "not-settled";
	const proposal = state.proposals.get(proposalId ?? "");
	if (proposal === undefined || proposal.state !== "open") return "proposal-closed";
	const isOwn = proposal.partyId === partyId;
	if (act === "retracts") return isOwn ? null : "others-proposal";
	return isOwn ? "own-proposal" : null;
}
