/** What an order waits for, and what it has come to, from what stands of it in plain. */
import type { LegMark, OrderMark, SealedMark, StepMark } from "../../database/order-marks.ts";
import { isWorseOnArrival } from "../../records/arrived-worse.ts";
import { settlementState } from "../../records/settlement-state.ts";

export interface OrderAttention {
	/** Records that are begun and not sealed. */
	readonly drafts: number;
	/** A leg was delivered, and no state after it is sealed. */
	readonly lacksArrival: boolean;
	/** A leg has left, and no state before it is sealed. */
	readonly lacksDeparture: boolean;
	/** The state of the last arrival, where it is worse than what left, or is not known to have been so before. */
	readonly arrivedWorse: { readonly state: string; readonly isReported: boolean } | null;
	/** A proposal waits for the other side. */
	readonly isProposed: boolean;
	/** The proposal that both sides assented to and that holds. */
	readonly settled: { readonly at: string; readonly outcome: string } | null;
}

/** What the marks of one order say; `sealed` and `steps` in the order of the log. */
export function orderAttention(
	order: OrderMark,
	legs: readonly LegMark[],
	sealed: readonly SealedMark[],
	steps: readonly StepMark[],
): OrderAttention {
	const at = (legId: string, stage: string) =>
		sealed.findLast((record) => record.consignmentId === legId && record.stage === stage);
	// Nothing is added to an order that was read in.
	const open = order.isReadIn ? [] : legs;
	return {
		drafts: order.isReadIn ? 0 : order.drafts,
		lacksArrival: open.some(({ id, wasDelivered }) => wasDelivered && at(id, "arrival") === undefined),
		lacksDeparture: open.some(({ id, wasDispatched }) => wasDispatched && at(id, "departure") === undefined),
		arrivedWorse: arrivedWorse(open, at),
		...cameTo(steps),
	};
}

/** Whether someone of the shop should look at it. An agreed settlement answers what arrived worse. */
export function needsAttention(found: OrderAttention): boolean {
	const { drafts, lacksArrival, lacksDeparture, arrivedWorse: worse, isProposed, settled } = found;
	return drafts > 0 || lacksArrival || lacksDeparture || isProposed || (worse !== null && settled === null);
}

function arrivedWorse(
	legs: readonly LegMark[],
	at: (legId: string, stage: string) => SealedMark | undefined,
): OrderAttention["arrivedWorse"] {
	const last = legs.findLast(({ id }) => at(id, "arrival") !== undefined);
	const arrived = last === undefined ? undefined : at(last.id, "arrival");
	if (last === undefined || arrived === undefined) return null;
	const isWorse = isWorseOnArrival(arrived.state, at(last.id, "departure")?.state, last.isToOwner);
	return isWorse ? { state: arrived.state, isReported: arrived.isReported } : null;
}

function cameTo(steps: readonly StepMark[]): Pick<OrderAttention, "isProposed" | "settled"> {
	const { agreedId, proposals } = settlementState(steps.map(({ facts }) => facts));
	const agreed = steps.find(({ facts }) => facts.stepId === agreedId)?.facts;
	const assent = steps.findLast(({ facts }) => facts.act === "assents");
	return {
		isProposed: [...proposals.values()].some(({ state }) => state === "open"),
		settled:
			agreed?.act === "proposes" && assent !== undefined
				? { at: assent.sealedAt.toISOString(), outcome: agreed.outcome }
				: null,
	};
}
