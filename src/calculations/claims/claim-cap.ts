/** The most that a carrier pays by the law of a regime, in money, and what of the value it covers. */
import { type CivilDate, daysBetween } from "../civil-date.ts";
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { type Money, minorUnits, moneyOf } from "../money.ts";
import type { Source } from "../sources.ts";
import type { Regime } from "./claim-rule.ts";

/** How a regime limits what is paid, as data of the catalogue. */
export interface CapRule {
	readonly regime: Regime;
	readonly limit:
		| { readonly unit: "sdr-per-kg"; readonly steps: readonly CapStep[] }
		| { readonly unit: "sdr-per-parcel"; readonly baseSdr: number; readonly perKgSdr: number }
		| {
				readonly unit: "money-per-kg";
				readonly perKg: number;
				readonly mostPerParcel: number | null;
				readonly currency: string;
		  }
		| { readonly unit: "none" };
	/** The cost of a survey counts as damage, inside the limit. */
	readonly includesSurvey: boolean;
	/** Freight is refunded beside the limit, in proportion. */
	readonly refundsFreight: boolean;
	/** Simple interest per year from the written claim; null where the rule read names none. */
	readonly interestPercent: number | null;
	/** Amounts per kilogram on which standard terms may agree, in special drawing rights. */
	readonly agreedSdr: readonly [least: number, most: number] | null;
	/** Recklessness lifts the limit. */
	readonly lifted: boolean;
	readonly source: Source;
}

export interface CapStep {
	readonly from: CivilDate;
	readonly sdrPerKg: number;
}

export interface ClaimCapInput {
	readonly rule: CapRule;
	readonly packages: readonly { readonly grossMassKg: number; readonly affected: boolean }[];
	readonly loss: "total" | "partial";
	readonly eventDate: CivilDate;
	/** Units of the currency for one special drawing right, on the day that counts. */
	readonly currencyPerSdr?: number | undefined;
	readonly agreedSdrPerKg?: number | undefined;
	/** Of what is affected, at its destination or place of taking over, as the regime has it. */
	readonly value?: Money | undefined;
	/** What it is still worth. */
	readonly residualValue?: Money | undefined;
	readonly freight?: Money | undefined;
	readonly surveyCost?: Money | undefined;
	readonly interest?: { readonly from: CivilDate; readonly to: CivilDate } | undefined;
	/** Of the amounts; null where none is given. */
	readonly currency: string | null;
}

export interface ClaimCap {
	readonly capSdr: number | null;
	readonly capAmount: Money | null;
	readonly freightRefund: Money | null;
	readonly interestAmount: Money | null;
	/** What is lost, at most the limit, with refund and interest; null without a value. */
	readonly total: Money | null;
	/** Limit over value, 1 at most. */
	readonly shareOfValue: number | null;
	/** Gross mass at which the limit reaches the value; null where mass does not decide. */
	readonly massCoveringValueKg: number | null;
}

const DAYS_PER_YEAR = 365;
/** Our choice, as the reference page has it. */
const NEAR_STEP_DAYS = 60;

export function claimCap(input: ClaimCapInput): Judged<ClaimCap> {
	const { rule } = input;
	const sources = [rule.source];
	const limit = limitOf(input);
	if (limit === null) {
		const from = rule.limit.unit === "sdr-per-kg" ? (rule.limit.steps[0]?.from ?? "") : "";
		return notAssessed("no-limit-yet", sentence("claims.no-rate-yet", { from }), { sources });
	}
	const { currency } = input;
	if (limit.currency !== null && currency !== null && currency !== limit.currency)
		return notAssessed(
			"other-currency",
			sentence("claims.currency-differs", { expected: limit.currency, given: currency }),
			{ sources },
		);
	const paidIn = limit.currency ?? currency;
	const money = (minor: number | null) => (minor === null || paidIn === null ? null : moneyOf(minor, paidIn));
	const capMinor = limit.amount === null || paidIn === null ? null : minorUnits(limit.amount);
	const value = minor(input.value);
	const lost = value === null ? null : Math.max(0, value - (minor(input.residualValue) ?? 0));
	const damage = lost === null ? null : lost + (rule.includesSurvey ? (minor(input.surveyCost) ?? 0) : 0);
	const capped = damage === null || (capMinor === null && !limit.unlimited) ? null : atMost(damage, capMinor);
	const freight = minor(input.freight);
	const freightMinor =
		freight === null || !rule.refundsFreight ? null : Math.floor(freight * freightShare(input) + 0.5);
	const interestMinor = capped === null ? null : interestOn(capped, input);
	return assessed(
		{
			capSdr: limit.sdr,
			capAmount: money(capMinor),
			freightRefund: money(freightMinor),
			interestAmount: money(interestMinor),
			total: money(capped === null ? null : capped + (freightMinor ?? 0) + (interestMinor ?? 0)),
			shareOfValue: value === null || value === 0 || capMinor === null ? null : Math.min(1, capMinor / value),
			massCoveringValueKg: value === null ? null : massCovering(value / 100, input),
		},
		{
			within: rule.source.standing === "published" && !agreedOutside(input),
			notes: [
				...(rule.source.standing === "published" ? [] : [sentence("claims.cap-from-memory")]),
				...(agreedOutside(input) ? [sentence("claims.agreed-outside", { agreed: input.agreedSdrPerKg ?? 0 })] : []),
			],
			cautions: cautionsOn(input, limit, capMinor, value),
			sources,
		},
	);
}

interface Limit {
	readonly sdr: number | null;
	/** In the major unit; null where it cannot be said. */
	readonly amount: number | null;
	/** The limit's own; null where it follows the amounts given. */
	readonly currency: string | null;
	readonly unlimited: boolean;
}

/** Null where no limit is known for the date. */
function limitOf(input: ClaimCapInput): Limit | null {
	const { rule, currencyPerSdr } = input;
	const affected = input.packages.filter((one) => one.affected).map(({ grossMassKg }) => grossMassKg);
	const ofSdr = (sdr: number): Limit => ({
		sdr,
		amount: currencyPerSdr === undefined ? null : sdr * currencyPerSdr,
		currency: null,
		unlimited: false,
	});
	switch (rule.limit.unit) {
		case "sdr-per-kg": {
			const perKg = sdrPerKg(input);
			return perKg === null ? null : ofSdr(perKg * sum(affected));
		}
		case "sdr-per-parcel": {
			const { baseSdr, perKgSdr } = rule.limit;
			return ofSdr(sum(affected.map((massKg) => baseSdr + perKgSdr * massKg)));
		}
		case "money-per-kg": {
			const { perKg, mostPerParcel, currency } = rule.limit;
			const amount = sum(affected.map((massKg) => Math.min(perKg * massKg, mostPerParcel ?? Number.POSITIVE_INFINITY)));
			return { sdr: null, amount, currency, unlimited: false };
		}
		case "none":
			return { sdr: null, amount: null, currency: null, unlimited: true };
	}
}

function sdrPerKg({ rule, agreedSdrPerKg, eventDate }: ClaimCapInput): number | null {
	if (rule.agreedSdr !== null && agreedSdrPerKg !== undefined) return agreedSdrPerKg;
	if (rule.limit.unit !== "sdr-per-kg") return null;
	return rule.limit.steps.filter(({ from }) => from <= eventDate).at(-1)?.sdrPerKg ?? null;
}

/** Kilograms at which the limit is the value, in the major unit. */
function massCovering(value: number, input: ClaimCapInput): number | null {
	const { rule, currencyPerSdr } = input;
	if (rule.limit.unit === "money-per-kg") {
		const massKg = value / rule.limit.perKg;
		// Beyond the most for a parcel no mass helps.
		return rule.limit.mostPerParcel !== null && value > rule.limit.mostPerParcel ? null : massKg;
	}
	if (currencyPerSdr === undefined) return null;
	if (rule.limit.unit === "sdr-per-parcel")
		return Math.max(0, value / currencyPerSdr - rule.limit.baseSdr) / rule.limit.perKgSdr;
	const perKg = sdrPerKg(input);
	return perKg === null ? null : value / (perKg * currencyPerSdr);
}

/** Share of the freight: the mass affected, and of a partial loss the share of its value that is lost. */
function freightShare({ packages, loss, value, residualValue }: ClaimCapInput): number {
	const mass = (all: typeof packages) => sum(all.map(({ grossMassKg }) => grossMassKg));
	const byMass = mass(packages.filter(({ affected }) => affected)) / mass(packages);
	if (loss === "total" || value === undefined || value.amount === 0) return byMass;
	return byMass * Math.max(0, 1 - (residualValue?.amount ?? 0) / value.amount);
}

function interestOn(capped: number, { rule, interest }: ClaimCapInput): number | null {
	if (interest === undefined || rule.interestPercent === null) return null;
	const years = daysBetween(interest.from, interest.to) / DAYS_PER_YEAR;
	return Math.floor(Number((capped * (rule.interestPercent / 100) * years).toPrecision(12)) + 0.5);
}

function agreedOutside({ rule, agreedSdrPerKg }: ClaimCapInput): boolean {
	if (rule.agreedSdr === null || agreedSdrPerKg === undefined) return false;
	return !(agreedSdrPerKg >= rule.agreedSdr[0] && agreedSdrPerKg <= rule.agreedSdr[1]);
}

function cautionsOn(input: ClaimCapInput, limit: Limit, capMinor: number | null, value: number | null): Sentence[] {
	const { rule } = input;
	const steps = rule.limit.unit === "sdr-per-kg" ? rule.limit.steps : [];
	const near = steps.slice(1).find(({ from }) => Math.abs(daysBetween(from, input.eventDate)) <= NEAR_STEP_DAYS);
	const overlooked = (given: unknown, counted: boolean, key: string) =>
		given !== undefined && !counted ? [sentence(key)] : [];
	return [
		sentence("claims.general"),
		sentence("claims.prevails"),
		...(limit.unlimited
			? [sentence("claims.no-cap")]
			: [sentence(rule.lifted ? "claims.lifted" : "claims.cap-not-broken")]),
		...(near === undefined ? [] : [sentence("claims.near-step", { step: near.from })]),
		...(limit.sdr === null
			? []
			: [sentence(input.currencyPerSdr === undefined ? "claims.no-rate" : "claims.rate-user")]),
		...(limit.amount !== null && capMinor === null ? [sentence("claims.no-currency")] : []),
		...(value === null ? [sentence("claims.no-value")] : []),
		...overlooked(input.agreedSdrPerKg, rule.agreedSdr !== null, "claims.agreed-elsewhere"),
		...overlooked(input.surveyCost, rule.includesSurvey, "claims.survey-elsewhere"),
		...overlooked(input.interest, rule.interestPercent !== null, "claims.interest-elsewhere"),
		...overlooked(input.freight, rule.refundsFreight, "claims.freight-elsewhere"),
		...(input.freight !== undefined && rule.refundsFreight ? [sentence("claims.freight-share")] : []),
		...(value !== null && capMinor !== null && capMinor < value
			? [sentence("claims.value-decides", { percent: Number(((100 * capMinor) / value).toPrecision(2)) })]
			: []),
	];
}

const minor = (money: Money | undefined) => (money === undefined ? null : minorUnits(money.amount));
const atMost = (amount: number, most: number | null) => (most === null ? amount : Math.min(amount, most));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
