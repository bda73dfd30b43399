/** Reads what a report tells of an order as it stood at a size of the log. */
import type { Caller } from "../../access/caller.ts";
import { rootOf } from "../../records/log/checkpoint.ts";
import { speakerOf } from "../../texts/speaker.ts";
import { legClaim } from "../claims/leg-claim.ts";
import { readNotices } from "../claims/notices.ts";
import { compareLeg, lineOf } from "../comparison/compare-consignment.ts";
import { comparisonViewOf } from "../comparison/comparison-view.ts";
import type { Deps } from "../deps.ts";
import { orderLog } from "../log/order-log.ts";
import { mustBeShop, mustReadOrder } from "../may.ts";
import { readOrder } from "../orders/read-orders.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { settledHandOuts } from "../pictures/hand-out.ts";
import { type SealedRecord, sealedRecordsOfOrder } from "../records/record-views.ts";
import { readPositions } from "../settling/positions.ts";
import { readSettlement } from "../settling/settlement.ts";
import { recordingsOfLeg } from "../transit-recordings/recordings-of-leg.ts";
import { shockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import { carrierLeg } from "./carrier-leg.ts";
import { numberedExhibits } from "./numbered-exhibits.ts";
import type { AskedReport, ReportFacts } from "./report-facts.ts";

/**
 * @param leg of the carrier's edition, which tells of one
 * @throws not-found; forbidden for the carrier's edition through a link; not-sealed before anything is logged; bad-input where `at` is beyond the log, or there is no such leg
 */
export async function readReportFacts(
	deps: Deps,
	caller: Caller,
	orderId: string,
	{ edition, at, leg, language }: AskedReport,
): Promise<ReportFacts> {
	const speaker = speakerOf(language);
	mustReadOrder(caller, orderId);
	// Who notifies a carrier, and with what, is the affair of whoever made the contract: the shop hands it on.
	if (edition === "carrier") mustBeShop(caller);
	const order = await readOrder(deps, caller, orderId);
	const { entries, checkpoint, ...log } = await orderLog(deps.database, orderId, at);
	const records = standingAt(await sealedRecordsOfOrder(deps.database, orderId), checkpoint.size);
	const line = lineOf(
		order,
		records.filter(({ view }) => view.supersededBy === null),
	);
	const [positions, settlement] = await Promise.all([
		readPositions(deps, caller, orderId, checkpoint.size),
		readSettlement(deps, caller, orderId, checkpoint.size),
	]);
	const legs = await Promise.all(
		order.consignments.map(async (one) => {
			const found = compareLeg(order, one, records);
			const [assessments, claim, notices] = await Promise.all([
				readAssessments(deps, caller, one.id),
				legClaim(deps, order, one, records, speaker),
				readNotices(deps, caller, one.id),
			]);
			const packs = assessments.filter(({ index }) => index < checkpoint.size);
			const recordings = await recordingsOfLeg(deps.database, one.id, line.spans, packs.at(-1) ?? null, speaker);
			const views = recordings.map(({ view }) => view);
			const shock = shockOnLeg(found, views, packs.at(-1) ?? null);
			const view = comparisonViewOf(found, shock, { present: [], absent: [] }, speaker);
			return { leg: one, found, view, claim, notices, packs, recordings, shock };
		}),
	);
	const exhibits = numberedExhibits(records);
	const sha256s = exhibits.map(({ sha256 }) => sha256);
	const report: ReportFacts = {
		edition,
		speaker,
		order,
		records,
		line,
		legs,
		positions,
		settlement,
		exhibits,
		handOuts: await settledHandOuts(deps, orderId, sha256s),
		entries,
		checkpoint,
		root: rootOf(checkpoint.note),
		keys: log.keys,
		stamp: log.stamp,
		readIn: log.readIn,
		receipt: log.receipt,
		asOf: entries.at(-1)?.time ?? new Date(order.createdAt),
		publicUrl: deps.publicUrl,
	};
	return edition === "carrier" ? carrierLeg(report, leg) : report;
}

/** The records that were sealed by then; one that was amended only later stands unamended. */
function standingAt(records: readonly SealedRecord[], size: number): SealedRecord[] {
	const sealed = records.filter(({ entry }) => entry.index < size);
	const ids = new Set(sealed.map(({ view }) => view.id));
	return sealed.map((record) =>
		record.view.supersededBy === null || ids.has(record.view.supersededBy)
			? record
			: { ...record, view: { ...record.view, supersededBy: null } },
	);
}
