/** Checks of a laptop's mainboard. In another chassis panel, cable or battery may look like a fault of the board. */
import { inputResistance, measured, tried, windowVoltage } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { inputCurrent } from "./input-current.ts";
import { MEMORY_ERRORS } from "./mainboard.ts";
import {
	BUILT_IN_DEVICES,
	FIRST_POWER,
	MASS,
	PORTS_WORK,
	RUNS_UNDER_LOAD,
	SEEN_ON_ANY_BOARD,
	STARTS,
	visual,
} from "./shared.ts";
import { ALWAYS_ON, OWN_RECORD_5 } from "./sources.ts";

export const LAPTOP_MAINBOARD: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-latches"),
	visual("visual-liquid-indicator", ["checks.caution.wet"]),
	visual("visual-rattle", ["checks.caution.loose-part"]),
	inputResistance("adapter-input"),
	FIRST_POWER,
	inputCurrent("current-off", 20),
	inputCurrent("current-standby", 20),
	inputCurrent("current-start", 20),
	windowVoltage("3v3-always", { low: 3.135, high: 3.465, source: ALWAYS_ON }, "repairer-only"),
	windowVoltage("5v-always", { low: 4.75, high: 5.25, source: ALWAYS_ON }, "repairer-only"),
	inputCurrent("current-charge", 20),
	measured("voltage-battery", ["V"], {
		unitSymbol: "V",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { percentOfDeparture: 5, source: OWN_RECORD_5 },
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.cell", "checks.caution.live"],
		stopKey: "checks.stop.cell",
	}),
	...STARTS,
	tried("picture-screen", { whoCan: "no-instruments" }),
	BUILT_IN_DEVICES,
	PORTS_WORK,
	tried("charge-port-both-ways", { whoCan: "no-instruments" }),
	tried("sleep-and-resume", { whoCan: "no-instruments" }),
	tried("runs-on-adapter-only", { whoCan: "no-instruments" }),
	tried("runs-on-battery-only", { whoCan: "no-instruments", cautionKeys: ["checks.caution.cell"] }),
	MEMORY_ERRORS,
	RUNS_UNDER_LOAD,
];
