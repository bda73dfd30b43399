/** What each leg from the shop to an owner teaches, from sealed records, the pack as shipped, and what is noted of the leg. */
import type { Caller } from "../../access/caller.ts";
import type { ComparisonRow } from "../../calculations/comparison/types.ts";
import type { LearnedLeg, LegOutcome } from "../../calculations/learning/learned-leg.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { PackagingRequest } from "../../contract/packaging.ts";
import { linksOfOrder } from "../../database/access.ts";
import { listOrders } from "../../database/orders.ts";
import { recordsOfOrder } from "../../database/records.ts";
import { entriesOfOrder } from "../../database/sealed.ts";
import { inMillimetres } from "../../texts/millimetres.ts";
import { say } from "../../texts/say.ts";
import { type ConsignmentComparison, compareLeg } from "../comparison/compare-consignment.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { orderViewOf } from "../orders/order-view.ts";
import { newestAssessmentIn } from "../packaging/assessments.ts";
import { foamWords } from "../packaging/foam-words.ts";
import { sealedRecordsIn } from "../records/record-views.ts";
import { soakSoFar } from "../records/soak-so-far.ts";

/** Orders looked at, the newest first. Our choice: a small shop's years. */
export const MOST_ORDERS = 5000;
/** Orders read at once, so that other requests are served between them. Our choice. */
const AT_ONCE = 4;
/** After so many days without a record of the arrival a leg counts as silent; before, as on its way. Our choice. */
const SILENT_AFTER_DAYS = 21;
const DAY_MS = 86_400_000;
/** Lower ends of the bands of soak hours. Our choice. */
const SOAK_BANDS_H = [24, 8, 2] as const;

/** Legs that are on their way are left out. */
export async function learnedLegs(deps: Deps, caller: Caller): Promise<LearnedLeg[]> {
	mustBeShop(caller);
	const rows = await listOrders(deps.database, MOST_ORDERS, null);
	const legs: LearnedLeg[] = [];
	for (let at = 0; at < rows.length; at += AT_ONCE) {
		const some = rows.slice(at, at + AT_ONCE);
		const learned = await Promise.all(
			some.map(async (row) => legsOfOrder(deps, await orderViewOf(deps.database, row))),
		);
		legs.push(...learned.flat());
	}
	return legs;
}

/** States from which a leg can make something worse, the best first. */
const WORKING = ["good", "partly-good", "intermittent"];

/** What the log holds of the order is read once: asking the database is what takes the time. */
async function legsOfOrder(deps: Deps, order: OrderView): Promise<LearnedLeg[]> {
	const [rows, entries, links] = await Promise.all([
		recordsOfOrder(deps.database, order.id),
		entriesOfOrder(deps.database, order.id),
		linksOfOrder(deps.database, order.id),
	]);
	const records = sealedRecordsIn(rows, entries);
	return order.consignments.flatMap((leg) => {
		if (leg.direction !== "to-owner") return [];
		const found = compareLeg(order, leg, records);
		const { departure, arrival } = found;
		// What did not leave with a record, or left dead, shows nothing of the way.
		if (departure === null || !WORKING.includes(departure.statement.state)) return [];
		const sentAt = leg.facts.dispatchedAt ?? departure.statement.observed.at;
		if (arrival === null && deps.now().getTime() - Date.parse(sentAt) < SILENT_AFTER_DAYS * DAY_MS) return [];
		const asked = rows.filter(
			({ id, consignment_id, stage }) =>
				consignment_id === leg.id && stage === "arrival" && links.some(({ record_id }) => record_id === id),
		);
		const pack = (newestAssessmentIn(entries, leg.id)?.statement as PackagingRequest | undefined)?.pack ?? null;
		return [
			{
				sentOn: sentAt.slice(0, 10),
				factors: {
					carrier: leg.facts.carrier?.trim() ?? null,
					pack: pack === null ? null : boxWords(pack),
					foam: pack === null ? null : foamsOf(pack),
					soak: soakBand(soakSoFar(departure.statement.readings).hours),
				},
				outcome: outcomeOf(found),
				nearMisses: {
					"pads-shifted": leg.facts.padsShifted ?? null,
					"corner-crushed": leg.facts.cornersCrushed ?? null,
					"tag-tripped": arrival?.statement.parcel?.indicatorTripped ?? null,
					"new-correctable-errors": newErrors(found),
					"link-unanswered": asked.length === 0 ? null : asked.every(({ state }) => state !== "sealed"),
				},
			},
		];
	});
}

function outcomeOf({ departure, arrival, comparison }: ConsignmentComparison): LegOutcome {
	if (departure === null || arrival === null) return "silent";
	const { state } = arrival.statement;
	if (state === "does-not-start") return "dead";
	if (!WORKING.includes(state)) return "untested";
	const isWorse = WORKING.indexOf(state) > WORKING.indexOf(departure.statement.state);
	const changed = comparison.rows.some((row) => !isErrorCounter(row) && becameWorse(row));
	return isWorse || changed ? "changed" : "as-left";
}

/** Corrected by the link itself: nobody would notice, so they are a near miss and no change. */
const isErrorCounter = ({ check }: ComparisonRow) => check.id.startsWith("aer-");
const becameWorse = ({ comparison: { result } }: ComparisonRow) =>
	result?.verdict === "differs" && result.direction === "worse";

/** Errors were counted at both ends: whether there are some now and were none, or more by the comparison. */
function newErrors({ departure, arrival, comparison }: ConsignmentComparison): boolean | null {
	const [before, after] = [departure, arrival].map((record) => {
		const counts = record?.statement.readings.flatMap(({ check, count }) =>
			check.startsWith("aer-") && count !== undefined ? [count] : [],
		);
		return counts === undefined || counts.length === 0 ? null : Math.max(...counts);
	});
	if (before === null || before === undefined || after === null || after === undefined) return null;
	if (before === 0 || after === 0) return after > 0;
	const counters = comparison.rows.filter(isErrorCounter);
	if (counters.some(becameWorse)) return true;
	// What could not be compared, or was left open, is not known to be no more than before.
	const isTold = ({ comparison: { result } }: ComparisonRow) =>
		result?.verdict === "equivalent" || result?.verdict === "differs";
	return counters.length > 0 && counters.every(isTold) ? false : null;
}

function boxWords({ box, innerBox }: PackagingRequest["pack"]): string {
	const size = [box.innerLengthM, box.innerWidthM, box.innerHeightM].map(inMillimetres).join(" × ");
	return [
		`${size} mm`,
		...(box.reused ? [say("learning.box-reused")] : []),
		...(innerBox === undefined ? [] : [say("learning.box-in-box")]),
	].join(", ");
}

/** Every foam of the pack, with its thickest layer. */
function foamsOf({ faces }: PackagingRequest["pack"]): string {
	const thickest = new Map<string, number>();
	for (const { layers } of Object.values(faces))
		for (const { foam, thicknessM } of layers) {
			const name = "id" in foam ? foamWords(foam.id) : say("learning.own-foam");
			thickest.set(name, Math.max(thickest.get(name) ?? 0, thicknessM));
		}
	const names = [...thickest].map(([name, thicknessM]) => `${name}, ${inMillimetres(thicknessM)} mm`);
	return names.length === 0 ? say("learning.no-foam") : names.sort().join(" + ");
}

function soakBand(hours: number): string {
	if (hours === 0) return say("learning.soak-none");
	const [most, middle, least] = SOAK_BANDS_H;
	if (hours >= most) return say("learning.soak-from", { hours: most });
	if (hours < least) return say("learning.soak-under", { hours: least });
	return hours >= middle
		? say("learning.soak-between", { low: middle, high: most })
		: say("learning.soak-between", { low: least, high: middle });
}
