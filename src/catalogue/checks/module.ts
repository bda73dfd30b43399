/** Checks of any other board. What it is to do stands in its owner's own specification; five checks of the shop's own can say it. */
import { railResistance, tried } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { inputCurrent } from "./input-current.ts";
import { FIRST_POWER, FLATNESS_CHECK, MASS, RUNS_UNDER_LOAD, SEEN_ON_ANY_BOARD, STARTS, visual } from "./shared.ts";

export const MODULE: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-rattle", ["checks.caution.loose-part"]),
	FLATNESS_CHECK,
	railResistance("supply"),
	FIRST_POWER,
	inputCurrent("current-nominal", 10),
	inputCurrent("current-low-supply", 10),
	inputCurrent("current-high-supply", 10),
	...STARTS,
	tried("functional-points", { whoCan: "repairer-only" }),
	RUNS_UNDER_LOAD,
	tried("connectors-mated", { whoCan: "no-instruments" }),
];
