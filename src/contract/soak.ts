/** `soak`: what clean hours and starts exclude, and how long to go on. */
import { z } from "zod";
import { money } from "./common.ts";

/** An amount of money, or its bare number; both costs of one request in the same way and currency. */
const cost = z.union([z.number().min(0).max(1e9), money]);
const probability = z
	.number()
	.min(1e-9)
	.max(1 - 1e-9);

export const soakRequest = z
	.strictObject({
		hours: z
			.number()
			.min(0)
			.max(1e6)
			.refine((hours) => hours === 0 || hours >= 1e-6, { error: "none, or at least a millionth of an hour" }),
		failures: z.number().int().min(0).max(10_000),
		coldStarts: z.number().int().min(0).max(100_000),
		coldStartFailures: z.number().int().min(0).max(100_000),
		confidence: z.number().min(0.5).max(0.9999),
		meanTimeToShowH: z.number().min(1e-6).max(1e6).optional(),
		/** How often the fault showed, and in how many hours, when it was reproduced before the work. */
		reproduced: z
			.strictObject({ shows: z.number().int().min(1).max(10_000), hours: z.number().min(1e-6).max(1e6) })
			.optional(),
		startFaultProbability: z.number().min(1e-5).lt(1).optional(),
		priorProbability: probability.optional(),
		targetProbability: probability.optional(),
		costPerH: cost.optional(),
		costOfReturn: cost.optional(),
	})
	.superRefine((request, context) => {
		const fault = (path: string, message: string) => context.addIssue({ code: "custom", path: [path], message });
		if (request.coldStartFailures > request.coldStarts) {
			fault("coldStartFailures", "no more failed starts than starts");
		}
		if (request.hours === 0 && request.failures > 0) fault("failures", "a failure under load needs hours under load");
		if (request.meanTimeToShowH !== undefined && request.reproduced !== undefined) {
			fault("reproduced", "give the mean time or what was counted, not both");
		}
		const { costPerH, costOfReturn } = request;
		if (currencyOf(costPerH) !== currencyOf(costOfReturn) && costPerH !== undefined && costOfReturn !== undefined) {
			fault("costOfReturn", "both costs stand in one currency");
		}
		if ((amountOf(costPerH) ?? 1) < 1e-6) fault("costPerH", "an hour that costs nothing has no best length");
	});
export type SoakRequest = z.infer<typeof soakRequest>;

function currencyOf(value: z.infer<typeof cost> | undefined): string | undefined {
	return typeof value === "object" ? value.currency : undefined;
}

/** The number of an amount. */
export function amountOf(value: z.infer<typeof cost> | undefined): number | undefined {
	return typeof value === "object" ? value.amount : value;
}

const some = z.number().nullable();
export const soakResult = z.strictObject({
	rateUpperBoundPerH: some,
	meanTimeLowerBoundH: some,
	escapeProbability: some,
	coldStartFailureUpperBound: some,
	hoursForConfidence: some,
	hoursForTarget: some,
	hoursEconomic: some,
	coldStartsNeeded: some,
	posteriorProbability: some,
	meanTimeToShowH: some,
	meanTimeToShowUpperH: some,
	/** What this excludes and does not exclude, in words. */
	says: z.array(z.string()),
});
