/** What the plots of a recording show. */
import type { AssessmentView } from "../../contract/packaging.ts";
import type { RecordingReading } from "../../contract/transit-recordings.ts";
import type { Queryable } from "../../database/connection.ts";
import { curvesOfRecording, eventsOfRecordings, type RecordingRow } from "../../database/transit-recordings.ts";
import { type BoardLine, boardLineOf } from "./board-line.ts";
import { type OpenedSeries, openedPyramids, openedTrace } from "./stored-curves.ts";
import type { StoredEvent, StoredTrip } from "./stored-recording.ts";

export interface RecordingCurves {
	/** Times are those of the recording itself. */
	readonly series: OpenedSeries;
	readonly startsS: number;
	/** The board's limit on a response; null where no board is described, or the recorder did not sit on the item. */
	readonly board: BoardLine | null;
	readonly traces: readonly {
		readonly number: number;
		readonly sampleRateHz: number;
		readonly peakIndex: number;
		readonly axes: readonly Float32Array[];
	}[];
}

/** Null where it was not read yet. @param pack the leg's sealed pack, which may describe the board */
export async function curvesOf(
	database: Queryable,
	row: RecordingRow,
	pack: AssessmentView | null,
): Promise<RecordingCurves | null> {
	const [curves, events] = await Promise.all([
		curvesOfRecording(database, row.id),
		eventsOfRecordings(database, [row.id]),
	]);
	if (curves === null) return null;
	const trip = row.trip as StoredTrip;
	return {
		series: openedPyramids(trip.levels, curves.pyramids),
		startsS: trip.startsS,
		board: (row.reading as RecordingReading).place === "on-item" ? boardLineOf(pack) : null,
		traces: curves.traces.flatMap(({ number, trace }) => {
			const stored = events.find((event) => event.number === number)?.facts as StoredEvent | undefined;
			if (stored === undefined) return [];
			const { axisCount, sampleRateHz, peakIndex } = stored.trace;
			return [{ number, sampleRateHz, peakIndex, axes: openedTrace(trace, axisCount) }];
		}),
	};
}
