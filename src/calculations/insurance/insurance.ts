/** What a trip costs on average by damage, and the premium up to which insuring pays. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { type Money, minorUnits, moneyOf } from "../money.ts";
import { cite } from "../sources.ts";

export interface InsuranceInput {
	readonly value: Money;
	/** Of one leg, 0 to 1. */
	readonly damageProbability: number;
	/** What a damaged item is still worth. */
	readonly residualValue?: Money | undefined;
	readonly premium?: Money | undefined;
	readonly deductible?: Money | undefined;
	/** The most that the carrier pays without insurance. */
	readonly capAmount?: Money | undefined;
	/** Chance that the carrier pays, given damage. */
	readonly recoveryProbability?: number | undefined;
	/** Absolute aversion to risk, per major unit of the currency; risk-neutral where nothing is said. */
	readonly riskAversion?: number | undefined;
	/** Legs of the trip, each with this probability; 1 where nothing is said. */
	readonly legs?: number | undefined;
}

export interface Insurance {
	/** By damage, less what the carrier is expected to pay. */
	readonly expectedLoss: Money;
	/** Of any damage on the trip, from which on the premium is worth it for the risk-neutral; null without a premium. */
	readonly breakEvenProbability: number | null;
	readonly maximumPremium: Money;
	/** On all legs: 1 − (1 − p)^n. */
	readonly anyDamageProbability: number;
}

const THEORY = cite("insurance-theory", "expected loss; constant absolute aversion to risk", "published");
const RATES = cite("parcel-damage-study", "16 of 3,234; Wilson interval computed", "published");
const USER = cite("user", "probabilities and amounts", "user");

/** e^x is a number up to here; beyond, an aversion so great has no meaning. */
const MOST_EXPONENT = 700;

export function insurance(input: InsuranceInput): Judged<Insurance> {
	const sources = [USER, THEORY, RATES];
	const { recoveryProbability: q = 0, riskAversion: a = 0, legs = 1, premium } = input;
	const { currency } = input.value;
	const loss = Math.max(0, input.value.amount - (input.residualValue?.amount ?? 0));
	const recovered = Math.min(loss, input.capAmount?.amount ?? 0);
	const deductible = Math.min(loss, input.deductible?.amount ?? 0);
	if (a * loss > MOST_EXPONENT) return notAssessed("aversion-too-great", sentence("insurance.aversion"), { sources });
	// Without cancellation for small probabilities.
	const p = -Math.expm1(legs * Math.log1p(-input.damageProbability));
	// What insurance takes over on average, given damage.
	const exposure = loss - deductible - q * recovered;
	return assessed(
		{
			expectedLoss: moneyOf(minorUnits(p * (loss - q * recovered)), currency),
			breakEvenProbability: premium === undefined || !(exposure > 0) ? null : premium.amount / exposure,
			maximumPremium: moneyOf(
				minorUnits(Math.max(0, highestPremium({ p, q, a, loss, recovered, deductible }))),
				currency,
			),
			anyDamageProbability: p,
		},
		{
			cautions: [
				sentence("insurance.rates"),
				...(legs > 1 ? [sentence("insurance.per-leg")] : []),
				...(exposure > 0 ? [] : [sentence("insurance.no-exposure")]),
				...(a === 0 ? [sentence("insurance.neutral")] : []),
			],
			sources,
		},
	);
}

/**
 * The premium at which being insured (losing the deductible at most) is worth as much as not being insured (losing all, or what
 * the carrier leaves). With u = −e^(−aW): P = (1/a)·ln(E[e^(aX)] without / E[e^(aX)] with insurance); its limit for a → 0 is
 * p·(L − d − q·c). Without recovery and deductible it is (1/a)·ln(1 + p(e^(aL) − 1)).
 */
function highestPremium({
	p,
	q,
	a,
	loss,
	recovered,
	deductible,
}: Readonly<Record<"p" | "q" | "a" | "loss" | "recovered" | "deductible", number>>): number {
	if (a === 0) return p * (loss - deductible - q * recovered);
	const without = p * ((1 - q) * Math.expm1(a * loss) + q * Math.expm1(a * (loss - recovered)));
	return (Math.log1p(without) - Math.log1p(p * Math.expm1(a * deductible))) / a;
}
