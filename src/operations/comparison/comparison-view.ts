/** A comparison as the API gives it: sentences in words, checks by name. */
import type { ComparedCheck } from "../../calculations/comparison/types.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import type { ComparisonView } from "../../contract/comparison.ts";
import { isTextKey, say, speak } from "../../texts/say.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";

export function comparisonViewOf(found: ConsignmentComparison): ComparisonView {
	const { comparison } = found;
	return speak({
		consignmentId: found.consignment.id,
		departureRecordId: found.departure?.view.id ?? null,
		arrivalRecordId: found.arrival?.view.id ?? null,
		outcome: comparison.outcome,
		why: comparison.why,
		identity: comparison.identity,
		betterOnArrival: comparison.betterOnArrival,
		adjustedFor: comparison.adjustedFor,
		checks: comparison.rows.map((row) => ({
			check: row.check.id,
			name: nameOf(row.check, row.departure?.definitionName ?? row.arrival?.definitionName),
			comparison: row.comparison,
		})),
		link: found.link,
		custodyLine: found.line,
		disclaimer: { sentence: "comparison-page.disclaimer" },
	}) as unknown as ComparisonView;
}

/** A check's name: the catalogue's, or what the shop called its own. */
export function nameOf(check: ComparedCheck, ownName: string | undefined): string {
	const { nameKey } = check as Partial<CheckDefinition>;
	return nameKey !== undefined && isTextKey(nameKey) ? say(nameKey) : (ownName ?? check.id);
}
