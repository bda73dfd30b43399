/** Who may notify or claim by a regime, as far as a text was read. Where none was, the page says so and names nobody. */
import type { Regime } from "../calculations/claims/claim-rule.ts";
import { cite, type Source } from "../calculations/sources.ts";

export interface Claimants {
	/** Roles in the contract of carriage. */
	readonly who: "sender-or-consignee" | "sender-unless-waived";
	readonly source: Source;
}

export const CLAIMANTS: Partial<Record<Regime, Claimants>> = {
	"de-hgb": { who: "sender-or-consignee", source: cite("hgb", "§§ 438(1), 439: consignee or sender", "published") },
	upu: { who: "sender-unless-waived", source: cite("upu-convention", "Art. 23.9", "published") },
};
