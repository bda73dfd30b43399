/** `impact`, `pulse`, `drop-height`. */
import { z } from "zod";
import type { DropHeight } from "../calculations/handling/drop-height.ts";
import type { ImpactInput } from "../calculations/shock/impact.ts";
import type { PulseInput } from "../calculations/shock/pulse.ts";
import { STANDINGS } from "../calculations/sources.ts";

export const impactRequest = z
	.strictObject({
		dropHeightM: z.number().min(0).max(1000).optional(),
		freeFallTimeS: z.number().min(0).max(20).optional(),
		restitution: z.number().min(0).max(1),
		naturalFrequencyHz: z.number().min(0.01).max(100_000).optional(),
	})
	.refine((input) => (input.dropHeightM === undefined) !== (input.freeFallTimeS === undefined), {
		path: ["dropHeightM"],
		error: "give either dropHeightM or freeFallTimeS",
	}) satisfies z.ZodType<ImpactInput>;

const number = z.number().nullable();
export const impactResult = z.strictObject({
	dropHeightM: z.number(),
	impactVelocityMPerS: z.number(),
	velocityChangeMPerS: z.number(),
	peakGn: number,
	deflectionM: number,
	pulseDurationMs: number,
});

export const pulseRequest = z
	.strictObject({
		shape: z.enum(["half-sine", "terminal-sawtooth", "triangle", "versine", "trapezoid", "points"]),
		peakGn: z.number().positive().max(1e6).optional(),
		durationMs: z.number().positive().max(1e5).optional(),
		rampShare: z.number().min(0).max(0.5).optional(),
		points: z
			.array(z.strictObject({ timeMs: z.number().min(-1e6).max(1e6), gn: z.number().min(-1e6).max(1e6) }))
			.min(2)
			.max(10_000)
			.optional(),
	})
	.refine((input) => input.shape !== "points" || input.points !== undefined, {
		path: ["points"],
		error: "the shape `points` needs `points`",
	})
	.refine((input) => input.shape === "points" || (input.peakGn !== undefined && input.durationMs !== undefined), {
		path: ["shape"],
		error: "every shape but `points` needs `peakGn` and `durationMs`",
	})
	.refine((input) => input.shape !== "trapezoid" || input.rampShare !== undefined, {
		path: ["rampShare"],
		error: "a trapezoid needs `rampShare`, the share of each ramp in the duration",
	}) satisfies z.ZodType<PulseInput>;

export const pulseResult = z.strictObject({
	velocityChangeMPerS: z.number(),
	equivalentDropHeightM: z.strictObject({
		restitution0: z.number(),
		restitutionHalf: z.number(),
		restitution1: z.number(),
	}),
});

export const DROP_BASES = [
	"ista-1a",
	"ista-2a",
	"express-carrier",
	"desktop-board-packaged",
	"mil-std-810-transit",
	"astm-d4169-a-1",
	"astm-d4169-a-2",
	"astm-d4169-a-3",
	"mil-hdbk-304",
	"din-55439",
	"jis-z-0200",
	"handling-thrown",
	"our-choice-762",
	"our-choice-914",
] as const;
export const dropBasis = z.enum(DROP_BASES);

export const dropHeightRequest = z.strictObject({
	massKg: z.number().positive().max(100_000),
	largestDimensionM: z.number().positive().max(100).optional(),
	basis: dropBasis.optional(),
	tripCoverage: z.number().gt(0).lt(1).optional(),
});

export const dropHeightResult = z.strictObject({
	dropHeightM: z.number(),
	drops: z.array(z.strictObject({ orientation: z.string(), dropHeightM: z.number() })),
	alternatives: z.array(z.strictObject({ basis: z.string(), dropHeightM: z.number(), standing: z.enum(STANDINGS) })),
	measured: z.array(
		z.strictObject({
			id: z.string(),
			service: z.string(),
			p95M: number,
			maxM: z.number(),
			dropsPerTrip: number,
			percentilePerDrop: number,
		}),
	),
}) satisfies z.ZodType<DropHeight>;
