/** Velocity change of a shock pulse, and the drops that would make it. Elementary mechanics. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite } from "../sources.ts";

export interface PulseInput {
	readonly shape: "half-sine" | "terminal-sawtooth" | "triangle" | "versine" | "trapezoid" | "points";
	readonly peakGn?: number | undefined;
	readonly durationMs?: number | undefined;
	/** Trapezoid: each ramp's share of the duration, 0 to 0.5. */
	readonly rampShare?: number | undefined;
	/** Points: acceleration over time, straight between them, in rising time. */
	readonly points?: readonly { readonly timeMs: number; readonly gn: number }[] | undefined;
}

export interface EquivalentDropHeightM {
	readonly restitution0: number;
	readonly restitutionHalf: number;
	readonly restitution1: number;
}

export interface Pulse {
	readonly velocityChangeMPerS: number;
	/** The drop is not known without the rebound: a range, never one height. */
	readonly equivalentDropHeightM: EquivalentDropHeightM;
}

export const MECHANICS = cite(
	"mechanics",
	"v = √(2gh), Δv = (1+e)v, half sine Δv = 2AT/π, h = (Δv/(1+e))²/(2g)",
	"published",
);

/** Area of each shape as a share of peak × duration. */
const AREA_SHARE = { "half-sine": 2 / Math.PI, "terminal-sawtooth": 1 / 2, triangle: 1 / 2, versine: 1 / 2 } as const;

export function pulse(input: PulseInput): Judged<Pulse> {
	const areaGnMs = areaOf(input);
	if (areaGnMs === null)
		return notAssessed("points-not-rising", sentence("shock.points-not-rising"), { sources: [MECHANICS] });
	const velocityChangeMPerS = (areaGnMs / 1000) * STANDARD_GRAVITY_M_PER_S2;
	return assessed(
		{ velocityChangeMPerS, equivalentDropHeightM: equivalentDropHeights(velocityChangeMPerS) },
		{ sources: [MECHANICS] },
	);
}

/** Drops onto a rigid floor that would change the velocity by this much, for no, half and full rebound. */
export function equivalentDropHeights(velocityChangeMPerS: number): EquivalentDropHeightM {
	const at = (restitution: number) => (velocityChangeMPerS / (1 + restitution)) ** 2 / (2 * STANDARD_GRAVITY_M_PER_S2);
	return { restitution0: at(0), restitutionHalf: at(0.5), restitution1: at(1) };
}

function areaOf(input: PulseInput): number | null {
	const { shape, points = [], peakGn = 0, durationMs = 0 } = input;
	if (shape === "points") {
		let area = 0;
		for (let index = 1; index < points.length; index += 1) {
			const [before, after] = [points[index - 1], points[index]];
			if (before === undefined || after === undefined || !(after.timeMs > before.timeMs)) return null;
			area += ((before.gn + after.gn) / 2) * (after.timeMs - before.timeMs);
		}
		return Math.abs(area);
	}
	if (shape === "trapezoid") return peakGn * durationMs * (1 - (input.rampShare ?? Number.NaN));
	return AREA_SHARE[shape] * peakGn * durationMs;
}
