/**
 * Which law of carriage may fit a leg, asked in one order: international post, international air, road between two states, rail
 * between two states, else the law of the country. A suggestion from what was noted: the choice is the user's.
 */
import type { Regime } from "./claim-rule.ts";

/** Countries as in ISO 3166-1 alpha-2. */
export interface CarriageFacts {
	readonly from: string;
	readonly to: string;
	readonly mode: "road" | "air" | "sea" | "rail" | "mixed" | "carried-by-hand";
	/** A postal operator carries it as post; null where nobody said. */
	readonly byPost: boolean | null;
	/** Part of the way is by air, or damage there is presumed; null where nobody said. */
	readonly airLeg: boolean | null;
}

export const REGIME_QUESTIONS = ["post", "air", "road", "rail", "domestic"] as const;

export interface RegimeStep {
	readonly question: (typeof REGIME_QUESTIONS)[number];
	readonly answer: "yes" | "no" | "open";
}

export interface RegimeSuggestion {
	/** Null where none of the rules that were read fits. */
	readonly regime: Regime | null;
	/** The questions up to the first that is answered with yes. */
	readonly steps: readonly RegimeStep[];
}

/** Law of a leg inside one country; of national post only France's was read. */
const DOMESTIC: Readonly<Record<string, { readonly carriage: Regime; readonly roadOnly: boolean }>> = {
	DE: { carriage: "de-hgb", roadOnly: false },
	FR: { carriage: "fr-road", roadOnly: true },
	NL: { carriage: "nl-road", roadOnly: true },
	CH: { carriage: "ch-or", roadOnly: false },
	GB: { carriage: "uk-domestic", roadOnly: false },
	US: { carriage: "us-motor", roadOnly: true },
};

export function suggestRegime(facts: CarriageFacts): RegimeSuggestion {
	const { mode, byPost, airLeg } = facts;
	if (mode === "carried-by-hand") return { regime: null, steps: [] };
	const isAcross = facts.from !== facts.to;
	const answers: readonly (readonly [RegimeStep["question"], boolean | null, Regime | null])[] = [
		["post", isAcross ? byPost : false, "upu"],
		["air", isAcross ? (mode === "air" ? true : mode === "mixed" ? airLeg : airLeg === true) : false, "montreal"],
		["road", isAcross && (mode === "road" || mode === "mixed"), "cmr"],
		["rail", isAcross && mode === "rail", "cim"],
		["domestic", !isAcross, domesticRegime(facts)],
	];
	const first = answers.findIndex(([, answer]) => answer === true);
	return {
		regime: answers[first]?.[2] ?? null,
		steps: answers.slice(0, first < 0 ? answers.length : first + 1).map(
			([question, answer]): RegimeStep => ({
				question,
				answer: answer === null ? "open" : answer ? "yes" : "no",
			}),
		),
	};
}

function domesticRegime({ from, mode, byPost }: CarriageFacts): Regime | null {
	if (byPost === true) return from === "FR" ? "fr-post" : null;
	const law = DOMESTIC[from];
	if (law === undefined || mode === "sea") return null;
	return law.roadOnly && mode !== "road" ? null : law.carriage;
}
