/** The response of a board to random vibration, and what a cushion lets through. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite } from "../sources.ts";
import { densityAt, meanSquareGn2, type VibrationProfile, weightedMeanSquareGn2 } from "./random-profile.ts";

export interface VibrationInput {
	readonly profile: VibrationProfile;
	readonly naturalFrequencyHz?: number | undefined;
	/** Amplification at resonance; √f where it is not given. */
	readonly q?: number | undefined;
	readonly cushionFrequencyHz?: number | undefined;
	/** Damping over critical damping. */
	readonly cushionDampingRatio?: number | undefined;
}

export interface Vibration {
	readonly overallGnRms: number;
	/** Miles: √(π/2·f·Q·P); null without a frequency, and where the profile has nothing at it. */
	readonly responseGnRms: number | null;
	/** Integral over the profile's band. */
	readonly responseBandGnRms: number | null;
	readonly responseDeflectionRmsM: number | null;
	/** Of the cushion at the natural frequency; null without both. */
	readonly transmissibility: number | null;
}

/** Damping ratio of a foam cushion where none is given. Source: our choice. */
export const CUSHION_DAMPING_RATIO = 0.1;
/** Miles' form is for a single, lightly damped resonance. Source: published, notes on the book's chapter 9. */
const LEAST_Q_FOR_MILES = 10;

const METHOD = cite(
	"vibration-analysis-book",
	"Grms = √(π/2·f·Q·P), single resonance, Q over 10; Q = √f (equations 8.10, 9.52); Z = g·Grms/(2πf)²",
	"published",
);
const DAMPING = cite("our-choice", "damping ratio of 0.1 for a cushion where none is given", "our-choice");

/** |T| of a mass on a spring with viscous damping, base moved: √((1 + (2zr)²)/((1 − r²)² + (2zr)²)), r = f/fₙ. */
export function transmissibilityAt(ratio: number, dampingRatio: number): number {
	const damping = (2 * dampingRatio * ratio) ** 2;
	return Math.sqrt((1 + damping) / ((1 - ratio ** 2) ** 2 + damping));
}

export function vibration(input: VibrationInput): Judged<Vibration> {
	const { profile, naturalFrequencyHz: frequency, cushionFrequencyHz } = input;
	const { points } = profile;
	const rising = points.every(
		(point, index) => index === 0 || point.frequencyHz > (points[index - 1]?.frequencyHz ?? 0),
	);
	if (!rising)
		return notAssessed("points-not-rising", sentence("vibration.points-not-rising"), { sources: [profile.source] });
	const overallGnRms = Math.sqrt(meanSquareGn2(points));
	const support = {
		sources: [
			profile.source,
			METHOD,
			...(cushionFrequencyHz !== undefined && input.cushionDampingRatio === undefined ? [DAMPING] : []),
		],
	};
	if (frequency === undefined)
		return assessed<Vibration>(
			{
				overallGnRms,
				responseGnRms: null,
				responseBandGnRms: null,
				responseDeflectionRmsM: null,
				transmissibility: null,
			},
			{ ...support, notes: [sentence("vibration.profile-only")] },
		);
	const q = input.q ?? Math.sqrt(frequency);
	const inside = frequency >= (points[0]?.frequencyHz ?? 0) && frequency <= (points.at(-1)?.frequencyHz ?? 0);
	const responseGnRms = inside ? Math.sqrt((Math.PI / 2) * frequency * q * densityAt(points, frequency)) : null;
	const band = Math.sqrt(weightedMeanSquareGn2(points, (at) => transmissibilityAt(at / frequency, 1 / (2 * q)) ** 2));
	return assessed<Vibration>(
		{
			overallGnRms,
			responseGnRms,
			responseBandGnRms: band,
			responseDeflectionRmsM: (STANDARD_GRAVITY_M_PER_S2 * (responseGnRms ?? band)) / (2 * Math.PI * frequency) ** 2,
			transmissibility:
				cushionFrequencyHz === undefined
					? null
					: transmissibilityAt(frequency / cushionFrequencyHz, input.cushionDampingRatio ?? CUSHION_DAMPING_RATIO),
		},
		{
			...support,
			within: inside,
			notes: [
				...(inside ? [] : [sentence("vibration.outside-profile")]),
				...(q < LEAST_Q_FOR_MILES ? [sentence("vibration.low-q", { q })] : []),
				sentence("vibration.not-damage"),
			],
		},
	);
}
