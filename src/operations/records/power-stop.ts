/** Why a board must not get power (again), from a record drafted or sealed. */
import { meansStop, type PointReading } from "../../catalogue/checks/stop-points.ts";

/** The parts of a record that it is read from. */
export interface PowerFacts {
	readonly firstPowerOn?:
		| {
				readonly stopSigns?: readonly string[] | undefined;
				readonly wetnessSeen?: boolean | undefined;
				readonly firstAttemptEver?: boolean | undefined;
		  }
		| undefined;
	readonly readings?: readonly PointReading[] | undefined;
}

/** A stop sign, noted as one or by a check that means one; or wetness. Null where none of it was noted. */
export function powerStop(facts: PowerFacts): "sign" | "cell" | "wet" | null {
	const signs = facts.firstPowerOn?.stopSigns ?? [];
	if (signs.includes("swollen-cell")) return "cell";
	if (signs.length > 0 || checksThatStop(facts).length > 0) return "sign";
	return facts.firstPowerOn?.wetnessSeen === true ? "wet" : null;
}

/**
 * Whether it is on record that the board had power: before the first try told of, or when it was tried how it starts. That
 * a try is the first says nothing, since it may be answered of one that never came.
 */
export function hadPower({ firstPowerOn, readings = [] }: PowerFacts): boolean {
	const wasTried = ({ check, trials = 0 }: PointReading) => check.startsWith("starts-") && trials > 0;
	return firstPowerOn?.firstAttemptEver === false || readings.some(wasTried);
}

/** Ids of the checks whose results mean a stop. */
export function checksThatStop({ readings = [] }: PowerFacts): readonly string[] {
	return [...new Set(readings.filter(meansStop).map(({ check }) => check))];
}
