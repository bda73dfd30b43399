/** Checks that every class has: mass, what is seen, starts. The serial number and marks are the record's identity, not readings. */
import type { CheckDefinition } from "./check.ts";
import { CLASSES, MASS_MARGIN, NO_MISS, NOTHING_FOUND } from "./sources.ts";

export const MASS: CheckDefinition = {
	id: "mass",
	kind: "measured",
	nameKey: "checks.mass",
	hintKey: "checks.mass.hint",
	typedUnits: ["g", "kg", "oz", "lb"],
	exposureUnits: [],
	unitSymbol: "kg",
	comparability: "stated-uncertainty",
	betterIs: "neither",
	margin: { absolute: 0.005, percentOfDeparture: 0.5, source: MASS_MARGIN },
	whoCan: "no-instruments",
	cautionKeys: ["checks.caution.static"],
	short: true,
	source: CLASSES,
};

/** A point that is looked at: 1 of 1 is nothing found, 0 of 1 is something found. */
export function visual(id: `visual-${string}`, cautionKeys: readonly string[] = []): CheckDefinition {
	return {
		id,
		kind: "visual",
		nameKey: `checks.${id}`,
		hintKey: `checks.${id}.hint`,
		typedUnits: [],
		exposureUnits: [],
		comparability: "any-bench",
		betterIs: "higher",
		limits: { low: 1, source: NOTHING_FOUND },
		whoCan: "no-instruments",
		cautionKeys,
		short: false,
		source: CLASSES,
	};
}

/** Points seen on any board. */
export const SEEN_ON_ANY_BOARD: readonly CheckDefinition[] = [
	visual("visual-parts", ["checks.caution.loose-part", "checks.caution.static"]),
	visual("visual-cracks"),
	visual("visual-burn-marks", ["checks.caution.stop-sign"]),
	visual("visual-liquid-marks", ["checks.caution.wet"]),
	visual("visual-connectors", ["checks.caution.stop-sign"]),
];

function starts(condition: "cold" | "warm"): CheckDefinition {
	return {
		id: `starts-${condition}`,
		kind: "outcome",
		nameKey: `checks.starts-${condition}`,
		hintKey: `checks.starts-${condition}.hint`,
		typedUnits: [],
		exposureUnits: [],
		condition,
		comparability: "any-bench",
		betterIs: "higher",
		limits: { low: 1, source: NO_MISS },
		whoCan: "no-instruments",
		cautionKeys: ["checks.caution.stop-sign", "checks.caution.supply"],
		short: false,
		source: CLASSES,
	};
}

/** Cold and warm starts are counted apart: a fault may show at one and not at the other. */
export const STARTS: readonly CheckDefinition[] = [starts("cold"), starts("warm")];
