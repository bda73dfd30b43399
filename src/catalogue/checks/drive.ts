/**
 * Checks of a drive. Its own counters compare on any bench, since the drive keeps them. Errors of the transfer are of the
 * cable or the bench as well, so they compare on the same bench. The shock counter runs under power only: in a parcel it
 * counts nothing, and its number means nothing across makers.
 */
import { counted, measured, tried } from "./build.ts";
import type { CheckDefinition } from "./check.ts";
import { MASS, SEEN_ON_ANY_BOARD, STARTS, visual } from "./shared.ts";
import { DRIVE_COUNTERS, DRIVE_CYCLES, DRIVE_HOURS, DURATION, TEMPERATURE_MARGIN } from "./sources.ts";

type Counter = Partial<Pick<CheckDefinition, "margin" | "comparability" | "betterIs" | "short" | "source">>;

/** A number that the drive itself keeps, read without error. */
function counter(id: string, given: Counter = {}): CheckDefinition {
	return {
		...measured(id, ["one"], {
			hint: "checks.smart.hint",
			comparability: "any-bench",
			betterIs: "lower",
			itemReportsResolution: 0,
			whoCan: "software",
		}),
		source: DRIVE_COUNTERS,
		...given,
	};
}

const SMART = { hint: "checks.smart.hint", whoCan: "software" } as const;

export const DRIVE: readonly CheckDefinition[] = [
	MASS,
	...SEEN_ON_ANY_BOARD,
	visual("visual-rattle", ["checks.caution.loose-part"]),
	...STARTS,
	visual("visual-noise", ["checks.caution.never-open"]),
	tried("smart-self-assessment", { ...SMART, short: true }),
	counter("smart-reallocated-sectors", { short: true }),
	counter("smart-pending-sectors", { short: true }),
	counter("smart-offline-uncorrectable"),
	counter("smart-reported-uncorrectable"),
	counter("smart-command-timeouts"),
	counter("smart-media-errors", { short: true }),
	counter("smart-error-log-entries", { betterIs: "neither" }),
	counter("smart-transfer-errors", { comparability: "same-bench" }),
	counter("smart-shock-sense", { betterIs: "neither" }),
	counter("smart-power-cycles", { betterIs: "neither", margin: { absolute: 30, source: DRIVE_CYCLES } }),
	counter("smart-unsafe-shutdowns", { betterIs: "neither", margin: { absolute: 30, source: DRIVE_CYCLES } }),
	measured("smart-power-on-hours", ["h"], {
		unitSymbol: "h",
		comparability: "any-bench",
		betterIs: "neither",
		itemReportsResolution: 1,
		margin: { absolute: 48, source: DRIVE_HOURS },
		whoCan: "software",
		short: true,
	}),
	measured("smart-percentage-used", ["percent"], {
		...SMART,
		comparability: "any-bench",
		betterIs: "lower",
		itemReportsResolution: 1,
	}),
	measured("smart-available-spare", ["percent"], {
		...SMART,
		comparability: "any-bench",
		betterIs: "higher",
		itemReportsResolution: 1,
	}),
	counted("read-errors", {
		condition: "load",
		comparability: "any-bench",
		limits: { high: 0, source: DRIVE_COUNTERS },
		duration: { leastMinutes: 60, source: DURATION },
		whoCan: "software",
		stopKey: "checks.stop.first-error",
	}),
	tried("smart-self-test", {
		whoCan: "software",
		duration: { leastMinutes: 2, releaseMinutes: 120, source: DURATION },
	}),
	measured("smart-temperature", ["degC"], {
		unitSymbol: "°C",
		comparability: "same-bench",
		betterIs: "lower",
		itemReportsResolution: 1,
		margin: { absolute: 5, source: TEMPERATURE_MARGIN },
		duration: { leastMinutes: 30, source: DURATION },
		whoCan: "software",
	}),
];
