/** Rows of a recorder's table in the units that are computed with. */

import { STANDARD_GRAVITY_M_PER_S2 } from "../../calculations/quantities.ts";
import type { TripRows } from "../../calculations/shock/recording/trip-rows.ts";
import type { RecorderMapping } from "../../contract/transit-recordings.ts";
import type { RowBlock } from "../../importers/recorder/recorder-rows.ts";

const GN_OF = {
	Gn: 1,
	mGn: 1e-3,
	"m/s2": 1 / STANDARD_GRAVITY_M_PER_S2,
	"mm/s2": 1e-3 / STANDARD_GRAVITY_M_PER_S2,
} as const;
const SECONDS_OF = { s: 1, ms: 1e-3, us: 1e-6, "epoch-s": 1, "epoch-ms": 1e-3, "date-time": 1 } as const;
const DEG_C_OF = {
	degC: (value: number) => value,
	degF: (value: number) => (value - 32) / 1.8,
	K: (value: number) => value - 273.15,
} as const;

/** A block's columns stand in the order: time, axes, temperature, humidity. */
export function tripRows({ columns, length, lines }: RowBlock, mapping: RecorderMapping): TripRows {
	const { time, axes, temperature, humidity } = mapping;
	const column = (slot: number) => (columns[slot] as Float64Array).subarray(0, length);
	const scaled = (slot: number, factor: number) =>
		factor === 1 ? column(slot) : column(slot).map((one) => one * factor);
	const perSecond = time.unit === "count" ? 1 / (time.sampleRateHz ?? Number.NaN) : SECONDS_OF[time.unit];
	const measured = axes.map(({ unit }, axis) => scaled(1 + axis, GN_OF[unit]));
	// Two axes are computed as three of which one feels nothing; what that means is said of every event.
	const missing = measured.length === 2 ? [new Float64Array(length)] : [];
	const after = 1 + axes.length;
	return {
		timesS: scaled(0, perSecond),
		axes: [...measured, ...missing],
		temperaturesDegC: temperature === undefined ? null : column(after).map(DEG_C_OF[temperature.unit]),
		humiditiesPercent: humidity === undefined ? null : column(after + (temperature === undefined ? 0 : 1)),
		lines: lines.subarray(0, length),
	};
}
