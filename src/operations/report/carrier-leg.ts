/** What a carrier is told of: one leg, its records, and the exhibits that these or its notices name, under their numbers in the other editions. */
import { invalid } from "../../faults.ts";
import { numberedExhibits } from "./numbered-exhibits.ts";
import type { ReportFacts, ReportLeg } from "./report-facts.ts";

/**
 * @param number of the leg; without it the last one whose arrival is recorded, else the last
 * @throws bad-input where the order has no such leg
 */
export function carrierLeg(report: ReportFacts, number: number | undefined): ReportFacts {
	const leg = legOf(report.legs, number);
	if (leg === undefined) return { ...report, records: [], exhibits: [] };
	const records = report.records.filter(({ view }) => view.consignmentId === leg.leg.id);
	// As this leg's records tell of a file, which another record may name with other words.
	const own = new Map(numberedExhibits(records).map((exhibit) => [exhibit.sha256, exhibit]));
	// What shows that a notice was sent or received may stand in a record of another leg, or of the bench.
	const shown = new Set(leg.notices.flatMap(({ sendingFile, receiptFile }) => [sendingFile, receiptFile]));
	const exhibits = report.exhibits.flatMap((exhibit) => {
		const ofRecords = own.get(exhibit.sha256);
		if (ofRecords !== undefined) return [{ ...ofRecords, number: exhibit.number }];
		return shown.has(exhibit.sha256) ? [exhibit] : [];
	});
	return { ...report, legs: [leg], records, exhibits };
}

function legOf(legs: readonly ReportLeg[], number: number | undefined): ReportLeg | undefined {
	if (number === undefined) return legs.findLast(({ found }) => found.arrival !== null) ?? legs.at(-1);
	const leg = legs.find((one) => one.leg.leg === number);
	if (leg === undefined) throw invalid([{ path: "/leg", code: "too-big", facts: { most: legs.length } }]);
	return leg;
}
