/** An impact after a fall: velocities, and the peak of a linear cushion. */
import { assessed, type Judged } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { MECHANICS } from "./pulse.ts";

export interface ImpactInput {
	/** One of the two. */
	readonly dropHeightM?: number | undefined;
	readonly freeFallTimeS?: number | undefined;
	/** Rebound velocity over impact velocity, 0..1. */
	readonly restitution: number;
	/** Of the item on a linear, undamped cushion. */
	readonly naturalFrequencyHz?: number | undefined;
}

export interface Impact {
	readonly dropHeightM: number;
	readonly impactVelocityMPerS: number;
	readonly velocityChangeMPerS: number;
	/** Net acceleration: G = 2πf·√(2h/g); null without a frequency. */
	readonly peakGn: number | null;
	readonly deflectionM: number | null;
	/** Half a cycle. */
	readonly pulseDurationMs: number | null;
}

export function impact(input: ImpactInput): Judged<Impact> {
	const g = STANDARD_GRAVITY_M_PER_S2;
	const dropHeightM = input.dropHeightM ?? (g * (input.freeFallTimeS ?? Number.NaN) ** 2) / 2;
	const impactVelocityMPerS = Math.sqrt(2 * g * dropHeightM);
	const frequency = input.naturalFrequencyHz;
	const angular = frequency === undefined ? null : 2 * Math.PI * frequency;
	return assessed(
		{
			dropHeightM,
			impactVelocityMPerS,
			velocityChangeMPerS: (1 + input.restitution) * impactVelocityMPerS,
			peakGn: angular === null ? null : (angular * impactVelocityMPerS) / g,
			deflectionM: angular === null ? null : impactVelocityMPerS / angular,
			pulseDurationMs: frequency === undefined ? null : 1000 / (2 * frequency),
		},
		{ sources: [MECHANICS] },
	);
}
