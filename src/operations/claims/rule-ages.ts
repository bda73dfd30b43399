/** Every rule on claims with the state of the text it was taken from: what was only recalled first, then the oldest text. */
import type { CivilDate } from "../../calculations/civil-date.ts";
import type { CapRule } from "../../calculations/claims/claim-cap.ts";
import type { Regime } from "../../calculations/claims/claim-rule.ts";
import type { DocumentId, Standing } from "../../calculations/sources.ts";
import { CLAIM_CAPS } from "../../catalogue/claim-caps.ts";
import { CLAIM_RULES, COPIES } from "../../catalogue/claim-rules.ts";

/** A text in a state that is older is called old. Our choice: laws on carriage change every few years. */
export const OLD_AFTER_YEARS = 3;

export interface RuleAge {
	/** Null of a limit on amounts, which has none of its own. */
	readonly ruleId: string | null;
	/** Of a limit on amounts; null of a rule on times. */
	readonly limit: CapRule["limit"] | null;
	readonly regime: Regime;
	readonly article: string;
	readonly document: string;
	readonly standing: Standing;
	/** State of the copy that was read, as exactly as it is known; null where no dated copy was. */
	readonly readOn: string | null;
	/** What has to be read before anyone relies on it. */
	readonly rests: "recalled" | "undated" | "old" | "read";
}

export function ruleAges(today: CivilDate): RuleAge[] {
	const oldBefore = `${Number(today.slice(0, 4)) - OLD_AFTER_YEARS}${today.slice(4)}`;
	const rests = (standing: Standing, readOn: string | null): RuleAge["rests"] => {
		if (standing === "from-memory") return "recalled";
		if (readOn === null) return "undated";
		return readOn < oldBefore ? "old" : "read";
	};
	const rules = CLAIM_RULES.map(({ id, regime, article, readOn, source: { document, standing } }) => ({
		...{ ruleId: id, limit: null, regime, article, document, standing, readOn },
		rests: rests(standing, readOn),
	}));
	const caps = CLAIM_CAPS.map(({ regime, limit, source: { id, document, locator, standing } }) => {
		const readOn = COPIES[id as DocumentId] ?? null;
		const common = { ruleId: null, limit, regime, article: locator, document, standing, readOn };
		return { ...common, rests: rests(standing, readOn) };
	});
	const order = ["recalled", "undated", "old", "read"];
	return [...rules, ...caps].sort(
		(a, b) => order.indexOf(a.rests) - order.indexOf(b.rests) || (a.readOn ?? "").localeCompare(b.readOn ?? "", "en"),
	);
}
