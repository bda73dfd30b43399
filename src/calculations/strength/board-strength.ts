/**
 * How much shock a board takes before a component's joints are in danger: the deflection that the rule allows against the
 * one that the board's resonance makes of a shock. The rule's constants hold for inches; everything is converted here.
 */
import { assessed, type Judged, sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import { halfSineAmplification } from "./half-sine-response.ts";
import { type Plate, plateFrequencyHz } from "./plate-frequency.ts";

/** Factor C by kind of component. Source: published, the book's table as quoted in two independent programs. */
export const COMPONENT_FACTORS = {
	dip: 1,
	"dip-side-brazed": 1.26,
	"pin-grid-two-rows": 1.26,
	"pin-grid-perimeter": 1,
	"leadless-chip-carrier": 2.25,
	"leaded-chip-carrier": 1,
	"ball-grid-array": 1.75,
	"axial-leads": 0.75,
	"fine-pitch": 0.75,
} as const;
export type ComponentKind = keyof typeof COMPONENT_FACTORS;

/** Factor r by place on a board held on its four sides. Source: the same. */
const POSITION_FACTORS = { centre: 1, "quarter-edge": Math.SQRT1_2, "quarter-quarter": 0.5 } as const;

export interface BoardComponent {
	/** One of the two. */
	readonly kind?: ComponentKind | undefined;
	readonly factor?: number | undefined;
	readonly lengthM: number;
	readonly position: keyof typeof POSITION_FACTORS;
	/** The board's edge parallel to the component. */
	readonly boardEdgeM: number;
}

export interface Board {
	readonly component: BoardComponent;
	readonly boardThicknessM: number;
	readonly plate?: Plate | undefined;
	/** Measured; goes before that of the plate. */
	readonly naturalFrequencyHz?: number | undefined;
	/** Response over the shock: 1 to 2 for a half sine. */
	readonly amplification?: number | undefined;
	/** Of a half-sine shock, from which the amplification follows where none is given. */
	readonly pulseDurationMs?: number | undefined;
}

export interface BoardStrengthInput extends Board {
	readonly shockGn?: number | undefined;
}

export interface BoardStrength {
	readonly allowableVibrationDeflectionM: number;
	readonly allowableShockDeflectionM: number;
	/** Null where neither a frequency nor a plate is given. */
	readonly naturalFrequencyHz: number | null;
	/** From which frequency on the board takes the shock asked for; null without one. */
	readonly requiredFrequencyHz: number | null;
	readonly responseDeflectionM: number | null;
	/** At the natural frequency. */
	readonly allowableShockGn: number | null;
	readonly allowableShockByFrequency: readonly { readonly frequencyHz: number; readonly allowableShockGn: number }[];
}

const INCH_M = 0.0254;
/** Three-sigma deflection for 10 million cycles, and six times that for a shock. Source: published, the book's equations as quoted by two programs that agree. */
const VIBRATION_CONSTANT = 0.00022;
const SHOCK_CONSTANT = 0.00132;
/** Deflection of one gₙ at 1 Hz, inches. Source: the same, equation 11.24 (exact: 9.780). */
const DEFLECTION_AT_1_HZ = 9.8;
/** Source: our choice, from the half-sine response: 1.50 at a damping ratio of 0.1 (figure 11.8, by eye). */
const DEFAULT_AMPLIFICATION = 1.5;
const FREQUENCIES_HZ = [60, 100, 150, 200];

export const BOARD_RULE = cite(
	"vibration-analysis-book",
	"deflection limit 0.00022 and 0.00132·B/(C·h·r·√L); Z = 9.8·G·A/f²; plate frequencies, figures 6.14 to 6.16",
	"published",
);
const CRITICISM = cite("board-rule-criticism", "valid for thin, large boards with small parts", "published");
const AMPLIFICATION = cite("our-choice", "amplification of 1.5 where none is given", "our-choice");

/** A screen and no more: it loses validity for stiff boards with large parts, which is what a graphics card is. */
export function boardStrength(input: BoardStrengthInput): Judged<BoardStrength> {
	const { component, boardThicknessM, plate, shockGn } = input;
	const amplificationAt = (frequencyHz: number | null) =>
		input.amplification ??
		(input.pulseDurationMs === undefined || frequencyHz === null
			? DEFAULT_AMPLIFICATION
			: halfSineAmplification((2 * frequencyHz * input.pulseDurationMs) / 1000));
	const factor = component.factor ?? COMPONENT_FACTORS[component.kind ?? "dip"];
	const shape =
		component.boardEdgeM /
		INCH_M /
		(factor *
			(boardThicknessM / INCH_M) *
			POSITION_FACTORS[component.position] *
			Math.sqrt(component.lengthM / INCH_M));
	const shockLimitInch = SHOCK_CONSTANT * shape;
	const frequency = input.naturalFrequencyHz ?? (plate === undefined ? null : plateFrequencyHz(plate, boardThicknessM));
	const amplification = amplificationAt(frequency);
	const allowable = (frequencyHz: number) =>
		(shockLimitInch * frequencyHz ** 2) / (DEFLECTION_AT_1_HZ * amplificationAt(frequencyHz));
	return assessed<BoardStrength>(
		{
			allowableVibrationDeflectionM: VIBRATION_CONSTANT * shape * INCH_M,
			allowableShockDeflectionM: shockLimitInch * INCH_M,
			naturalFrequencyHz: frequency,
			requiredFrequencyHz:
				shockGn === undefined ? null : Math.sqrt((DEFLECTION_AT_1_HZ * shockGn * amplification) / shockLimitInch),
			responseDeflectionM:
				shockGn === undefined || frequency === null
					? null
					: ((DEFLECTION_AT_1_HZ * shockGn * amplification) / frequency ** 2) * INCH_M,
			allowableShockGn: frequency === null ? null : allowable(frequency),
			allowableShockByFrequency: FREQUENCIES_HZ.map((frequencyHz) => ({
				frequencyHz,
				allowableShockGn: allowable(frequencyHz),
			})),
		},
		{
			notes: [
				sentence("strength.screen"),
				...(frequency === null ? [sentence("strength.no-frequency")] : []),
				...(plate !== undefined && input.naturalFrequencyHz === undefined ? [sentence("strength.plate")] : []),
			],
			sources: [
				BOARD_RULE,
				CRITICISM,
				...(input.amplification === undefined && input.pulseDurationMs === undefined ? [AMPLIFICATION] : []),
			],
		},
	);
}
