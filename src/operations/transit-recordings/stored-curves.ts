/** Pyramids and traces between numbers and the bytes that the database keeps: doubles and singles, little-endian. */
import type { EventTrace } from "../../calculations/shock/recording/event-facts.ts";
import type { SeriesLevel } from "../../calculations/shock/recording/series-levels.ts";
import type { TripSeries } from "../../calculations/shock/recording/trip-reader.ts";

/** Sizes of the levels of each series, in the order in which their bytes follow. */
export interface StoredLevels {
	readonly series: keyof TripSeries;
	readonly levels: readonly { readonly samplesPerStretch: number; readonly stretches: number }[];
}

export function storedPyramids(series: TripSeries): { readonly levels: StoredLevels[]; readonly bytes: Buffer } {
	const kept = (["time", "acceleration", "temperature", "humidity"] as const).flatMap((name) => {
		const levels = series[name];
		return levels === null ? [] : [{ name, levels }];
	});
	return {
		levels: kept.map(({ name, levels }) => ({
			series: name,
			levels: levels.map(({ samplesPerStretch, ends }) => ({ samplesPerStretch, stretches: ends.length / 2 })),
		})),
		bytes: Buffer.concat(kept.flatMap(({ levels }) => levels.map(({ ends }) => new Uint8Array(ends.buffer)))),
	};
}

export type OpenedSeries = Readonly<Partial<Record<keyof TripSeries, readonly SeriesLevel[]>>>;

export function openedPyramids(stored: readonly StoredLevels[], bytes: Uint8Array): OpenedSeries {
	// A copy begins at a multiple of eight, which a view of doubles needs.
	const all = new Float64Array(Uint8Array.from(bytes).buffer);
	let at = 0;
	return Object.fromEntries(
		stored.map(({ series, levels }) => [
			series,
			levels.map(({ samplesPerStretch, stretches }) => {
				const ends = all.subarray(at, at + 2 * stretches);
				at += 2 * stretches;
				return { samplesPerStretch, ends };
			}),
		]),
	);
}

export function storedTrace({ axes }: EventTrace): Buffer {
	return Buffer.concat(axes.map((samples) => new Uint8Array(Float32Array.from(samples).buffer)));
}

/** The axes of a trace, of equally many samples each. */
export function openedTrace(bytes: Uint8Array, axisCount: number): Float32Array[] {
	const all = new Float32Array(Uint8Array.from(bytes).buffer);
	const length = all.length / axisCount;
	return Array.from({ length: axisCount }, (_, axis) => all.subarray(axis * length, (axis + 1) * length));
}
