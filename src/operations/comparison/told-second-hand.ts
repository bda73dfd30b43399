/** What an end's holder did not record, but told the other side, who wrote it down: said wherever that end is told. */
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import type { SealedRecord } from "../records/record-views.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";

export function isReported(record: SealedRecord | null): boolean {
	return record?.view.provenance === "reported-to";
}

/** What heads a comparison of two ends: what it is, and which end is told at second hand. */
export function leadWords(found: ConsignmentComparison, speaker: Speaker = ENGLISH): string {
	const { outcome } = found.comparison;
	const reported = reportedWords(found, speaker);
	const kind = outcome === "compared" && reported.length > 0 ? "reported" : outcome;
	return [speaker.say(`comparison-page.lead.${kind}` as ReportKey), ...reported].join(" ");
}

/** `Arrival: reported by …, not recorded by its holder.`, for each end of which that is so. */
function reportedWords({ departure, arrival, order }: ConsignmentComparison, { say }: Speaker): string[] {
	return [departure, arrival].flatMap((record) => {
		if (record === null || !isReported(record)) return [];
		const { stage, holderId } = record.view;
		const party = holderId === order.owner.id ? order.owner.name : order.repairer.name;
		return [say(`comparison-page.reported-by.${stage}` as ReportKey, { party })];
	});
}

/** A sentence that rests on records: where one of them is of what was reported, that stands before it. */
export function asHeld(words: string, records: readonly (SealedRecord | null)[], { say }: Speaker): string {
	return records.some(isReported) ? say("comparison-page.certain.as-reported", { words }) : words;
}
