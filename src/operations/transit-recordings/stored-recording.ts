/** What the database holds of a recording that was read. */
import type { EventFacts } from "../../calculations/shock/recording/event-facts.ts";
import type { SeriesLevel } from "../../calculations/shock/recording/series-levels.ts";
import type { TripRate } from "../../calculations/shock/recording/trip-reader.ts";
import type { EventRow } from "../../database/transit-recordings.ts";
import type { ReadRecording } from "./read-recording.ts";
import { type StoredLevels, storedPyramids, storedTrace } from "./stored-curves.ts";

export interface StoredTrip {
	readonly rows: number;
	/** Slowest first. Recordings read before rates could change have one, as `sampleRateHz`. */
	readonly rates?: readonly TripRate[];
	readonly sampleRateHz?: number;
	readonly startsS: number;
	readonly endsS: number;
	readonly gaps: number;
	readonly eventsFound: number;
	readonly cutLine: number | null;
	readonly levels: readonly StoredLevels[];
	readonly temperatureDegC: Ends | null;
	readonly humidityPercent: Ends | null;
}

export interface Ends {
	readonly least: number;
	readonly greatest: number;
}

export function ratesOf({ rates, sampleRateHz, rows }: StoredTrip): readonly TripRate[] {
	return rates ?? (sampleRateHz === undefined ? [] : [{ sampleRateHz, rows }]);
}

export interface StoredEvent extends Omit<EventFacts, "sampleRateHz"> {
	readonly trace: { readonly axisCount: number; readonly sampleRateHz: number; readonly peakIndex: number };
}

export function storedRecording({ trip, events, cutLine }: ReadRecording): {
	readonly trip: StoredTrip;
	readonly pyramids: Buffer;
	readonly events: EventRow[];
} {
	const { series, ...facts } = trip;
	const { levels, bytes } = storedPyramids(series);
	return {
		trip: {
			...facts,
			cutLine,
			levels,
			temperatureDegC: endsOf(series.temperature),
			humidityPercent: endsOf(series.humidity),
		},
		pyramids: bytes,
		events: events.map(({ facts: { sampleRateHz, ...facts }, trace }, index) => ({
			number: index + 1,
			facts: {
				...facts,
				trace: { axisCount: trace.axes.length, sampleRateHz, peakIndex: trace.peakIndex },
			} satisfies StoredEvent,
			trace: storedTrace(trace),
		})),
	};
}

/** Of the coarsest level; null where no sample is there. */
function endsOf(levels: readonly SeriesLevel[] | null): Ends | null {
	const ends = levels?.at(-1)?.ends.filter((end) => !Number.isNaN(end)) ?? new Float64Array(0);
	return ends.length === 0 ? null : { least: Math.min(...ends), greatest: Math.max(...ends) };
}
