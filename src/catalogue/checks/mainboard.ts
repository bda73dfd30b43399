/** Checks of a mainboard, in the order in which they are done. No range of its rails is published: its own record decides. */
import { counted, measured, railResistance, tried } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import {
	BUILT_IN_DEVICES,
	benchTemperature,
	FIRST_POWER,
	FLATNESS_CHECK,
	MASS,
	PORTS_WORK,
	RUNS_UNDER_LOAD,
	SEEN_ON_ANY_BOARD,
	STARTS,
	visual,
} from "./shared.ts";
import { BATTERY_WINDOW, DURATION, NO_ERRORS, OWN_RECORD_5 } from "./sources.ts";

export const MEMORY_ERRORS: CheckDefinition = counted("memory-errors", {
	condition: "load",
	comparability: "any-bench",
	limits: { high: 0, source: NO_ERRORS },
	duration: { leastMinutes: 30, releaseMinutes: 240, source: DURATION },
	whoCan: "software",
	stopKey: "checks.stop.first-error",
});

export const MAINBOARD: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-socket", ["checks.caution.socket"]),
	visual("visual-rattle", ["checks.caution.loose-part"]),
	FLATNESS_CHECK,
	railResistance("12v-processor"),
	railResistance("12v-main"),
	railResistance("5v"),
	railResistance("3v3"),
	railResistance("5v-standby"),
	railResistance("core"),
	railResistance("memory"),
	railResistance("soc"),
	measured("voltage-5v-standby", ["V", "mV"], {
		hint: "checks.voltage.hint",
		unitSymbol: "V",
		condition: "idle",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { percentOfDeparture: 5, source: OWN_RECORD_5 },
		whoCan: "meter",
		cautionKeys: ["checks.caution.live"],
	}),
	measured("voltage-clock-battery", ["V", "mV"], {
		unitSymbol: "V",
		condition: "cold",
		comparability: "stated-uncertainty",
		betterIs: "neither",
		limits: { low: 2.8, high: 3.3, source: BATTERY_WINDOW },
		whoCan: "meter",
		cautionKeys: ["checks.caution.cell"],
	}),
	FIRST_POWER,
	...STARTS,
	tried("post-code-end", { whoCan: "no-instruments", stopKey: "checks.stop.sign" }),
	tried("memory-channels", { whoCan: "no-instruments", cautionKeys: ["checks.caution.supply"] }),
	MEMORY_ERRORS,
	PORTS_WORK,
	tried("slots-full-width", { condition: "load", whoCan: "software", cautionKeys: ["checks.caution.supply"] }),
	BUILT_IN_DEVICES,
	benchTemperature("temperature-regulators"),
	RUNS_UNDER_LOAD,
];
