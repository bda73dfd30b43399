/** Checks of a game console's mainboard, in the order in which they are done. */
import { inputResistance, measured, railResistance, tried } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { inputCurrent } from "./input-current.ts";
import {
	BUILT_IN_DEVICES,
	benchTemperature,
	FIRST_POWER,
	MASS,
	PORTS_WORK,
	RUNS_UNDER_LOAD,
	SEEN_ON_ANY_BOARD,
	STARTS,
	visual,
} from "./shared.ts";
import { DURATION, FAN_MARGIN } from "./sources.ts";

export const CONSOLE_MAINBOARD: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-thermal-interface", ["checks.caution.liquid-metal"]),
	visual("visual-rattle", ["checks.caution.loose-part"]),
	inputResistance("12v-input"),
	railResistance("5v-standby"),
	FIRST_POWER,
	inputCurrent("current-standby", 20),
	...STARTS,
	tried("indicator-as-it-should", { whoCan: "no-instruments", stopKey: "checks.stop.sign" }),
	tried("picture-1080", { whoCan: "no-instruments", duration: { leastMinutes: 10, source: DURATION } }),
	tried("picture-highest", { whoCan: "no-instruments", duration: { leastMinutes: 10, source: DURATION } }),
	tried("disc-drive-reads", { whoCan: "no-instruments" }),
	BUILT_IN_DEVICES,
	PORTS_WORK,
	RUNS_UNDER_LOAD,
	benchTemperature("temperature-exhaust"),
	measured("fan-speed", ["rpm", "percent"], {
		condition: "load",
		comparability: "same-bench",
		betterIs: "neither",
		margin: { percentOfDeparture: 10, source: FAN_MARGIN },
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.fan"],
	}),
];
