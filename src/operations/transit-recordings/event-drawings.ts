/** An impact's trace, and its spectrum against what the board's rule allows, as drawings: the same on the pages and in reports. */
import type { Drawing } from "../../charts/drawing.ts";
import { type ShockPoint, shockPlot } from "../../charts/shock-plot.ts";
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { allowedGn, type BoardLine } from "./board-line.ts";
import type { RecordingCurves } from "./recording-curves.ts";

/** Shown around the peak: this many lengths of the pulse before and after. */
const LENGTHS_SHOWN = 4;

/** Null where too few samples are there to draw. */
export function traceDrawing(
	event: RecordingEventView,
	trace: RecordingCurves["traces"][number],
	{ say, tick }: Speaker = ENGLISH,
): Drawing | null {
	const { axes, peakIndex, sampleRateHz } = trace;
	const reach = Math.max(8, Math.ceil((LENGTHS_SHOWN * event.durationMs * sampleRateHz) / 1000));
	const length = axes[0]?.length ?? 0;
	const from = Math.max(0, peakIndex - reach);
	const to = Math.min(length, peakIndex + reach + 1);
	const points = Array.from({ length: to - from }, (_, index): ShockPoint => {
		const sizes = axes.map((samples) => samples[from + index] ?? 0);
		return { at: (1000 * (from + index - peakIndex)) / sampleRateHz, gn: Math.hypot(...sizes) };
	});
	if (points.length < 2) return null;
	return shockPlot({
		over: "time",
		points,
		limit: [],
		mark: null,
		words: {
			title: say("recording.trace-title", { number: event.number }),
			description: say("recording.trace-description", { peakGn: event.peakGn, durationMs: event.durationMs }),
			axis: say("recording.axis-ms"),
			valueAxis: say("recording.axis-gn"),
			tick,
			limit: "",
			mark: "",
		},
	});
}

export function spectrumDrawing(
	event: RecordingEventView,
	board: BoardLine | null,
	{ say, tick }: Speaker = ENGLISH,
): Drawing {
	const points = event.spectrum.map(({ frequencyHz, maximaxGn }) => ({ at: frequencyHz, gn: maximaxGn }));
	const greatest = event.spectrum.reduce((one, other) => (other.maximaxGn > one.maximaxGn ? other : one));
	const natural = board?.naturalFrequencyHz ?? null;
	const words = { frequencyHz: greatest.frequencyHz, greatestGn: greatest.maximaxGn };
	return shockPlot({
		over: "spectrum",
		points,
		limit: board === null ? [] : points.map(({ at }) => ({ at, gn: allowedGn(board, at) })),
		mark: board === null || natural === null ? null : { at: natural, gn: allowedGn(board, natural) },
		words: {
			title: say("recording.spectrum-title", { number: event.number }),
			description: say("recording.spectrum-description", words),
			axis: say("recording.axis-hz"),
			valueAxis: say("recording.axis-response"),
			tick,
			limit: say("recording.board-limit"),
			mark: say("recording.board-frequency"),
		},
	});
}
