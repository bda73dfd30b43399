/** The soak and the cold starts that a record holds, a draft's so far. */
import { type TypedUnit, toReadingUnit } from "../../calculations/quantities.ts";
import type { SoakRequest } from "../../contract/soak.ts";

/** Of a draft or of a sealed record: what a soak is told by. */
interface Tested {
	readonly check: string;
	readonly condition?: string | undefined;
	readonly count?: number | undefined;
	readonly exposure?: { readonly value: number; readonly unit: TypedUnit } | undefined;
	readonly trials?: number | undefined;
	readonly successes?: number | undefined;
}

export type SoakSoFar = Pick<SoakRequest, "hours" | "failures" | "coldStarts" | "coldStartFailures">;

const SECONDS_PER_HOUR = 3600;

/**
 * The longest exposure of a count under load, with what was counted; hours of several checks ran side by side and are
 * never added. Cold starts alone: a warm start is another condition.
 */
export function soakSoFar(readings: readonly Tested[]): SoakSoFar {
	const counted = readings.flatMap(({ count, exposure, condition }) => {
		if (count === undefined || exposure === undefined || condition !== "load") return [];
		const hours = hoursOf(exposure);
		return hours === null ? [] : [{ hours, failures: count }];
	});
	const longest = counted.reduce((most, next) => (next.hours > most.hours ? next : most), { hours: 0, failures: 0 });
	const cold = readings.find(({ check, trials }) => check === "starts-cold" && trials !== undefined);
	const coldStarts = cold?.trials ?? 0;
	return { ...longest, coldStarts, coldStartFailures: coldStarts - (cold?.successes ?? coldStarts) };
}

/** Null for an exposure that is no time. */
function hoursOf({ value, unit }: NonNullable<Tested["exposure"]>): number | null {
	const kept = toReadingUnit(value, unit);
	if (kept.unit === "h") return kept.value;
	return kept.unit === "s" ? kept.value / SECONDS_PER_HOUR : null;
}
