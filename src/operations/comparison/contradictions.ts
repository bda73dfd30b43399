/** Records that hold times or counters which can not be true together. A clock a little off is no contradiction. */
import type { SealedRecord } from "../records/record-views.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";

/** Clocks of people and machines differ; our choice. */
const CLOCKS_DIFFER_MINUTES = 60;

/** Ids of the records that hold a contradiction. */
export function contradictions(found: ConsignmentComparison): string[] {
	const { departure, arrival, comparison } = found;
	const fell = comparison.rows.some(({ comparison: { result } }) => result?.why.sentence === "comparison.counter-fell");
	const counting = fell && departure !== null && arrival !== null ? [departure.view.id, arrival.view.id] : [];
	return [...new Set([...timesAtOdds(found), ...counting])];
}

/** Ids of the records whose times cannot all be true, with each other or with what was noted of the leg. */
export function timesAtOdds({ departure, arrival, consignment }: ConsignmentComparison): string[] {
	const found = new Set<string>();
	for (const record of [departure, arrival]) if (record !== null && isTwisted(record)) found.add(record.view.id);
	const { dispatchedAt, deliveredAt } = consignment.facts;
	if (
		departure !== null &&
		arrival !== null &&
		isLater(departure.statement.observed.at, arrival.statement.observed.at)
	) {
		found.add(departure.view.id).add(arrival.view.id);
	}
	if (arrival !== null && isLater(dispatchedAt, arrival.statement.observed.at)) found.add(arrival.view.id);
	const told = arrival?.statement.parcel?.delivered?.at;
	if (arrival !== null && isLater(dispatchedAt, deliveredAt ?? told)) found.add(arrival.view.id);
	if (arrival !== null && isLater(deliveredAt, arrival.statement.observed.at)) found.add(arrival.view.id);
	if (departure !== null && arrival !== null && isLater(departure.statement.observed.at, told)) {
		found.add(departure.view.id).add(arrival.view.id);
	}
	return [...found];
}

/** A record's own times: delivered, in hand and seen come in this order. */
function isTwisted({ statement }: SealedRecord): boolean {
	const { parcel, observed } = statement;
	const times = [parcel?.delivered?.at, parcel?.inHand?.at, observed.at];
	return isLater(times[0], times[1]) || isLater(times[1], times[2]) || isLater(times[0], times[2]);
}

function isLater(one: string | undefined, other: string | undefined): boolean {
	if (one === undefined || other === undefined) return false;
	return Date.parse(one) - Date.parse(other) > CLOCKS_DIFFER_MINUTES * 60_000;
}
