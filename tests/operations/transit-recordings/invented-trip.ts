/** Recorders' tables made up from pulses whose figures follow from closed forms: half sines of a known size and length. */

export interface InventedImpact {
	/** Seconds after the begin. */
	readonly atS: number;
	readonly peakGn: number;
	readonly durationMs: number;
	/** Of weightlessness before it. */
	readonly fallS?: number;
}

export interface InventedTrip {
	readonly rateHz: number;
	readonly lengthS: number;
	readonly impacts: readonly InventedImpact[];
}

/** Acceleration along z at a sample: at rest 1, falling 0, in an impact a half sine. */
export function accelerationGn({ rateHz, impacts }: InventedTrip, index: number): number {
	const time = index / rateHz;
	for (const { atS, peakGn, durationMs, fallS = 0 } of impacts) {
		const into = time - atS;
		if (into >= 0 && into <= durationMs / 1000) return peakGn * Math.sin((Math.PI * into) / (durationMs / 1000));
		if (into < 0 && into >= -fallS) return 0;
	}
	return 1;
}

/** A table with the time in seconds, three axes in gₙ, and temperature and humidity once in a while. */
export function inventedTable(trip: InventedTrip): string {
	const rows = Math.round(trip.rateHz * trip.lengthS);
	const lines = ["# invented", "time [s],x [g],y [g],z [g],temp [degC],rh [%]"];
	for (let index = 0; index < rows; index += 1) {
		const slow = index % 500 === 0 ? `${(20 + 5 * Math.sin(index / 4000)).toFixed(2)},${(45).toFixed(1)}` : ",";
		lines.push(`${(index / trip.rateHz).toFixed(5)},0,0,${accelerationGn(trip, index).toFixed(4)},${slow}`);
	}
	return `${lines.join("\n")}\n`;
}

export const MAPPING = {
	time: { column: 1, unit: "s" },
	axes: [
		{ column: 2, unit: "Gn" },
		{ column: 3, unit: "Gn" },
		{ column: 4, unit: "Gn" },
	],
	temperature: { column: 5, unit: "degC" },
	humidity: { column: 6 },
} as const;

/** How the table is read; the recorder sat on the item and its clock may be off by two minutes. */
export const READING = {
	place: "on-item",
	device: "recorder",
	mapping: MAPPING,
	unitsConfirmed: true,
	startsAt: "2026-03-03T08:00:00Z",
	clockUncertaintyS: 120,
	fullScaleGn: 200,
} as const;
