/**
 * The custody line: an item's sealed records in observed order, the spans between them, and for each check the spans
 * in which a change must lie: from the last record where it was good to the first where it was not.
 */
import type { CustodyChange, CustodyLeg, CustodyLine, CustodyRecord, CustodySpan, Goodness } from "./types.ts";

/** Records may come in any order; those of one moment keep the order given. Superseded records are left out by the caller. */
export function custodyLine(records: readonly CustodyRecord[], legs: readonly CustodyLeg[]): CustodyLine {
	const ordered = [...records].sort((one, other) => moment(one.observedAt) - moment(other.observedAt));
	const spans = ordered.flatMap((record, index) => {
		const next = ordered[index + 1];
		return next === undefined ? [] : spansBetween(record, next, legs);
	});
	const checks = new Set(ordered.flatMap((record) => Object.keys(record.goodness)));
	const changes = [...checks].flatMap((check) => changesOf(check, ordered, spans));
	return { recordIds: ordered.map((record) => record.recordId), spans, changes };
}

/** The spans between two neighbouring records. */
function spansBetween(before: CustodyRecord, after: CustodyRecord, legs: readonly CustodyLeg[]): CustodySpan[] {
	const between = { afterRecordId: before.recordId, beforeRecordId: after.recordId };
	const whole = { startsAt: before.observedAt, endsAt: after.observedAt, ...between };
	if (before.holderId === after.holderId) {
		return [{ kind: "stay", holderId: before.holderId, consignmentId: null, ...whole }];
	}
	const consignmentId = legBetween(before, after);
	if (consignmentId === null) return [{ kind: "unrecorded", holderId: null, consignmentId, ...whole }];
	const leg = legs.find((known) => known.consignmentId === consignmentId) ?? { consignmentId };
	return journey(before, after, leg).map((part) => ({ ...part, ...between }));
}

/** The leg on which the item changed hands: the one that arrived, or the one that left. */
function legBetween(before: CustodyRecord, after: CustodyRecord): string | null {
	if (after.stage === "arrival") return after.consignmentId;
	return before.stage === "departure" ? before.consignmentId : null;
}

function isHandOver(before: CustodyRecord, after: CustodyRecord): boolean {
	const sameLeg = before.consignmentId !== null && before.consignmentId === after.consignmentId;
	return sameLeg && before.stage === "departure" && after.stage === "arrival";
}

type Part = Omit<CustodySpan, "afterRecordId" | "beforeRecordId">;

/**
 * With the sender until dispatched, on the way until delivered, nobody's until in hand, with the receiver until tested.
 * Times that are not known, or do not lie in this order, leave the parts around them together as transit.
 */
function journey(before: CustodyRecord, after: CustodyRecord, leg: CustodyLeg): Part[] {
	const { consignmentId } = leg;
	const dispatched = leg.dispatchedAt ?? before.observedAt;
	const inHand = leg.inHandAt ?? leg.deliveredAt ?? after.observedAt;
	const delivered = leg.deliveredAt ?? inHand;
	const times = [before.observedAt, dispatched, delivered, inHand, after.observedAt];
	const inOrder = times.every((time, index) => index === 0 || moment(times[index - 1] ?? "") <= moment(time));
	if (!inOrder) {
		return [{ kind: "transit", holderId: null, consignmentId, startsAt: before.observedAt, endsAt: after.observedAt }];
	}
	const parts: Part[] = [
		{ kind: "stay", holderId: before.holderId, consignmentId, startsAt: before.observedAt, endsAt: dispatched },
		{ kind: "transit", holderId: null, consignmentId, startsAt: dispatched, endsAt: delivered },
		{ kind: "nobody", holderId: null, consignmentId, startsAt: delivered, endsAt: inHand },
		{ kind: "stay", holderId: after.holderId, consignmentId, startsAt: inHand, endsAt: after.observedAt },
	];
	return parts.filter((part) => part.kind === "transit" || moment(part.startsAt) < moment(part.endsAt));
}

/** The changes of one check along the line. Records that do not decide it are passed over and widen the place. */
function changesOf(check: string, ordered: readonly CustodyRecord[], spans: readonly CustodySpan[]): CustodyChange[] {
	const changes: CustodyChange[] = [];
	let last: { index: number; record: CustodyRecord; good: boolean } | null = null;
	ordered.forEach((record, index) => {
		const good = decided(record.goodness[check]);
		if (good === null) return;
		if (last === null && !good) {
			const place = { afterRecordId: null, beforeRecordId: record.recordId, spans: [], widenedBy: [] };
			changes.push({ check, kind: "first-seen", ...place });
		}
		if (last !== null && last.good !== good) {
			changes.push(changeBetween(check, ordered.slice(last.index, index + 1), good, spans));
		}
		last = { index, record, good };
	});
	return changes;
}

/** The change from the first to the last of these neighbouring records. */
function changeBetween(
	check: string,
	records: readonly CustodyRecord[],
	becameGood: boolean,
	spans: readonly CustodySpan[],
): CustodyChange {
	const ids = records.map((record) => record.recordId);
	const inside = spans.flatMap((span, index) =>
		ids.slice(0, -1).includes(span.afterRecordId) && ids.slice(1).includes(span.beforeRecordId) ? [index] : [],
	);
	const [first, last] = [records[0], records.at(-1)];
	if (first === undefined || last === undefined) throw new RangeError("a change lies between two records");
	// Between one leg's two ends nobody is recorded to have worked on the item.
	const mended = records.length === 2 && isHandOver(first, last) ? "conflict" : "mended";
	return {
		check,
		kind: becameGood ? mended : "lost",
		afterRecordId: first.recordId,
		beforeRecordId: last.recordId,
		spans: inside,
		widenedBy: ids.slice(1, -1),
	};
}

function decided(goodness: Goodness | undefined): boolean | null {
	if (goodness === "good") return true;
	return goodness === "not-good" ? false : null;
}

function moment(time: string): number {
	return Date.parse(time);
}
