/** What a trip costs on average by damage, and the premium up to which insuring pays. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { type Money, minorUnits, moneyOf } from "../money.ts";
import { cite } from "../sources.ts";
import { type Aversion, equivalentLoss } from "./equivalent-loss.ts";
import { highestPremium } from "./highest-premium.ts";

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
	/** Constant absolute aversion to risk, per major unit of the currency; risk-neutral where neither aversion is said. */
	readonly riskAversion?: number | undefined;
	/** Constant relative aversion to risk, a number: 0.5 for a utility that is the square root of wealth, 1 for its logarithm. */
	readonly relativeRiskAversion?: number | undefined;
	/** All that whoever would insure has, the whole item in it; given together with `relativeRiskAversion`. */
	readonly wealth?: Money | undefined;
	/** Legs of the trip, each with this probability; 1 where nothing is said. */
	readonly legs?: number | undefined;
}

export interface Insurance {
	/** By damage, less what the carrier is expected to pay. */
	readonly expectedLoss: Money;
	/** Of any damage on the trip, from which on the premium is worth it for the risk-neutral; null without a premium. */
	readonly breakEvenProbability: number | null;
	readonly maximumPremium: Money;
	/** The certain wealth that is worth as much as the trip without insurance; null where no wealth is given. */
	readonly certaintyEquivalent: Money | null;
	/** On all legs: 1 − (1 − p)^n. */
	readonly anyDamageProbability: number;
}

const THEORY = cite("insurance-theory", "expected loss; constant absolute and relative aversion to risk", "published");
const RATES = cite("parcel-damage-study", "16 of 3,234; Wilson interval computed", "published");
const USER = cite("user", "probabilities and amounts", "user");

export function insurance(input: InsuranceInput): Judged<Insurance> {
	const sources = [USER, THEORY, RATES];
	const { recoveryProbability: q = 0, legs = 1, premium, wealth } = input;
	const { currency } = input.value;
	const money = (amount: number) => moneyOf(minorUnits(amount), currency);
	const loss = Math.max(0, input.value.amount - (input.residualValue?.amount ?? 0));
	const recovered = Math.min(loss, input.capAmount?.amount ?? 0);
	const deductible = Math.min(loss, input.deductible?.amount ?? 0);
	const aversion: Aversion =
		input.relativeRiskAversion !== undefined && wealth !== undefined
			? { relative: input.relativeRiskAversion, wealth: wealth.amount }
			: { absolute: input.riskAversion ?? 0 };
	// Without cancellation for small probabilities.
	const p = -Math.expm1(legs * Math.log1p(-input.damageProbability));
	const uninsured = [
		{ probability: p * (1 - q), loss },
		{ probability: p * q, loss: loss - recovered },
	];
	const worth = equivalentLoss(aversion, uninsured);
	if (worth === null) return notAssessed("aversion-too-great", sentence("insurance.aversion"), { sources });
	// What insurance takes over on average, given damage.
	const exposure = loss - deductible - q * recovered;
	const isNeutral = ("absolute" in aversion ? aversion.absolute : aversion.relative) === 0;
	return assessed(
		{
			expectedLoss: money(p * (loss - q * recovered)),
			breakEvenProbability: premium === undefined || !(exposure > 0) ? null : premium.amount / exposure,
			maximumPremium: money(highestPremium(aversion, worth, { probability: p, loss: deductible })),
			certaintyEquivalent: wealth === undefined ? null : money(wealth.amount - worth),
			anyDamageProbability: p,
		},
		{
			cautions: [
				sentence("insurance.rates"),
				...(legs > 1 ? [sentence("insurance.per-leg")] : []),
				...(exposure > 0 ? [] : [sentence("insurance.no-exposure")]),
				...(isNeutral ? [sentence("insurance.neutral")] : []),
			],
			sources,
		},
	);
}
