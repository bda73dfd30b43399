/** Checks that every class has: mass, what is seen, starts. The serial number and marks are the record's identity, not readings. */

import { measured, tried } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import {
	CLASSES,
	DIODE_MARGIN,
	DURATION,
	FLATNESS,
	MASS_MARGIN,
	NO_MISS,
	NOTHING_FOUND,
	SOAK,
	STARTS_WANTED,
	TEMPERATURE_MARGIN,
} from "./sources.ts";

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
		duration: { leastMinutes: condition === "cold" ? 100 : 10, source: STARTS_WANTED },
		stopKey: "checks.stop.sign",
		short: false,
		source: CLASSES,
	};
}

/** Cold and warm starts are counted apart: a fault may show at one and not at the other. */
export const STARTS: readonly CheckDefinition[] = [starts("cold"), starts("warm")];

/** Bow of the board in percent of its length. */
export const FLATNESS_CHECK: CheckDefinition = measured("flatness", ["percent"], {
	unitSymbol: "%",
	condition: "cold",
	comparability: "same-instrument",
	betterIs: "lower",
	limits: { high: 0.75, source: FLATNESS },
	whoCan: "meter",
	cautionKeys: ["checks.caution.static"],
	stopKey: "checks.stop.bent",
});

/** Diode mode, red lead to ground. Meters drive different currents, so only the same meter compares. */
export function diode(rail: string): CheckDefinition {
	return measured(`diode-${rail}`, ["V", "mV"], {
		hint: "checks.diode.hint",
		unitSymbol: "V",
		condition: "cold",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { absolute: 0.01, percentOfDeparture: 3, source: DIODE_MARGIN },
		whoCan: "meter",
		cautionKeys: ["checks.caution.meter", "checks.caution.static"],
	});
}

/** The first power after work, from a supply that gives way. */
export const FIRST_POWER: CheckDefinition = tried("first-power-limited", {
	condition: "cold",
	whoCan: "repairer-only",
	cautionKeys: ["checks.caution.live", "checks.caution.stop-sign"],
	stopKey: "checks.stop.limited",
});

/** Runs at a demanding load for the whole time, without a fault. */
export const RUNS_UNDER_LOAD: CheckDefinition = tried("runs-under-load", {
	condition: "load",
	whoCan: "no-instruments",
	duration: { leastMinutes: 30, releaseMinutes: 120, source: SOAK },
	cautionKeys: ["checks.caution.hot", "checks.caution.stop-sign"],
	stopKey: "checks.stop.soak",
});

/** Ports, slots and headers, each with a device that is known to work. */
export const PORTS_WORK: CheckDefinition = tried("ports-work", {
	whoCan: "no-instruments",
	duration: { leastMinutes: 15, source: DURATION },
});
export const BUILT_IN_DEVICES: CheckDefinition = tried("built-in-devices", { whoCan: "no-instruments" });

/** A temperature of the bench's own instrument. */
export function benchTemperature(id: string): CheckDefinition {
	return measured(id, ["degC"], {
		unitSymbol: "°C",
		condition: "load",
		comparability: "same-bench",
		betterIs: "lower",
		margin: { absolute: 5, source: TEMPERATURE_MARGIN },
		duration: { leastMinutes: 30, source: SOAK },
		whoCan: "meter",
		cautionKeys: ["checks.caution.hot"],
		stopKey: "checks.stop.soak",
	});
}
