/** A recording as the API and the pages show it: its events placed on the custody line and set against the sealed pack. */
import type { CustodySpan } from "../../calculations/comparison/types.ts";
import { sentence } from "../../calculations/judged.ts";
import { eventAgainstPack, type PackLimits } from "../../calculations/shock/recording/event-against-pack.ts";
import { type EventPlace, eventPlace } from "../../calculations/shock/recording/event-place.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { RecordingEventView, RecordingReading, RecordingView } from "../../contract/transit-recordings.ts";
import type { RecordingRow } from "../../database/transit-recordings.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { judgedPackOf } from "./judged-pack.ts";
import { clockOf } from "./read-recording.ts";
import { ratesOf, type StoredEvent, type StoredTrip } from "./stored-recording.ts";

interface NumberedEvent {
	readonly number: number;
	readonly facts: StoredEvent;
}

export function recordingViewOf(
	row: RecordingRow,
	events: readonly NumberedEvent[],
	spans: readonly CustodySpan[],
	pack: AssessmentView | null,
	pending: RecordingView["pending"],
	speaker: Speaker = ENGLISH,
): RecordingView {
	const { reading, trip } = row as { readonly reading: RecordingReading | null; readonly trip: StoredTrip | null };
	return {
		id: row.id,
		consignmentId: row.consignment_id,
		broughtAt: row.brought_at.toISOString(),
		fileName: row.file_name,
		sizeBytes: row.size_bytes,
		sha256: row.sha256,
		pending,
		reading,
		result:
			reading === null || trip === null ? null : resultOf(reading, trip, events, spans, judgedPackOf(pack), speaker),
	};
}

function resultOf(
	reading: RecordingReading,
	trip: StoredTrip,
	events: readonly NumberedEvent[],
	spans: readonly CustodySpan[],
	pack: PackLimits | null,
	speaker: Speaker,
): NonNullable<RecordingView["result"]> {
	const clock = clockOf(reading, trip.startsS);
	return {
		rows: trip.rows,
		rates: [...ratesOf(trip)],
		durationS: trip.endsS - trip.startsS,
		startsAt: clock === null ? null : isoOf(clock + trip.startsS),
		gaps: trip.gaps,
		eventsFound: trip.eventsFound,
		events: events.map((event) => eventViewOf(event, reading, trip, clock, spans, pack, speaker)),
		temperatureDegC: trip.temperatureDegC,
		humidityPercent: trip.humidityPercent,
		notes: notesOn(reading, trip, events.length).map((note) => speaker.say(note.sentence as ReportKey, note.values)),
	};
}

function eventViewOf(
	{ number, facts }: NumberedEvent,
	reading: RecordingReading,
	trip: StoredTrip,
	clock: number | null,
	spans: readonly CustodySpan[],
	pack: PackLimits | null,
	{ say, speak }: Speaker,
): RecordingEventView {
	const { trace, timeS, freeFallDropBandM, spectrum, ...figures } = facts;
	const place = eventPlace(
		clock === null ? null : (clock + timeS) * 1000,
		reading.clockUncertaintyS ?? null,
		spans.map(({ startsAt, endsAt }) => ({ startsMs: Date.parse(startsAt), endsMs: Date.parse(endsAt) })),
	);
	const { peak, drop } = speak(eventAgainstPack({ ...facts, sampleRateHz: trace.sampleRateHz }, reading.place, pack));
	return {
		number,
		afterS: timeS - trip.startsS,
		at: clock === null ? null : isoOf(clock + timeS),
		place: {
			status: place.status,
			spans: place.spans.flatMap((index) => {
				const span = spans[index];
				if (span === undefined) return [];
				const { kind, holderId, consignmentId, startsAt, endsAt } = span;
				return [{ kind, holderId, consignmentId, startsAt, endsAt }];
			}),
			why: say(placeWords(place)),
		},
		sampleRateHz: trace.sampleRateHz,
		...figures,
		freeFallDropBandM: freeFallDropBandM === null ? null : [freeFallDropBandM[0], freeFallDropBandM[1]],
		peakAgainstLimit: peak,
		dropAgainstPack: drop,
		spectrum: [...spectrum],
	};
}

function placeWords(place: EventPlace): ReportKey {
	if (place.status === "cannot-be-placed") return `recording.place-${place.reason}`;
	if (place.status === "in-one-of" && place.spans.length === 1) return "recording.place-in-or-outside";
	return `recording.place-${place.status}`;
}

function notesOn(reading: RecordingReading, trip: StoredTrip, kept: number) {
	return [
		sentence(`recording.says-${reading.place}`),
		...(reading.device === "phone" ? [sentence("recording.note-phone")] : []),
		...(reading.mapping.axes.length < 3
			? [sentence("recording.note-axes", { axes: reading.mapping.axes.length })]
			: []),
		...(reading.fullScaleGn === undefined ? [sentence("recording.note-no-full-scale")] : []),
		...(ratesOf(trip).length > 1 ? [sentence("recording.note-rates")] : []),
		...(trip.gaps > 0 ? [sentence("recording.note-gaps", { gaps: trip.gaps })] : []),
		...(trip.eventsFound > kept ? [sentence("recording.note-kept", { found: trip.eventsFound, kept })] : []),
		...(trip.cutLine === null ? [] : [sentence("recording.note-cut", { line: trip.cutLine })]),
		sentence("recording.supports"),
	];
}

/** A time that no calendar holds is not shown. */
function isoOf(epochS: number): string | null {
	const time = new Date(epochS * 1000);
	return Number.isNaN(time.getTime()) ? null : time.toISOString();
}
