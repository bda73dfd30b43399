/** Whether each check was good in one record: what the custody line is made from. */
import { answers, endOf, readingFor, ruleOf } from "./check-rule.ts";
import { conformityOf } from "./conformity.ts";
import type { ComparedCheck, ComparedState, Conformity, Goodness } from "./types.ts";

/** Check id → goodness, for the class's checks and the record's own. */
export function goodnessOf(
	state: Pick<ComparedState, "benchId" | "readings">,
	checks: readonly ComparedCheck[],
): Record<string, Goodness> {
	const own = state.readings.flatMap((reading) => reading.definition ?? []);
	return Object.fromEntries([...checks, ...own].map((check) => [check.id, goodnessOfCheck(state, check)]));
}

function goodnessOfCheck(state: Pick<ComparedState, "benchId" | "readings">, check: ComparedCheck): Goodness {
	const reading = readingFor(check, state.readings);
	if (!answers(check, reading)) return "untested";
	return goodnessFrom(conformityOf(ruleOf(check, reading), endOf(check, reading, state.benchId)));
}

/** The goodness that a tested end's conformity says. */
export function goodnessFrom(conformity: Conformity | null): Goodness {
	switch (conformity?.verdict) {
		case undefined:
			return "no-limit";
		case "proven-good":
		case "held-as-tested":
			return "good";
		case "proven-bad":
			return "not-good";
		case "inconclusive":
			return "unclear";
	}
}
