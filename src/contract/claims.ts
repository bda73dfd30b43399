/** `claim-periods`, `claim-cap`, `insurance`. */
import { z } from "zod";
import type { ClaimCap } from "../calculations/claims/claim-cap.ts";
import { CLAIM_EVENTS, CONSEQUENCES, DAMAGES, FORMS, REGIMES, type Regime } from "../calculations/claims/claim-rule.ts";
import type { Insurance, InsuranceInput } from "../calculations/insurance/insurance.ts";
import { STANDINGS } from "../calculations/sources.ts";
import { civilDate, country, money, text } from "./common.ts";

const date = z.string();
/** Money in answers: computed, so without the limits of what may be entered. */
const computed = z.strictObject({ amount: z.number(), currency: z.string() });

export const claimPeriodsRequest = z
	.strictObject({
		regime: z.enum(REGIMES).optional(),
		rules: z.array(text(60)).min(1).max(60).optional(),
		damage: z.enum(DAMAGES),
		wilful: z.boolean().optional(),
		events: z
			.strictObject({
				delivered: civilDate.optional(),
				inHand: civilDate.optional(),
				discovered: civilDate.optional(),
				posted: civilDate.optional(),
				takenOver: civilDate.optional(),
				placedAtDisposal: civilDate.optional(),
				jointlyChecked: civilDate.optional(),
				agreedLimit: civilDate.optional(),
				claimed: civilDate.optional(),
				rejected: civilDate.optional(),
				documentsReturned: civilDate.optional(),
				noticeSent: civilDate.optional(),
			})
			.refine(({ claimed, rejected }) => claimed === undefined || rejected === undefined || rejected >= claimed, {
				path: ["rejected"],
				error: "a claim cannot be rejected before it was made",
			})
			.refine(
				({ claimed, documentsReturned: back }) => claimed === undefined || back === undefined || back >= claimed,
				{ path: ["documentsReturned"], error: "documents cannot come back before the claim was made" },
			)
			.refine(
				({ takenOver, delivered }) => takenOver === undefined || delivered === undefined || delivered >= takenOver,
				{
					path: ["delivered"],
					error: "goods cannot be delivered before they were taken over",
				},
			),
		holidays: z
			.union([
				z.strictObject({
					country,
					region: z
						.string()
						.regex(/^[A-Za-z0-9]{1,5}$/)
						.optional(),
					add: z.array(civilDate).max(400).optional(),
					remove: z.array(civilDate).max(400).optional(),
				}),
				z.strictObject({ dates: z.array(civilDate).max(2000) }),
			])
			.optional(),
	})
	.refine((input) => (input.regime === undefined) !== (input.rules === undefined), {
		path: ["regime"],
		error: "give either regime or rules",
	});

export const claimPeriodsResult = z.strictObject({
	periods: z.array(
		z.strictObject({
			ruleId: z.string(),
			what: z.string(),
			endsOn: date.nullable(),
			rolledTo: date.nullable(),
			safeDate: date.nullable(),
			alternatives: z.array(z.strictObject({ endsOn: date.nullable(), reading: z.string() })),
			form: z.enum(FORMS),
			consequence: z.enum(CONSEQUENCES),
			article: z.string(),
			readOn: z.string().nullable(),
			standing: z.enum(STANDINGS),
			skipped: z.array(date),
			missing: z.array(z.enum(CLAIM_EVENTS)),
			notice: z.enum(["by-safe-date", "by-end", "after-end"]).nullable(),
		}),
	),
});

/** Regimes with a rule on amounts. */
export const CAP_REGIMES = [
	"cmr",
	"montreal",
	"cim",
	"upu",
	"de-hgb",
	"nl-road",
	"fr-post",
	"fr-road",
	"us-motor",
] as const satisfies readonly Regime[];

/** All money in one currency. */
const oneCurrency = (amounts: readonly ({ readonly currency: string } | undefined)[]) =>
	new Set(amounts.flatMap((amount) => (amount === undefined ? [] : [amount.currency]))).size <= 1;

export const claimCapRequest = z
	.strictObject({
		regime: z.enum(CAP_REGIMES),
		packages: z
			.array(z.strictObject({ grossMassKg: z.number().positive().max(100_000), affected: z.boolean() }))
			.min(1)
			.max(1000)
			.refine((all) => all.some(({ affected }) => affected), { error: "at least one package must be affected" }),
		loss: z.enum(["total", "partial"]),
		eventDate: civilDate,
		currencyPerSdr: z.number().min(1e-6).max(1e9).optional(),
		agreedSdrPerKg: z.number().min(1e-6).max(1e6).optional(),
		value: money.optional(),
		residualValue: money.optional(),
		freight: money.optional(),
		surveyCost: money.optional(),
		interest: z
			.strictObject({ from: civilDate, to: civilDate })
			.refine(({ from, to }) => to >= from, { path: ["to"], error: "interest cannot end before it begins" })
			.optional(),
		/** Where no amount says it. */
		currency: z
			.string()
			.regex(/^[A-Z]{3}$/)
			.optional(),
	})
	.refine(
		({ value, residualValue, freight, surveyCost, currency }) =>
			oneCurrency([value, residualValue, freight, surveyCost, currency === undefined ? undefined : { currency }]),
		{ path: ["value"], error: "give all amounts in one currency" },
	)
	.refine(({ value, residualValue }) => residualValue === undefined || residualValue.amount <= (value?.amount ?? 0), {
		path: ["residualValue"],
		error: "what is left cannot be worth more than the whole",
	});

export const claimCapResult = z.strictObject({
	capSdr: z.number().nullable(),
	capAmount: computed.nullable(),
	freightRefund: computed.nullable(),
	interestAmount: computed.nullable(),
	total: computed.nullable(),
	shareOfValue: z.number().nullable(),
	massCoveringValueKg: z.number().nullable(),
}) satisfies z.ZodType<ClaimCap>;

const probability = z.number().min(0).max(1);

export const insuranceRequest = z
	.strictObject({
		value: money,
		damageProbability: probability,
		residualValue: money.optional(),
		premium: money.optional(),
		deductible: money.optional(),
		capAmount: money.optional(),
		recoveryProbability: probability.optional(),
		/** Absolute, per major unit. */
		riskAversion: z.number().min(0).max(1e6).optional(),
		/** A number: 0.5 for the square root of wealth, 1 for its logarithm. */
		relativeRiskAversion: z.number().min(0).max(1000).optional(),
		wealth: money.optional(),
		legs: z.number().int().min(1).max(1000).optional(),
	})
	.refine(
		({ value, residualValue, premium, deductible, capAmount, wealth }) =>
			oneCurrency([value, residualValue, premium, deductible, capAmount, wealth]),
		{ path: ["value"], error: "give all amounts in one currency" },
	)
	.refine(
		({ riskAversion, relativeRiskAversion }) => riskAversion === undefined || relativeRiskAversion === undefined,
		{
			path: ["relativeRiskAversion"],
			error: "an aversion is absolute or relative: give one of the two",
		},
	)
	.refine(({ relativeRiskAversion, wealth }) => relativeRiskAversion === undefined || wealth !== undefined, {
		path: ["wealth"],
		error: "a relative aversion needs the wealth that it is relative to",
	})
	.refine(({ value, wealth }) => wealth === undefined || wealth.amount >= value.amount, {
		path: ["wealth"],
		error: "the item is part of the wealth, so the wealth cannot be less than its value",
	})
	.refine(({ value, residualValue }) => residualValue === undefined || residualValue.amount <= value.amount, {
		path: ["residualValue"],
		error: "what is left cannot be worth more than the whole",
	}) satisfies z.ZodType<InsuranceInput>;

export const insuranceResult = z.strictObject({
	expectedLoss: computed,
	breakEvenProbability: z.number().nullable(),
	maximumPremium: computed,
	certaintyEquivalent: computed.nullable(),
	anyDamageProbability: z.number(),
}) satisfies z.ZodType<Insurance>;
