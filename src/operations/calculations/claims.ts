/** `claim-periods`, `claim-cap`, `insurance`. */
import { claimCap as capOf } from "../../calculations/claims/claim-cap.ts";
import { type Holidays, claimPeriods as periodsOf } from "../../calculations/claims/claim-periods.ts";
import type { ClaimRule } from "../../calculations/claims/claim-rule.ts";
import { insurance as insure } from "../../calculations/insurance/insurance.ts";
import { CLAIM_CAPS } from "../../catalogue/claim-caps.ts";
import { CLAIM_RULES } from "../../catalogue/claim-rules.ts";
import {
	claimCapRequest,
	claimCapResult,
	claimPeriodsRequest,
	claimPeriodsResult,
	insuranceRequest,
	insuranceResult,
} from "../../contract/claims.ts";
import { invalid } from "../../faults.ts";
import { calculation } from "./calculation.ts";
import { type HolidayChoice, publicHolidays } from "./holidays.ts";

/** Events from which the rules count days that are no holidays, or whose end moves on from one. */
const COUNTED_FROM = ["delivered", "inHand", "jointlyChecked"] as const;

export const claimPeriods = calculation({
	name: "claim-periods",
	summary: "Dates by which a claim of carriage is to be notified or brought, each with what follows a missed one.",
	request: claimPeriodsRequest,
	result: claimPeriodsResult,
	example: {
		request: {
			rules: ["CMR-DMG-CONCEALED"],
			damage: "not-apparent",
			events: { delivered: "2025-03-03" },
			holidays: { country: "DE" },
		},
		result: {
			periods: [
				{
					endsOn: "2025-03-11",
					consequence: "presumption",
					form: "writing",
					article: "CMR Art. 30(1), (4)",
					skipped: ["2025-03-09"],
				},
			],
		},
	},
	assess: ({ regime, rules, holidays, ...input }) =>
		periodsOf({
			...input,
			rules:
				rules === undefined
					? CLAIM_RULES.filter((rule) => rule.regime === regime && rule.damage.includes(input.damage))
					: rulesNamed(rules),
			holidays: holidays === undefined ? null : holidaysOf(holidays, input.events),
		}),
});

/** @throws bad-input, naming each id that is not there */
function rulesNamed(ids: readonly string[]): ClaimRule[] {
	const found = ids.map((id) => CLAIM_RULES.find((rule) => rule.id === id));
	const bad = found.flatMap((rule, index) =>
		rule === undefined ? [{ path: `/rules/${index}`, code: "unknown-id" }] : [],
	);
	if (bad.length > 0) throw invalid(bad);
	return found.filter((rule) => rule !== undefined);
}

/** No such period ends later than the year after its event. */
function holidaysOf(
	given: HolidayChoice | { readonly dates: readonly string[] },
	events: Readonly<Partial<Record<(typeof COUNTED_FROM)[number], string | undefined>>>,
): Holidays {
	if ("dates" in given) return { dates: given.dates, doubtful: [], regionsDiffer: false };
	const years = COUNTED_FROM.flatMap((name) => {
		const year = Number(events[name]?.slice(0, 4));
		return Number.isNaN(year) ? [] : [year, year + 1];
	});
	return publicHolidays(given, new Set(years));
}

export const claimCap = calculation({
	name: "claim-cap",
	summary: "The most that a carrier pays by the law of a regime, and what of the value it covers.",
	request: claimCapRequest,
	result: claimCapResult,
	example: {
		request: {
			regime: "cmr",
			packages: [{ grossMassKg: 2.4, affected: true }],
			loss: "total",
			eventDate: "2026-03-02",
			currencyPerSdr: 1.2,
			value: { amount: 1200, currency: "EUR" },
		},
		result: {
			capSdr: 19.992,
			capAmount: { amount: 23.99, currency: "EUR" },
			total: { amount: 23.99, currency: "EUR" },
			shareOfValue: 0.02,
			massCoveringValueKg: 120.05,
		},
	},
	assess: ({ regime, currency, ...input }) => {
		const rule = CLAIM_CAPS.find((cap) => cap.regime === regime);
		if (rule === undefined) throw invalid([{ path: "/regime", code: "unknown-id" }]);
		const { value, residualValue, freight, surveyCost } = input;
		const given = currency ?? [value, residualValue, freight, surveyCost].find((one) => one !== undefined)?.currency;
		return capOf({ ...input, rule, currency: given ?? null });
	},
});

export const insurance = calculation({
	name: "insurance",
	summary:
		"Expected loss by damage on a trip, and the premium up to which insuring it pays, by an absolute aversion to risk or one relative to a wealth.",
	request: insuranceRequest,
	result: insuranceResult,
	example: {
		request: { value: { amount: 1200, currency: "EUR" }, damageProbability: 0.01, riskAversion: 0.001, legs: 1 },
		result: {
			expectedLoss: { amount: 12, currency: "EUR" },
			maximumPremium: { amount: 22.94, currency: "EUR" },
			anyDamageProbability: 0.01,
		},
	},
	assess: insure,
});
