/** A shop's own check as comparisons take it: limits and margin in the reading unit. */
import { READING_UNITS, type TypedUnit, toReadingUnit } from "../quantities.ts";
import type { BetterIs, Comparability, ComparedCheck } from "./types.ts";

/** The definition that is sealed with the reading. Limits and margin stand in `unit`; those of an outcome are shares. */
export interface OwnCheckDefinition {
	readonly kind: "measured" | "count" | "score" | "outcome";
	readonly unit: TypedUnit;
	readonly comparability: Comparability;
	readonly betterIs: BetterIs;
	readonly limitLow?: number | undefined;
	readonly limitHigh?: number | undefined;
	readonly equivalenceMargin?: number | undefined;
}

/** The check `own-1` … `own-5` of a record. */
export function ownCheck(id: string, definition: OwnCheckDefinition): ComparedCheck {
	const { kind, comparability, betterIs, limitLow, limitHigh, equivalenceMargin } = definition;
	const counted = kind === "count" || kind === "outcome";
	const inReadingUnit = (value: number | undefined) =>
		value === undefined || counted ? value : toReadingUnit(value, definition.unit).value;
	const limits =
		limitLow === undefined && limitHigh === undefined
			? undefined
			: { low: inReadingUnit(limitLow), high: inReadingUnit(limitHigh) };
	return {
		id,
		kind,
		comparability,
		betterIs,
		limits,
		margin: equivalenceMargin === undefined ? undefined : { absolute: inReadingUnit(equivalenceMargin) },
		unitSymbol: counted ? undefined : READING_UNITS[toReadingUnit(0, definition.unit).unit],
	};
}
