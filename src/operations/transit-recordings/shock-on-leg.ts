/** What a leg's recordings say of a shock on the way, against the line and the pack of whoever asks. */
import type { TimedSpan } from "../../calculations/shock/recording/event-place.ts";
import {
	type NotedImpact,
	type NotedTrip,
	type RecordedShock,
	recordedShock,
} from "../../calculations/shock/recording/recorded-shock.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { RecordingEventView, RecordingView } from "../../contract/transit-recordings.ts";
import type { ConsignmentComparison } from "../comparison/compare-consignment.ts";
import { allowedGn, type BoardLine, boardLineOf, spectrumAt } from "./board-line.ts";
import { isVelocityTaken } from "./event-words.ts";
import { judgedPackOf } from "./judged-pack.ts";
import { DEFAULT_THRESHOLD_GN } from "./read-recording.ts";

export interface ShockOnLeg extends RecordedShock {
	readonly recordingId: string;
}

/** Of the leg that is compared; what lies before the one record or after the other is not asked for. */
export function shockOnLeg(
	found: ConsignmentComparison,
	recordings: readonly RecordingView[],
	pack: AssessmentView | null,
): ShockOnLeg | null {
	const board = boardLineOf(pack);
	const trips = recordings.map((recording) => tripOf(recording, board));
	const shock = recordedShock(trips, wayOf(found), judgedPackOf(pack));
	const recording = shock === null ? undefined : recordings[shock.recordingNumber - 1];
	return shock === null || recording === undefined ? null : { ...shock, recordingId: recording.id };
}

/** From its dispatch until somebody has it in hand. */
function wayOf({ consignment, line, departure, arrival }: ConsignmentComparison): TimedSpan | null {
	const from = departure?.statement.observed.at;
	const to = arrival?.statement.observed.at;
	const own = line.spans
		.filter(({ kind, consignmentId }) => consignmentId === consignment.id && (kind === "transit" || kind === "nobody"))
		.map(({ startsAt, endsAt }) => ({ startsMs: Date.parse(startsAt), endsMs: Date.parse(endsAt) }))
		.filter(({ startsMs }) => from === undefined || startsMs >= Date.parse(from))
		.filter(({ endsMs }) => to === undefined || endsMs <= Date.parse(to));
	if (own.length === 0) return null;
	return {
		startsMs: Math.min(...own.map(({ startsMs }) => startsMs)),
		endsMs: Math.max(...own.map(({ endsMs }) => endsMs)),
	};
}

function tripOf({ reading, result }: RecordingView, board: BoardLine | null): NotedTrip | null {
	if (reading === null || result === null) return null;
	const startsMs = result.startsAt === null ? null : Date.parse(result.startsAt);
	return {
		place: reading.place,
		device: reading.device,
		axesSeen: reading.mapping.axes.length,
		span: startsMs === null ? null : { startsMs, endsMs: startsMs + 1000 * result.durationS },
		clockUncertaintyS: reading.clockUncertaintyS ?? null,
		slowestHz: result.rates[0]?.sampleRateHz ?? 0,
		gaps: result.gaps,
		fullScaleGn: reading.fullScaleGn ?? null,
		thresholdGn: reading.thresholdGn ?? DEFAULT_THRESHOLD_GN,
		eventsFound: result.eventsFound,
		impacts: result.events.map((event) => impactOf(event, board)),
	};
}

function impactOf(event: RecordingEventView, board: BoardLine | null): NotedImpact {
	const { number, at, peakGn, peakAgainstLimit, dropAgainstPack, freeFallDropBandM, equivalentDropHeightM } = event;
	return {
		impactNumber: number,
		atMs: at === null ? null : Date.parse(at),
		peakGn,
		peak: peakAgainstLimit.verdict,
		drop: dropAgainstPack.verdict,
		dropBandM: freeFallDropBandM ?? [equivalentDropHeightM.restitution1, equivalentDropHeightM.restitution0],
		isBeyondBoard: isBeyondBoard(event, board),
	};
}

/** By the response at the board's own frequency; null where nothing is known of it. */
function isBeyondBoard(event: RecordingEventView, board: BoardLine | null): boolean | null {
	const frequencyHz = board?.naturalFrequencyHz ?? null;
	if (board === null || frequencyHz === null || !isVelocityTaken(event)) return null;
	const responseGn = spectrumAt(event.spectrum, frequencyHz);
	return responseGn === null ? null : responseGn > allowedGn(board, frequencyHz);
}
