/** What a draft cannot exclude yet: said while the repairer still decides. */
import { type Sentence, sentence } from "../../calculations/judged.ts";
import { upperShare } from "../../calculations/statistics/shares.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import type { RecordContentInput } from "../../contract/records.ts";

/** Confidence of the bounds that are said. Source: our choice, the usual 95 %. */
const CONFIDENCE = 0.95;

/**
 * Clean starts bound the share of starts that fail: none in n attempts leaves up to 1 − 0.05^(1/n) (exact one-sided
 * Clopper–Pearson bound). Checks of the full record that have no result are named as they are.
 */
export function openQuestions(
	content: RecordContentInput,
	checks: readonly CheckDefinition[],
): { readonly bounds: readonly Sentence[]; readonly untested: readonly CheckDefinition[] } {
	const readings = content.readings ?? [];
	const bounds = readings
		.filter((reading) => reading.check.startsWith("starts-") && reading.trials !== undefined)
		.map((reading) => {
			const trials = reading.trials ?? 1;
			const failures = trials - (reading.successes ?? 0);
			const percent = 100 * upperShare(failures, trials, CONFIDENCE);
			return sentence("open.starts", {
				trials,
				failures,
				percent: Math.round(percent * 10) / 10,
				kind: reading.check.replace("starts-", ""),
			});
		});
	const tested = new Set(readings.filter((reading) => reading.notTested === undefined).map((reading) => reading.check));
	return { bounds, untested: checks.filter((check) => !tested.has(check.id)) };
}
