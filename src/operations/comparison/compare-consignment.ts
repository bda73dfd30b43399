/** Compares the two ends of a leg, and places every change of the order on the custody line. Nothing of it is stored. */
import type { Caller } from "../../access/caller.ts";
import { custodyLine } from "../../calculations/comparison/custody-line.ts";
import { compareStates } from "../../calculations/comparison/state-comparison.ts";
import type { CustodyLine, StateComparison } from "../../calculations/comparison/types.ts";
import type { Judged } from "../../calculations/judged.ts";
import { judgeLink, type LinkJudgement } from "../../calculations/link/link-judgement.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import { LANE_GBYTE_PER_S } from "../../catalogue/link-generations.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import { consignmentById } from "../../database/orders.ts";
import { fault, invalid } from "../../faults.ts";
import type { LinkObservation } from "../../records/record-content.ts";
import type { Deps } from "../deps.ts";
import { mustReadOrder } from "../may.ts";
import { orderViewById } from "../orders/order-view.ts";
import { type SealedRecord, sealedRecordsOfOrder } from "../records/record-views.ts";
import { comparedState, custodyRecord } from "./compared-state.ts";

/** The link's judgement at each end; null where nothing of it was recorded. */
export interface LinkAtBothEnds {
	readonly departure: Judged<LinkJudgement> | null;
	readonly arrival: Judged<LinkJudgement> | null;
}

export interface ConsignmentComparison {
	readonly order: OrderView;
	readonly consignment: ConsignmentView;
	/** The records compared: the newest sealed one of each end that no later one amends. */
	readonly departure: SealedRecord | null;
	readonly arrival: SealedRecord | null;
	readonly comparison: StateComparison;
	readonly link: LinkAtBothEnds;
	/** The whole order's line, all records that no later one amends, bench records included. */
	readonly line: CustodyLine;
	readonly records: readonly SealedRecord[];
}

/** Two records of the order to compare in place of the leg's own two ends. */
export interface ChosenRecords {
	readonly from?: string | undefined;
	readonly to?: string | undefined;
}

/** @throws not-found; bad-input where a chosen record is no sealed record of the order, or `to` was seen before `from` */
export async function compareConsignment(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	chosen: ChosenRecords = {},
): Promise<ConsignmentComparison> {
	const row = await consignmentById(deps.database, consignmentId);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	const [order, sealed] = await Promise.all([
		orderViewById(deps.database, row.order_id),
		sealedRecordsOfOrder(deps.database, row.order_id),
	]);
	const consignment = order.consignments.find((candidate) => candidate.id === consignmentId);
	if (consignment === undefined) throw new Error(`order ${order.id} lacks its leg ${consignmentId}`);
	return compareLeg(order, consignment, sealed, chosen);
}

/** Compares the ends of a leg from the order's sealed records. @throws as above */
export function compareLeg(
	order: OrderView,
	consignment: ConsignmentView,
	sealed: readonly SealedRecord[],
	chosen: ChosenRecords = {},
): ConsignmentComparison {
	const records = sealed.filter((record) => record.view.supersededBy === null);
	const departure = chosenRecord(sealed, chosen.from, "/from") ?? endOf(records, consignment.id, "departure");
	const arrival = chosenRecord(sealed, chosen.to, "/to") ?? endOf(records, consignment.id, "arrival");
	if (isChosen(chosen) && departure !== null && arrival !== null && !isBefore(departure, arrival)) {
		throw invalid([{ path: "/to", code: "before-from" }]);
	}
	return {
		order,
		consignment,
		departure,
		arrival,
		comparison: compareStates({
			departure: departure && comparedState(departure.statement),
			arrival: arrival && comparedState(arrival.statement),
			checks: checksOf(order.item.class),
			handOver: isHandOver(departure, arrival),
		}),
		link: { departure: linkAt(departure), arrival: linkAt(arrival) },
		line: lineOf(order, records),
		records,
	};
}

function isChosen({ from, to }: ChosenRecords): boolean {
	return from !== undefined || to !== undefined;
}

/** Null where none was chosen. Records that were amended can be chosen as well. */
function chosenRecord(
	records: readonly SealedRecord[],
	recordId: string | undefined,
	path: string,
): SealedRecord | null {
	if (recordId === undefined) return null;
	const record = records.find(({ view }) => view.id === recordId);
	if (record === undefined) throw invalid([{ path, code: "no-such-record" }]);
	return record;
}

function isBefore(one: SealedRecord, other: SealedRecord): boolean {
	const order = one.statement.observed.at.localeCompare(other.statement.observed.at);
	return order < 0 || (order === 0 && one.entry.index < other.entry.index);
}

/** Whether the two are the ends of one leg, between which nobody is recorded to have worked on the item. */
function isHandOver(departure: SealedRecord | null, arrival: SealedRecord | null): boolean {
	if (departure === null || arrival === null) return true;
	const oneLeg = departure.view.consignmentId !== null && departure.view.consignmentId === arrival.view.consignmentId;
	return oneLeg && departure.view.stage === "departure" && arrival.view.stage === "arrival";
}

/** The custody line of an order from its sealed records. */
export function lineOf(order: OrderView, records: readonly SealedRecord[]): CustodyLine {
	return custodyLine(
		records.map((record) => custodyRecord(record.statement)),
		order.consignments.map((leg) => {
			const facts = legFacts(leg, records);
			return { consignmentId: leg.id, ...facts };
		}),
	);
}

/** Times of a leg: as noted by the shop, else as the consignee's record says. */
function legFacts(leg: ConsignmentView, records: readonly SealedRecord[]) {
	const parcel = records.find(({ view }) => view.consignmentId === leg.id && view.stage === "arrival")?.statement
		.parcel;
	return {
		dispatchedAt: leg.facts.dispatchedAt,
		deliveredAt: leg.facts.deliveredAt ?? parcel?.delivered?.at,
		inHandAt: leg.facts.inHandAt ?? parcel?.inHand?.at,
	};
}

/** The record that stands for an end. What the holder recorded goes before what the other side was told. */
function endOf(
	records: readonly SealedRecord[],
	consignmentId: string,
	stage: "departure" | "arrival",
): SealedRecord | null {
	const here = records.filter(({ view }) => view.consignmentId === consignmentId && view.stage === stage);
	const own = here.filter(({ view }) => view.provenance === "recorded-by-holder");
	// Departure: the last state before it left. Arrival: the first state after it came.
	const candidates = own.length > 0 ? own : here;
	return (stage === "departure" ? candidates.at(-1) : candidates[0]) ?? null;
}

function linkAt(record: SealedRecord | null): Judged<LinkJudgement> | null {
	const link: LinkObservation | undefined = record?.statement.link;
	return link === undefined ? null : judgeLink(link, LANE_GBYTE_PER_S);
}
