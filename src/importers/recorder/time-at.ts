/** A date and time of a recorder's row as seconds since 1970 in UTC. */

const DATE_TIME = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2}):(\d{2})(?:[.,](\d{1,9}))?\s?(Z|[+-]\d{2}:?\d{2})?$/;

/** Null for another form; `no-zone` where none is printed and the person named none. */
export function epochOf(cell: string, offsetMinutes: number | undefined): number | null | "no-zone" {
	const parts = DATE_TIME.exec(cell.trim().replace(/^"(.*)"$/, "$1"));
	if (parts === null) return null;
	const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = parts.slice(1, 7).map(Number);
	const at = Date.UTC(year, month - 1, day, hour, minute, second);
	// What rolls over (31 February, hour 25) was no time.
	const back = new Date(at);
	if (back.getUTCMonth() !== month - 1 || back.getUTCDate() !== day || back.getUTCHours() !== hour) return null;
	if (back.getUTCMinutes() !== minute || back.getUTCSeconds() !== second) return null;
	const fractionS = parts[7] === undefined ? 0 : Number(`0.${parts[7]}`);
	const zone = parts[8];
	if (zone === undefined && offsetMinutes === undefined) return "no-zone";
	const minutes = zone === undefined ? (offsetMinutes ?? 0) : minutesOf(zone);
	return at / 1000 + fractionS - minutes * 60;
}

function minutesOf(zone: string): number {
	if (zone === "Z") return 0;
	const size = Number(zone.slice(1, 3)) * 60 + Number(zone.slice(-2));
	return zone.startsWith("-") ? -size : size;
}
