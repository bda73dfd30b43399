/** What a carrier is told of: one leg, its records, and the exhibits that these name, under their numbers in the other editions. */
import { invalid } from "../../faults.ts";
import type { ReportFacts, ReportLeg } from "./report-facts.ts";

/**
 * @param number of the leg; without it the last one whose arrival is recorded, else the last
 * @throws bad-input where the order has no such leg
 */
export function carrierLeg(report: ReportFacts, number: number | undefined): ReportFacts {
	const leg = legOf(report.legs, number);
	if (leg === undefined) return { ...report, records: [], exhibits: [] };
	const records = report.records.filter(({ view }) => view.consignmentId === leg.leg.id);
	const named = new Set(records.flatMap(({ statement }) => statement.exhibits.map(({ sha256 }) => sha256)));
	return { ...report, legs: [leg], records, exhibits: report.exhibits.filter(({ sha256 }) => named.has(sha256)) };
}

function legOf(legs: readonly ReportLeg[], number: number | undefined): ReportLeg | undefined {
	if (number === undefined) return legs.findLast(({ found }) => found.arrival !== null) ?? legs.at(-1);
	const leg = legs.find((one) => one.leg.leg === number);
	if (leg === undefined) throw invalid([{ path: "/leg", code: "too-big", facts: { most: legs.length } }]);
	return leg;
}
