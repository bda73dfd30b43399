/** An impact in words and figures: the same on the pages and in reports. */
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { allowedGn, type BoardLine, spectrumAt } from "./board-line.ts";
import { rateWords } from "./rate-words.ts";
import { lasting, showSecond } from "./time-scale.ts";

export function whenWords({ at, afterS }: RecordingEventView, speaker: Speaker = ENGLISH): string {
	if (at !== null) return showSecond(at, speaker);
	return speaker.say("recording.after", { time: lasting(afterS, speaker) });
}

export function placeInShort({ place }: RecordingEventView, { say }: Speaker = ENGLISH): string {
	if (place.status === "cannot-be-placed" || place.status === "outside") return say(`recording.${place.status}`);
	return [...new Set(place.spans.map(({ kind }) => say(`recording.span-${kind}`)))].join(` ${say("recording.or")} `);
}

/** A lower bound says so. */
export function peakWords({ peakGn, peakDoubt }: RecordingEventView, { writeNumber }: Speaker = ENGLISH): string {
	const value = `${writeNumber(Number(peakGn.toPrecision(3)))} gₙ`;
	return peakDoubt === null ? value : `≥ ${value}`;
}

export function durationWords({ durationMs }: RecordingEventView, { writeNumber }: Speaker = ENGLISH): string {
	return `${writeNumber(Number(durationMs.toPrecision(3)))} ms`;
}

export function velocityWords(event: RecordingEventView, { say, writeNumber }: Speaker = ENGLISH): string {
	const { velocityChangeMPerS } = event;
	return isVelocityTaken(event)
		? `${writeNumber(Number(velocityChangeMPerS.toPrecision(3)))} m/s`
		: say("recording.not-taken");
}

/** Of a pulse between the samples the change of velocity is not known to either side. */
export function isVelocityTaken({ peakDoubt }: RecordingEventView): boolean {
	return peakDoubt !== "few-samples" && peakDoubt !== "slow-sampling" && peakDoubt !== "phone";
}

/** By the time of the fall where it was seen, else by the rebound that nobody knows. */
export function dropWords(event: RecordingEventView, { say }: Speaker = ENGLISH): string {
	const { freeFallDropBandM, equivalentDropHeightM } = event;
	if (freeFallDropBandM === null && !isVelocityTaken(event)) return say("recording.not-taken");
	const [low, high] = freeFallDropBandM ?? [equivalentDropHeightM.restitution1, equivalentDropHeightM.restitution0];
	const millimetres = (metres: number) => Math.round(1000 * metres);
	return `${millimetres(low)} – ${millimetres(high)} mm`;
}

/** What an impact says, one sentence after another: its peak and how sure it is, the item's limit, the pack's drop, the board. */
export function eventSentences(
	event: RecordingEventView,
	board: BoardLine | null,
	speaker: Speaker = ENGLISH,
): string[] {
	const { say, colon } = speaker;
	const doubt = say(event.peakDoubt === null ? "recording.peak-holds" : `recording.doubt-${event.peakDoubt}`, {
		samples: Math.floor(event.samplesInPulse),
		rate: rateWords([event], speaker),
	});
	const by = say(event.freeFallDropBandM === null ? "recording.by-rebound" : "recording.by-fall");
	return [
		`${say("recording.peak")}${colon}${peakWords(event, speaker)}. ${doubt} ${say("recording.event-rate", { rate: rateWords([event], speaker) })}`,
		event.peakAgainstLimit.why,
		`${say("recording.drop")}${colon}${dropWords(event, speaker)} (${by}). ${event.dropAgainstPack.why}`,
		...(board === null ? [] : [boardWords(event, board, speaker)]),
	];
}

function boardWords(event: RecordingEventView, board: BoardLine, { say }: Speaker): string {
	const frequencyHz = board.naturalFrequencyHz;
	if (frequencyHz === null) return say("recording.board-no-frequency");
	const responseGn = spectrumAt(event.spectrum, frequencyHz);
	const limitGn = allowedGn(board, frequencyHz);
	if (responseGn === null) return say("recording.board-beyond", { frequencyHz });
	if (!isVelocityTaken(event)) return say("recording.board-not-taken", { frequencyHz });
	const values = { frequencyHz, responseGn, limitGn };
	if (responseGn > limitGn) return say("recording.board-above", values);
	return say(event.peakDoubt === null ? "recording.board-below" : "recording.board-open", values);
}
