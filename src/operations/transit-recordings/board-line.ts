/** What the rule on boards allows of a response, for a spectrum: the board's deflection limit at every frequency. */
import { STANDARD_GRAVITY_M_PER_S2 } from "../../calculations/quantities.ts";
import { boardStrength } from "../../calculations/strength/board-strength.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import { boardInput } from "../../contract/strength.ts";

export interface BoardLine {
	readonly deflectionM: number;
	/** Null where neither a frequency nor a plate is known: then the line says nothing of this board. */
	readonly naturalFrequencyHz: number | null;
}

/** Of the board as the sealed pack describes it; null where it does not. */
export function boardLineOf(pack: AssessmentView | null): BoardLine | null {
	const described = boardInput.safeParse((pack?.statement.item as { board?: unknown } | undefined)?.board);
	const strength = described.success ? boardStrength(described.data).result : null;
	if (strength === null) return null;
	return { deflectionM: strength.allowableShockDeflectionM, naturalFrequencyHz: strength.naturalFrequencyHz };
}

/** An oscillator of a frequency that swings by a deflection feels (2πf)² times it. */
export function allowedGn({ deflectionM }: Pick<BoardLine, "deflectionM">, frequencyHz: number): number {
	return ((2 * Math.PI * frequencyHz) ** 2 * deflectionM) / STANDARD_GRAVITY_M_PER_S2;
}

/** A spectrum's value between its points, straight on logarithmic axes; null outside. */
export function spectrumAt(
	spectrum: readonly { readonly frequencyHz: number; readonly maximaxGn: number }[],
	frequencyHz: number,
): number | null {
	const after = spectrum.findIndex((point) => point.frequencyHz >= frequencyHz);
	const [left, right] = [spectrum[after - 1], spectrum[after]];
	if (right?.frequencyHz === frequencyHz) return right.maximaxGn;
	if (left === undefined || right === undefined) return null;
	const share = Math.log(frequencyHz / left.frequencyHz) / Math.log(right.frequencyHz / left.frequencyHz);
	return left.maximaxGn * (right.maximaxGn / left.maximaxGn) ** share;
}
