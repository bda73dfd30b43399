/** A recorder's file from its bytes to its impacts and pyramids; runs on a thread of its own. */
import { type EventFacts, type EventTrace, eventFacts } from "../../calculations/shock/recording/event-facts.ts";
import { type Trip, type TripProblem, tripReader } from "../../calculations/shock/recording/trip-reader.ts";
import { hasClock, type RecordingReading } from "../../contract/transit-recordings.ts";
import { ImportRefusal } from "../../importers/import-result.ts";
import { recorderRows } from "../../importers/recorder/recorder-rows.ts";
import type { Separator } from "../../importers/table-separator.ts";
import { tripRows } from "./trip-rows.ts";

export interface ReadRecording {
	readonly trip: Omit<Trip, "events">;
	readonly events: readonly { readonly facts: EventFacts; readonly trace: EventTrace }[];
	/** The last line had no end and was left out. */
	readonly cutLine: number | null;
}

/** Source: our choice. Handling at a bench stays below; a fall of 10 cm onto a hard floor is far above. */
export const DEFAULT_THRESHOLD_GN = 5;

/** @param pieces of the file in order, of any length from 3 bytes; @throws ImportRefusal with the line */
export function readRecording(
	pieces: Iterable<Uint8Array>,
	separator: Separator,
	{ mapping, thresholdGn = DEFAULT_THRESHOLD_GN, fullScaleGn, device }: RecordingReading,
): ReadRecording {
	const axesSeen = mapping.axes.length;
	const reader = tripReader({ axisCount: axesSeen === 1 ? 1 : 3, thresholdGn });
	const { time, axes, temperature, humidity } = mapping;
	const places = [time, ...axes, temperature, humidity].flatMap((one) => (one === undefined ? [] : [one.column - 1]));
	const rows = recorderRows(
		{
			separator,
			places,
			dateTimePlace: time.unit === "date-time" ? time.column - 1 : undefined,
			offsetMinutes: time.offsetMinutes,
		},
		(block) => {
			const problem = reader.take(tripRows(block, mapping));
			if (problem !== null) throw refusalOf(problem);
		},
	);
	for (const piece of pieces) rows.take(piece);
	const { cutLine } = rows.end();
	const end = reader.end();
	if ("problem" in end) throw refusalOf(end.problem);
	const { events, ...trip } = end.trip;
	const options = { fastestHz: trip.rates.at(-1)?.sampleRateHz ?? Number.NaN, axesSeen, fullScaleGn, device };
	return {
		trip,
		events: events.flatMap((event) => eventFacts(event, options) ?? []),
		cutLine,
	};
}

function refusalOf({ code, line, values }: TripProblem): ImportRefusal {
	return new ImportRefusal(`recorder-${code}`, line, values);
}

/** When second 0 of the recording's own time was, seconds since 1970; null where nothing says. */
export function clockOf({ mapping, startsAt }: RecordingReading, startsS: number): number | null {
	if (hasClock(mapping.time.unit)) return 0;
	return startsAt === undefined ? null : Date.parse(startsAt) / 1000 - startsS;
}
