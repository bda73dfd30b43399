/** What recorders noted on a leg: the trip, the impacts in figures, the greatest of them in full, and what it says. */
import type { CustodySpan } from "../../../calculations/comparison/types.ts";
import type { OrderView } from "../../../contract/orders.ts";
import type { RecordingEventView, RecordingView } from "../../../contract/transit-recordings.ts";
import { type Block, facts, figure, list, paragraph, subheading, table, type Words } from "../../../reports/report.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { spectrumDrawing, traceDrawing } from "../../transit-recordings/event-drawings.ts";
import {
	dropWords,
	durationWords,
	eventSentences,
	peakWords,
	placeInShort,
	velocityWords,
	whenWords,
} from "../../transit-recordings/event-words.ts";
import { rateWords } from "../../transit-recordings/rate-words.ts";
import type { RecordingCurves } from "../../transit-recordings/recording-curves.ts";
import type { LegRecording } from "../../transit-recordings/recordings-of-leg.ts";
import { lasting } from "../../transit-recordings/time-scale.ts";
import { tripDrawings } from "../../transit-recordings/trip-drawings.ts";
import { type KnownRow, known } from "../report-words.ts";

type Result = NonNullable<RecordingView["result"]>;
type Reading = NonNullable<RecordingView["reading"]>;

export function recordingBlocks(
	order: OrderView,
	spans: readonly CustodySpan[],
	recordings: readonly LegRecording[],
	speaker: Speaker,
): Block[] {
	const { say } = speaker;
	if (recordings.length === 0) return [paragraph(say("report.recording-none"), "small")];
	return recordings.flatMap(({ view, curves }): Block[] => {
		const { result, reading } = view;
		return [
			subheading(say("report.recording", { name: view.fileName })),
			facts(fileFacts(view, speaker)),
			...(result === null || reading === null || curves === null
				? [paragraph(say("report.recording-unread"))]
				: readBlocks(order, spans, result, curves, speaker)),
		];
	});
}

function fileFacts(view: RecordingView, speaker: Speaker): (readonly [string, Words])[] {
	const { broughtAt, sha256, reading, result } = view;
	return known(
		speaker,
		["report.recording-brought", speaker.showTime(broughtAt)],
		["report.recording-hash", sha256],
		...(reading === null || result === null ? [] : readingFacts(reading, result, speaker)),
	);
}

function readingFacts(reading: Reading, result: Result, speaker: Speaker): readonly KnownRow[] {
	const { say, writeNumber, showTime } = speaker;
	const { clockUncertaintyS, fullScaleGn, mapping } = reading;
	return [
		["recording.place", say(`recording.where-${reading.place}`)],
		["recording.device", say(`recording.device-${reading.device}`)],
		[
			"report.recording-sampling",
			say("report.recording-sampling-of", {
				rate: rateWords(result.rates, speaker),
				axes: mapping.axes.length,
				rows: result.rows,
			}),
		],
		["report.recording-length", lasting(result.durationS, speaker)],
		[
			"report.recording-begins",
			result.startsAt === null ? say("report.recording-no-clock") : showTime(result.startsAt),
		],
		[
			"recording.clock",
			clockUncertaintyS === undefined
				? say("report.recording-clock-open")
				: say("report.recording-clock-of", { seconds: clockUncertaintyS }),
		],
		[
			"recording.full-scale",
			fullScaleGn === undefined ? say("report.transit-not-noted") : `${writeNumber(fullScaleGn)} gₙ`,
		],
		["recording.temperature", endsWords("temperature", result.temperatureDegC, speaker)],
		["recording.humidity", endsWords("humidity", result.humidityPercent, speaker)],
	];
}

function endsWords(
	series: "temperature" | "humidity",
	ends: Result["temperatureDegC"],
	{ say }: Speaker,
): string | null {
	return ends === null ? null : say(`recording.${series}-ends`, { least: ends.least, greatest: ends.greatest });
}

function readBlocks(
	order: OrderView,
	spans: readonly CustodySpan[],
	result: Result,
	curves: RecordingCurves,
	speaker: Speaker,
): Block[] {
	const { say } = speaker;
	const { acceleration, caption } = tripDrawings(order, spans, result, curves, speaker);
	return [
		figure(acceleration, caption),
		...(result.events.length === 0
			? [paragraph(say("recording.no-events"))]
			: impactBlocks(result.events, curves, speaker)),
		paragraph(say("report.recording-says"), "note"),
		list(result.notes),
	];
}

function impactBlocks(events: readonly RecordingEventView[], curves: RecordingCurves, speaker: Speaker): Block[] {
	const { say } = speaker;
	const heads = ["number", "when", "where", "peak", "duration", "velocity-change", "drop"] as const;
	const rows = events.map((event) => [
		String(event.number),
		whenWords(event, speaker),
		placeInShort(event, speaker),
		peakWords(event, speaker),
		durationWords(event, speaker),
		velocityWords(event, speaker),
		dropWords(event, speaker),
	]);
	const worst = events.reduce((one, other) => (other.peakGn > one.peakGn ? other : one));
	return [
		paragraph(say("recording.events"), "note"),
		table(
			heads.map((head) => say(`recording.${head}`)),
			[1.1, 4, 4, 2, 2, 2.2, 3],
			rows,
		),
		...worstBlocks(worst, curves, speaker),
	];
}

function worstBlocks(event: RecordingEventView, { traces, board }: RecordingCurves, speaker: Speaker): Block[] {
	const { say } = speaker;
	const trace = traces.find(({ number }) => number === event.number);
	const traced = trace === undefined ? null : traceDrawing(event, trace, speaker);
	const spectrum = spectrumDrawing(event, board, speaker);
	return [
		subheading(say("report.recording-greatest", { number: event.number })),
		paragraph(`${whenWords(event, speaker)}${speaker.colon}${placeInShort(event, speaker)}. ${event.place.why}`),
		list(eventSentences(event, board, speaker)),
		...(traced === null ? [] : [figure(traced, `${traced.title}.`)]),
		figure(spectrum, `${spectrum.title}. ${say("recording.spectrum-text")}`),
	];
}
