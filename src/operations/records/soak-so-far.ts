/** The soak and the cold starts that a record holds so far: what a soak is judged by while the repairer still decides. */
import { toReadingUnit } from "../../calculations/quantities.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import type { SoakRequest } from "../../contract/soak.ts";

export type SoakSoFar = Pick<SoakRequest, "hours" | "failures" | "coldStarts" | "coldStartFailures">;

const SECONDS_PER_HOUR = 3600;

/**
 * The longest exposure of a count under load, with what was counted; hours of several checks ran side by side and are
 * never added. Cold starts alone: a warm start is another condition.
 */
export function soakSoFar(content: RecordContentInput): SoakSoFar {
	const readings = content.readings ?? [];
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
function hoursOf({ value, unit }: NonNullable<NonNullable<RecordContentInput["readings"]>[number]["exposure"]>) {
	const kept = toReadingUnit(value, unit);
	if (kept.unit === "h") return kept.value;
	return kept.unit === "s" ? kept.value / SECONDS_PER_HOUR : null;
}
