/** Shapes of checks that recur: something read off a meter or the item, something tried several times, something counted. */
import type { TypedUnit } from "../../calculations/quantities.ts";
import type { Source } from "../../calculations/sources.ts";
import type { CheckDefinition } from "./check.ts";
import { CLASSES, INPUT_RESISTANCE, NO_MISS, OWN_RECORD_5, RESISTANCE_MARGIN } from "./sources.ts";

type Base = "id" | "kind" | "nameKey" | "hintKey" | "typedUnits" | "exposureUnits" | "source";
type Given<Needed extends keyof CheckDefinition> = Partial<Omit<CheckDefinition, Base>> &
	Pick<CheckDefinition, Needed> & {
		/** Where several checks are done alike: the key of their common hint. */
		readonly hint?: string;
	};

function base(id: string, hint: string | undefined): Pick<CheckDefinition, "id" | "nameKey" | "hintKey" | "source"> {
	return { id, nameKey: `checks.${id}`, hintKey: hint ?? `checks.${id}.hint`, source: CLASSES };
}

/** A value with a unit. */
export function measured(
	id: string,
	typedUnits: readonly TypedUnit[],
	{ hint, ...given }: Given<"comparability" | "betterIs" | "whoCan">,
): CheckDefinition {
	return {
		...base(id, hint),
		kind: "measured",
		typedUnits,
		exposureUnits: [],
		cautionKeys: [],
		short: false,
		...given,
	};
}

/** Attempts, or things tried one by one, and how many went as they should. Each must. */
export function tried(id: string, { hint, ...given }: Given<"whoCan">): CheckDefinition {
	return {
		...base(id, hint),
		kind: "outcome",
		typedUnits: [],
		exposureUnits: [],
		comparability: "any-bench",
		betterIs: "higher",
		limits: { low: 1, source: NO_MISS },
		cautionKeys: [],
		short: false,
		...given,
	};
}

/** Errors counted over a time. */
export function counted(id: string, { hint, ...given }: Given<"comparability" | "whoCan">): CheckDefinition {
	return {
		...base(id, hint),
		kind: "count",
		typedUnits: [],
		exposureUnits: ["h", "min"],
		unitSymbol: "errors",
		betterIs: "lower",
		cautionKeys: [],
		short: false,
		...given,
	};
}

/**
 * Cold resistance of a rail to ground. No limit: readings of sound boards of different models lie a factor of hundreds
 * apart. Another meter puts another voltage on the parts and reads something else, so only the same meter compares.
 */
export function railResistance(
	rail: string,
	plausible?: { readonly low?: number; readonly high?: number; readonly source: Source },
	stopBelow?: { readonly value: number; readonly source: Source },
): CheckDefinition {
	return measured(`resistance-${rail}-rail`, ["ohm", "mohm", "kohm"], {
		hint: "checks.resistance.hint",
		unitSymbol: "Ω",
		condition: "cold",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { percentOfDeparture: 15, source: RESISTANCE_MARGIN },
		readThroughLeads: true,
		...(plausible === undefined ? {} : { plausible }),
		...(stopBelow === undefined ? {} : { stopBelow, stopKey: "checks.caution.short" }),
		whoCan: "meter",
		cautionKeys: [
			"checks.caution.meter",
			"checks.caution.static",
			...(stopBelow === undefined ? [] : ["checks.caution.short"]),
		],
	});
}

/** A 12 V or adapter input, below which nothing is powered. */
export function inputResistance(rail: string): CheckDefinition {
	return railResistance(rail, { low: 100, source: INPUT_RESISTANCE });
}

/** A rail's voltage without a published window: the board's own record with the same meter decides. */
export function railVoltage(
	rail: string,
	plausible?: { readonly low: number; readonly high: number; readonly source: Source },
): CheckDefinition {
	return measured(`voltage-${rail}`, ["V", "mV"], {
		hint: "checks.voltage.hint",
		unitSymbol: "V",
		condition: "load",
		comparability: "same-instrument",
		betterIs: "neither",
		margin: { percentOfDeparture: 5, source: OWN_RECORD_5 },
		...(plausible === undefined ? {} : { plausible }),
		whoCan: "repairer-only",
		cautionKeys: ["checks.caution.live", "checks.caution.stop-sign"],
		stopKey: "checks.stop.outside",
	});
}

/** A rail's voltage at a named pin under load, with the window that a guide publishes. */
export function windowVoltage(
	rail: string,
	limits: { readonly low: number; readonly high: number; readonly source: Source },
	whoCan: "meter" | "repairer-only" = "meter",
): CheckDefinition {
	return measured(`voltage-${rail}`, ["V", "mV"], {
		hint: "checks.voltage-window.hint",
		unitSymbol: "V",
		condition: "load",
		comparability: "stated-uncertainty",
		betterIs: "neither",
		limits,
		whoCan,
		cautionKeys: ["checks.caution.live", "checks.caution.supply"],
		stopKey: "checks.stop.outside",
	});
}
