/** What a claim about a leg starts from, and the dates that follow. */
import { z } from "zod";
import { DAMAGES, REGIMES } from "../calculations/claims/claim-rule.ts";
import { REGIME_QUESTIONS } from "../calculations/claims/suggest-regime.ts";
import { STANDINGS } from "../calculations/sources.ts";
import { OUTER_DAMAGE } from "../catalogue/codes.ts";
import { claimPeriodsResult } from "./claims.ts";
import { civilDate, country, id, money } from "./common.ts";

/** Dates that no record holds. */
export const NOTED_DATES = [
	"discovered",
	"placedAtDisposal",
	"jointlyChecked",
	"agreedLimit",
	"noticeSent",
	"noticeReceived",
	"claimed",
	"rejected",
	"documentsReturned",
] as const;
const optionalDate = civilDate.optional();
const dates = z
	.strictObject(
		Object.fromEntries(NOTED_DATES.map((name) => [name, optionalDate])) as Record<
			(typeof NOTED_DATES)[number],
			typeof optionalDate
		>,
	)
	.refine(({ claimed, rejected }) => claimed === undefined || rejected === undefined || rejected >= claimed, {
		path: ["rejected"],
		error: "a claim cannot be rejected before it was made",
	})
	.refine(({ claimed, documentsReturned: back }) => claimed === undefined || back === undefined || back >= claimed, {
		path: ["documentsReturned"],
		error: "documents cannot come back before the claim was made",
	})
	.refine(({ noticeSent: sent, noticeReceived: got }) => sent === undefined || got === undefined || got >= sent, {
		path: ["noticeReceived"],
		error: "a notice cannot be received before it was sent",
	});

/** All of it is the user's choice or note; what is left out is suggested or not known. */
export const legClaimInput = z.strictObject({
	regime: z.enum(REGIMES).optional(),
	byPost: z.boolean().optional(),
	airLeg: z.boolean().optional(),
	damage: z.enum(DAMAGES).optional(),
	wilful: z.boolean().optional(),
	/** Units of the value's currency for one special drawing right. */
	currencyPerSdr: z.number().min(1e-6).max(1e9).optional(),
	dates: dates.optional(),
	/** On which the carrier, or someone neutral, can inspect the item and its packaging. */
	inspectionDates: z.array(civilDate).max(10).optional(),
	holidays: z
		.strictObject({
			country,
			region: z
				.string()
				.regex(/^[A-Za-z0-9]{1,5}$/)
				.optional(),
			add: z.array(civilDate).max(400).optional(),
			remove: z.array(civilDate).max(400).optional(),
		})
		.optional(),
});
export type LegClaimInput = z.infer<typeof legClaimInput>;

const date = z.string();
const regime = z.enum(REGIMES).nullable();
const period = claimPeriodsResult.shape.periods.element.extend({
	/** Days from today, local to the place of delivery, to the safe date; below 0 once it has passed. */
	leftDays: z.number().int().nullable(),
});
const computed = z.strictObject({ amount: z.number(), currency: z.string() });
/** What the carrier pays at most, and what that is of the value; null what cannot be said. */
export const legCover = z.strictObject({
	/** Gross mass of the parcel. */
	massKg: z.number().nullable(),
	value: money.nullable(),
	declaredValue: money.nullable(),
	insuredValue: money.nullable(),
	capSdr: z.number().nullable(),
	capAmount: computed.nullable(),
	shareOfValue: z.number().nullable(),
	massCoveringValueKg: z.number().nullable(),
	source: z.strictObject({ document: z.string(), locator: z.string(), standing: z.enum(STANDINGS) }).nullable(),
	/** Of damage on one leg, on average, at the measured rate: what insuring costs above that is the insurer's. */
	expectedLoss: computed.nullable(),
	/** By how much the probability of damage must fall for better packing at this cost to be worth it. */
	packing: z.strictObject({ cost: computed, probabilityDrop: z.number() }).nullable(),
	notes: z.array(z.string()),
});
export type LegCover = z.infer<typeof legCover>;

export const legClaimView = z.strictObject({
	consignmentId: id("con"),
	orderId: id("ord"),
	/** As it was noted. */
	noted: legClaimInput,
	suggestion: z.strictObject({
		regime,
		steps: z.array(z.strictObject({ question: z.enum(REGIME_QUESTIONS), answer: z.enum(["yes", "no", "open"]) })),
	}),
	/** The chosen one, else the suggested one. */
	regime,
	regimeBasis: z.enum(["chosen", "suggested"]),
	outerDamage: z.enum([...OUTER_DAMAGE, "not-recorded"]),
	/**
	 * `in-question` where something was noted for a claim, the outside was damaged or the item arrived worse than it left; `nothing-seen`
	 * where an arrival is sealed and says none of it.
	 */
	question: z.enum(["in-question", "nothing-seen", "open"]),
	damage: z.enum(DAMAGES),
	damageBasis: z.enum(["chosen", "suggested"]),
	consignorId: id("pty"),
	consigneeId: id("pty"),
	/** Party that makes the contract with the carrier, by the terms of the order. */
	contractorId: id("pty"),
	/** By the text of the regime; null where none was read. */
	claimants: z
		.strictObject({
			who: z.enum(["sender-or-consignee", "sender-unless-waived"]),
			document: z.string(),
			locator: z.string(),
			standing: z.enum(STANDINGS),
		})
		.nullable(),
	events: z.record(z.string(), date),
	/** Null where no holidays of the country are known. */
	holidays: z
		.strictObject({
			country,
			region: z.string().nullable(),
			dates: z.array(date),
			doubtful: z.array(date),
			basis: z.enum(["chosen", "suggested"]),
		})
		.nullable(),
	today: date,
	periods: z.array(period),
	/**
	 * Whether damage could be seen at delivery is often not settled: what else applies by the other answer. Null where it is
	 * neither, or a regime makes no difference.
	 */
	otherReading: z.strictObject({ damage: z.enum(DAMAGES), periods: z.array(period) }).nullable(),
	/** The period whose safe date comes next, or passed last; null where no date is known. */
	nextRuleId: z.string().nullable(),
	/** The rules of HGB § 438 may be used as well (§ 452b(1)). */
	germanMultimodal: z.boolean(),
	notes: z.array(z.string()),
	cautions: z.array(z.string()),
	cover: legCover,
	version: z.number().int(),
});
export type LegClaimView = z.infer<typeof legClaimView>;
