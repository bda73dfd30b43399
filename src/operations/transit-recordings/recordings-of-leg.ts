/** The recordings of a leg with their curves, set against a given custody line and pack: for a report, which tells of a state that may be past. */
import type { CustodySpan } from "../../calculations/comparison/types.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { RecordingView } from "../../contract/transit-recordings.ts";
import type { Queryable } from "../../database/connection.ts";
import { eventsOfRecordings, recordingsOfConsignment } from "../../database/transit-recordings.ts";
import type { Speaker } from "../../texts/speaker.ts";
import { curvesOf, type RecordingCurves } from "./recording-curves.ts";
import { recordingViewOf } from "./recording-view.ts";
import type { StoredEvent } from "./stored-recording.ts";

export interface LegRecording {
	readonly view: RecordingView;
	/** Null where it was not read yet. */
	readonly curves: RecordingCurves | null;
}

/** Oldest first. */
export async function recordingsOfLeg(
	database: Queryable,
	consignmentId: string,
	spans: readonly CustodySpan[],
	pack: AssessmentView | null,
	speaker: Speaker,
): Promise<LegRecording[]> {
	const rows = await recordingsOfConsignment(database, consignmentId);
	const events = await eventsOfRecordings(
		database,
		rows.map(({ id }) => id),
	);
	return Promise.all(
		rows.map(async (row) => {
			const own = events.filter((event) => event.recording_id === row.id);
			const numbered = own.map(({ number, facts }) => ({ number, facts: facts as StoredEvent }));
			return {
				view: recordingViewOf(row, numbered, spans, pack, null, speaker),
				curves: await curvesOf(database, row, pack),
			};
		}),
	);
}
