/** `fault-origin`: what findings support, over a closed list of origins. */
import { z } from "zod";
import { ORIGINS } from "../calculations/origin/origins.ts";
import { money } from "./common.ts";

const origin = z.enum(ORIGINS);
const probability = z.number().min(0).max(1);
const probabilities = z.partialRecord(origin, probability);
const findingId = z
	.string()
	.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
	.max(60);

export const faultOriginRequest = z
	.strictObject({
		findings: z
			.array(
				z.strictObject({
					id: findingId,
					state: z.enum(["present", "absent", "unknown"]),
					/** Findings of one group tell of one fact and count once; without it the rule's own group holds. */
					group: findingId.optional(),
				}),
			)
			.max(100),
		/** Finding → origin → probability that the finding is present; every finding names the same origins. */
		likelihoods: z.record(findingId, probabilities).optional(),
		/** How many comparable cases the likelihoods were counted from; without it they are judgement. */
		countedCases: z.number().int().min(1).max(1e6).optional(),
		/** One party's own; they add up to 1 and name the origins of the likelihoods. */
		priors: probabilities.optional(),
		tests: z
			.array(
				z.strictObject({
					id: findingId,
					/** Probability of a positive result under each origin. */
					outcomes: probabilities,
					cost: z.union([z.number().min(1e-6).max(1e9), money]).optional(),
					destructive: z.boolean(),
					breaksCustody: z.boolean(),
				}),
			)
			.max(50)
			.optional(),
	})
	.superRefine((request, context) => {
		const fault = (path: (string | number)[], message: string) => context.addIssue({ code: "custom", path, message });
		request.findings.forEach(({ id }, index) => {
			if (request.findings.findIndex((other) => other.id === id) < index)
				fault(["findings", index, "id"], "given twice");
		});
		const tables = Object.entries(request.likelihoods ?? {});
		const named = new Set(Object.keys(tables[0]?.[1] ?? request.priors ?? {}));
		for (const [finding, table] of tables) {
			if (!sameNames(table, named)) fault(["likelihoods", finding], "every finding names the same origins");
			if (Object.keys(table).length < 2) fault(["likelihoods", finding], "at least two origins are told apart");
		}
		if (request.priors !== undefined) {
			const total = Object.values(request.priors).reduce((sum, prior) => sum + prior, 0);
			if (!(Math.abs(total - 1) <= 1e-6)) fault(["priors"], "the priors add up to 1");
			if (!sameNames(request.priors, named)) fault(["priors"], "priors and likelihoods name the same origins");
		}
	});
export type FaultOriginRequest = z.infer<typeof faultOriginRequest>;

function sameNames(table: Readonly<Record<string, unknown>>, named: ReadonlySet<string>): boolean {
	const names = Object.keys(table);
	return names.length === named.size && names.every((name) => named.has(name));
}

const ids = z.array(z.string());
export const faultOriginResult = z.strictObject({
	/** Best supported first. */
	origins: z.array(
		z.strictObject({
			id: origin,
			support: z.enum(["supports", "does-not-support", "neutral", "not-tested"]),
			for: ids,
			against: ids,
			/** Findings that would bear on it and were not made. */
			missing: ids,
			/** Facts, overlapping findings counted once. */
			countedFor: z.number().int(),
			countedAgainst: z.number().int(),
			/** P(findings | this) over P(findings | others); null where the others leave no probability. Only from numbers given. */
			likelihoodRatio: z.number().nullable().optional(),
			scale: z.strictObject({ name: z.string(), word: z.string() }).optional(),
			/** Only from priors given. */
			posteriorProbability: z.number().optional(),
			why: z.string(),
		}),
	),
	nextTests: z.array(
		z.strictObject({
			id: z.string(),
			destructive: z.boolean(),
			breaksCustody: z.boolean(),
			informationBits: z.number().optional(),
			bitsPerCost: z.number().optional(),
			why: z.string(),
		}),
	),
	turnsOn: z.string().nullable(),
});
