/**
 * Limits of what a carrier pays, by regime. Dated where they changed: never a constant. SDR is the special drawing right of the
 * International Monetary Fund, whose rate is the user's.
 */
import type { CapRule } from "../calculations/claims/claim-cap.ts";
import { cite } from "../calculations/sources.ts";

const PLAIN = {
	includesSurvey: false,
	refundsFreight: false,
	interestPercent: null,
	agreedSdr: null,
	lifted: true,
} as const;
/** From when the amount holds was not read: it is taken for every date that can be entered. */
const ALWAYS = "1970-01-01";

export const CLAIM_CAPS: readonly CapRule[] = [
	{
		...PLAIN,
		regime: "cmr",
		limit: { unit: "sdr-per-kg", steps: [{ from: ALWAYS, sdrPerKg: 8.33 }] },
		refundsFreight: true,
		interestPercent: 5,
		source: cite("cmr", "Art. 23(3), (4), (7), 25, 27", "published"),
	},
	{
		...PLAIN,
		regime: "montreal",
		limit: {
			unit: "sdr-per-kg",
			steps: [
				{ from: "2003-11-04", sdrPerKg: 17 },
				{ from: "2009-12-30", sdrPerKg: 19 },
				{ from: "2019-12-28", sdrPerKg: 22 },
				{ from: "2024-12-28", sdrPerKg: 26 },
			],
		},
		lifted: false,
		source: cite("montreal-limits", "Art. 22(3), 24: 17, 19, 22, 26 special drawing rights per kg", "published"),
	},
	{
		...PLAIN,
		regime: "cim",
		limit: { unit: "sdr-per-kg", steps: [{ from: ALWAYS, sdrPerKg: 17 }] },
		source: cite("cim", "Art. 30 § 2, 32", "published"),
	},
	{
		...PLAIN,
		regime: "upu",
		limit: { unit: "sdr-per-parcel", baseSdr: 40, perKgSdr: 4.5 },
		lifted: false,
		source: cite(
			"upu-parcel-amounts",
			"40, and 4.50 per kg, in special drawing rights, for an ordinary parcel",
			"from-memory",
		),
	},
	{
		...PLAIN,
		regime: "de-hgb",
		limit: { unit: "sdr-per-kg", steps: [{ from: ALWAYS, sdrPerKg: 8.33 }] },
		includesSurvey: true,
		refundsFreight: true,
		agreedSdr: [2, 40],
		source: cite("hgb", "§§ 429-432, 435, 449", "published"),
	},
	{
		...PLAIN,
		regime: "nl-road",
		limit: { unit: "money-per-kg", perKg: 3.4, mostPerParcel: null, currency: "EUR" },
		source: cite("dutch-cap-decree", "Art. 1-3", "published"),
	},
	{
		...PLAIN,
		regime: "fr-post",
		limit: { unit: "money-per-kg", perKg: 23, mostPerParcel: null, currency: "EUR" },
		source: cite("french-postal-code", "R2-2", "published"),
	},
	{
		...PLAIN,
		regime: "fr-road",
		limit: { unit: "money-per-kg", perKg: 33, mostPerParcel: 1000, currency: "EUR" },
		source: cite("french-default-contract", "below 3 t: 33 EUR per kg, 1000 EUR per parcel", "from-memory"),
	},
	{
		...PLAIN,
		regime: "us-motor",
		limit: { unit: "none" },
		source: cite("us-code-49", "14706(a)(1), (c)(1)(A)", "published"),
	},
];
