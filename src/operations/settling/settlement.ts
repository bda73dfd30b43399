/** Steps of the parties towards a settlement, each sealed as it is taken; and reading what they come to. */
import type { Caller } from "../../access/caller.ts";
import { minorUnits, moneyOf } from "../../calculations/money.ts";
import type { SettlementInput, SettlementStepView, SettlementView } from "../../contract/settlement.ts";
import { orderById } from "../../database/orders.ts";
import { insertOpenings } from "../../database/records.ts";
import { sealedOfKind } from "../../database/sealed.ts";
import { insertSettlementStep, lockOrder } from "../../database/settling.ts";
import { fault, invalid } from "../../faults.ts";
import { canonicalBytes } from "../../records/canonical.ts";
import { makeCommitter } from "../../records/commitment.ts";
import { openStatement } from "../../records/open-statement.ts";
import type { SealedEntry } from "../../records/receipt.ts";
import { type SettlementState, settlementState, stepRefusal } from "../../records/settlement-state.ts";
import {
	type OpenedSettlementStep,
	type SettlementFacts,
	settlementStatement,
} from "../../records/settlement-statement.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustReadOrder } from "../may.ts";
import { sideOf } from "./side-of.ts";

/**
 * Seals a step for the caller's side.
 * @throws forbidden for a caller that speaks for no side; the refusals of `stepRefusal`
 */
export async function takeSettlementStep(
	deps: Deps,
	caller: Caller,
	orderId: string,
	input: SettlementInput,
	idempotencyKey: string | null,
): Promise<SettlementView> {
	mustReadOrder(caller, orderId);
	const order = await orderById(deps.database, orderId);
	if (order === null) throw fault("not-found");
	const partyId = sideOf(caller, order);
	await createOnce(deps, caller, idempotencyKey, { orderId, ...input }, async (transaction) => {
		await lockOrder(transaction, orderId);
		const entries = await sealedOfKind(transaction, orderId, "settlement-sealed");
		const proposalId = input.act === "proposes" ? null : input.proposalId;
		const proposal = entries.find(({ subject }) => subject === proposalId);
		const state = settlementState(entries.map(stepOf));
		if (proposalId !== null && !state.proposals.has(proposalId))
			throw invalid([{ path: "/proposalId", code: "unknown-id" }]);
		const refusal = stepRefusal(state, input.act, partyId, proposalId);
		if (refusal !== null) throw fault(refusal);
		const stepId = deps.newId("stl");
		const committer = makeCommitter(deps.randomBytes);
		const facts = factsOf(input, { stepId, orderId, partyId }, proposal);
		const statement = settlementStatement(facts, input.text, committer);
		await insertSettlementStep(transaction, { id: stepId, orderId });
		await insertOpenings(transaction, { subject: stepId, orderId }, committer.openings);
		await appendToLog(deps, transaction, {
			kind: "settlement-sealed",
			subject: stepId,
			byId: callerId(caller),
			statementBytes: canonicalBytes(statement),
		});
		return stepId;
	});
	return readSettlement(deps, caller, orderId);
}

/** The steps in the order of the log, and what they had come to when it was of a size. */
export async function readSettlement(
	deps: Deps,
	caller: Caller,
	orderId: string,
	size = Number.POSITIVE_INFINITY,
): Promise<SettlementView> {
	mustReadOrder(caller, orderId);
	if ((await orderById(deps.database, orderId)) === null) throw fault("not-found");
	const sealed = await sealedOfKind(deps.database, orderId, "settlement-sealed");
	const entries = sealed.filter(({ index }) => index < size);
	const state = settlementState(entries.map(stepOf));
	return {
		orderId,
		status: state.status,
		agreedId: state.agreedId,
		steps: entries.map((entry) => viewOf(entry, state)),
	};
}

function factsOf(
	input: SettlementInput,
	step: { readonly stepId: string; readonly orderId: string; readonly partyId: string },
	proposal: SealedEntry | undefined,
): SettlementFacts {
	if (input.act !== "proposes") {
		const { subject, statementSha256 } = proposal as SealedEntry;
		return { ...step, act: input.act, proposal: { stepId: subject, statementSha256 } };
	}
	const { act, outcome, itemNext, amounts = [] } = input;
	// Written as whole minor units give it, so that no digit beyond them is sealed.
	const whole = amounts.map(({ amount, currency, from, to }) => ({
		...moneyOf(minorUnits(amount), currency),
		from,
		to,
	}));
	return { ...step, act, outcome, itemNext, amounts: whole };
}

function stepOf(entry: SealedEntry): OpenedSettlementStep {
	return openStatement(entry.statementBytes, entry.openings) as unknown as OpenedSettlementStep;
}

function viewOf(entry: SealedEntry, state: SettlementState): SettlementStepView {
	const said = stepOf(entry);
	const isProposal = said.act === "proposes";
	return {
		id: entry.subject,
		partyId: said.partyId,
		act: said.act,
		outcome: isProposal ? said.outcome : null,
		amounts: isProposal ? said.amounts.map((amount) => ({ ...amount })) : [],
		itemNext: isProposal ? said.itemNext : null,
		state: isProposal ? (state.proposals.get(entry.subject)?.state ?? null) : null,
		proposalId: isProposal ? null : said.proposal.stepId,
		text: said.text ?? null,
		sealedAt: entry.time.toISOString(),
		sealedBy: entry.byId,
		index: entry.index,
		fingerprint: entry.statementSha256,
	};
}
