/** The date that an instant has on a clock so many minutes from UTC. */
import type { CivilDate } from "../../calculations/civil-date.ts";

export function localDate(instant: Date, offsetMinutes: number): CivilDate {
	return new Date(instant.getTime() + offsetMinutes * 60_000).toISOString().slice(0, 10);
}

/** Minutes from UTC of an RFC 3339 time. */
export function offsetMinutesOf(time: string): number {
	const parts = /([+-])(\d\d):(\d\d)$/.exec(time);
	if (parts === null) return 0;
	return (Number(parts[2]) * 60 + Number(parts[3])) * (parts[1] === "-" ? -1 : 1);
}
