/**
 * Which points mean a stop where they are not as they should be: the board gets no power (again), as if a stop sign
 * itself had been noted. Data beside the checks, so that no check changes by it.
 */
import { TYPED_UNITS, type TypedUnit, toReadingUnit } from "../../calculations/quantities.ts";
import { checksOf } from "./checks.ts";

/**
 * Cracks, burns, liquid and what it left; loose, missing or bent parts and contacts; a drive that clicks or scrapes.
 * Source: our choice, on the careful side: to wait for a word with the shop costs a day, power may cost the board.
 */
export const STOP_POINTS: readonly string[] = [
	"visual-parts",
	"visual-cracks",
	"visual-burn-marks",
	"visual-liquid-marks",
	"visual-liquid-indicator",
	"visual-connectors",
	"visual-edge-contacts",
	"visual-bracket",
	"visual-screws",
	"visual-rattle",
	"visual-latches",
	"visual-socket",
	"visual-thermal-interface",
	"visual-noise",
];

/** A fan that stands still is no damage that power makes worse at once; its own caution stands beside it. Our choice. */
export const POINTS_WITHOUT_STOP: readonly string[] = ["visual-fan"];

/** A reading, drafted or sealed. */
export interface PointReading {
	readonly check: string;
	readonly trials?: number | undefined;
	readonly successes?: number | undefined;
	readonly values?: readonly { readonly value: number; readonly unit: string }[] | undefined;
}

/** Whether what was found means a stop: a point of the list, or a value below the one at which its check says so. */
export function meansStop(reading: PointReading): boolean {
	const { check, trials = 0, successes = 0 } = reading;
	return (STOP_POINTS.includes(check) && successes < trials) || isBelowStop(reading);
}

/** Only the graphics card's list has such values; a test looks whether another gets one. */
const STOPS_BELOW: ReadonlyMap<string, number> = new Map(
	checksOf("graphics-card").flatMap(({ id, stopBelow }) => (stopBelow === undefined ? [] : [[id, stopBelow.value]])),
);

function isBelowStop({ check, values = [] }: PointReading): boolean {
	const stop = STOPS_BELOW.get(check);
	if (stop === undefined) return false;
	return values.some(({ value, unit }) => {
		return Object.hasOwn(TYPED_UNITS, unit) && toReadingUnit(value, unit as TypedUnit).value < stop;
	});
}
