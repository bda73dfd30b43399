/** A random vibration profile: acceleration density over frequency, straight between its points on logarithmic axes. */
import type { Source } from "../sources.ts";

export interface ProfilePoint {
	readonly frequencyHz: number;
	readonly gn2PerHz: number;
}

export interface VibrationProfile {
	readonly id: string;
	readonly points: readonly ProfilePoint[];
	/** The overall level that the source states; null where it states none. */
	readonly statedGnRms: number | null;
	readonly source: Source;
}

/** Density at a frequency, gₙ²/Hz; 0 outside the profile. */
export function densityAt(points: readonly ProfilePoint[], frequencyHz: number): number {
	for (let index = 1; index < points.length; index += 1) {
		const [low, high] = [points[index - 1], points[index]];
		if (low === undefined || high === undefined || !(frequencyHz >= low.frequencyHz && frequencyHz <= high.frequencyHz))
			continue;
		return low.gn2PerHz * (frequencyHz / low.frequencyHz) ** slope(low, high);
	}
	return 0;
}

/** Mean square of the profile, gₙ², in closed form; the ratio form, since the plain powers overflow on steep steps. */
export function meanSquareGn2(points: readonly ProfilePoint[]): number {
	let total = 0;
	for (let index = 1; index < points.length; index += 1) {
		const [low, high] = [points[index - 1], points[index]];
		if (low === undefined || high === undefined) continue;
		const [n, ratio] = [slope(low, high), high.frequencyHz / low.frequencyHz];
		const width = Math.abs(n + 1) < 1e-9 ? Math.log(ratio) : (ratio ** (n + 1) - 1) / (n + 1);
		total += low.gn2PerHz * low.frequencyHz * width;
	}
	return total;
}

/** ∫ density · weight(f) df over the profile, by Simpson's rule on the logarithm of frequency. */
export function weightedMeanSquareGn2(
	points: readonly ProfilePoint[],
	weight: (frequencyHz: number) => number,
): number {
	let total = 0;
	for (let index = 1; index < points.length; index += 1) {
		const [low, high] = [points[index - 1], points[index]];
		if (low === undefined || high === undefined) continue;
		const [from, to, n] = [Math.log(low.frequencyHz), Math.log(high.frequencyHz), slope(low, high)];
		const steps = 2 * Math.ceil((to - from) * STEPS_PER_E);
		const h = (to - from) / steps;
		for (let step = 0; step <= steps; step += 1) {
			const frequency = Math.exp(from + step * h);
			const value = low.gn2PerHz * (frequency / low.frequencyHz) ** n * weight(frequency) * frequency;
			total += (value * h * (step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2)) / 3;
		}
	}
	return total;
}

/** Fine enough for resonances of Q 50 to six digits. */
const STEPS_PER_E = 1500;

function slope(low: ProfilePoint, high: ProfilePoint): number {
	return Math.log(high.gn2PerHz / low.gn2PerHz) / Math.log(high.frequencyHz / low.frequencyHz);
}
