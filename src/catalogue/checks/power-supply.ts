/**
 * Checks of a computer's power supply, closed. Windows of the rails differ by edition of the guide; each limit names its
 * own. Earth bond and insulation are for a qualified person, and nothing is measured on the mains side by anyone else.
 */
import { measured, tried, windowVoltage } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { FIRST_POWER, MASS, RUNS_UNDER_LOAD, SEEN_ON_ANY_BOARD, STARTS, visual } from "./shared.ts";
import { SUPPLY_RAILS, SUPPLY_RIPPLE, SUPPLY_TIMING } from "./sources.ts";

const rail = (id: string, low: number, high: number) => windowVoltage(id, { low, high, source: SUPPLY_RAILS });

/** Peak to peak at the connector. */
function ripple(id: string, mostV: number): CheckDefinition {
	return measured(`ripple-${id}`, ["mV", "V"], {
		hint: "checks.ripple.hint",
		unitSymbol: "V",
		condition: "load",
		comparability: "stated-uncertainty",
		betterIs: "lower",
		limits: { high: mostV, source: SUPPLY_RIPPLE },
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.mains", "checks.caution.live"],
	});
}

function timing(id: string, limits: { readonly low?: number; readonly high?: number }): CheckDefinition {
	return measured(id, ["ms", "s"], {
		hint: "checks.timing.hint",
		unitSymbol: "s",
		condition: "load",
		comparability: "stated-uncertainty",
		betterIs: "neither",
		limits: { ...limits, source: SUPPLY_TIMING },
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.mains"],
	});
}

export const POWER_SUPPLY: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-rattle", ["checks.caution.loose-part", "checks.caution.mains"]),
	tried("earth-and-insulation", {
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.mains"],
		stopKey: "checks.stop.earth",
	}),
	FIRST_POWER,
	...STARTS,
	visual("visual-fan", ["checks.caution.fan", "checks.caution.mains"]),
	rail("5v-standby", 4.75, 5.25),
	rail("12v", 11.4, 12.6),
	rail("5v", 4.75, 5.25),
	rail("3v3", 3.135, 3.465),
	rail("minus-12v", -13.2, -10.8),
	ripple("12v", 0.12),
	ripple("5v", 0.05),
	ripple("3v3", 0.05),
	ripple("5v-standby", 0.05),
	timing("time-to-power-on", { high: 0.5 }),
	timing("time-to-power-good", { low: 0.1, high: 0.5 }),
	timing("hold-up-time", { low: 0.011 }),
	tried("protection-trips", { whoCan: "repairer-only", cautionKeys: ["checks.caution.mains", "checks.caution.hot"] }),
	RUNS_UNDER_LOAD,
];
