/** One impact: its figures, what they say against the pack, its trace, and its spectrum against what the board's rule allows. */
import { type ShockPoint, shockPlot } from "../../charts/shock-plot.ts";
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import { allowedGn, type BoardLine, spectrumAt } from "../../operations/transit-recordings/board-line.ts";
import type { RecordingCurves } from "../../operations/transit-recordings/transit-recordings.ts";
import { say } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";
import { dropWords, peakWords, placeInShort, whenWords } from "./event-table.tsx";
import { rateWords } from "./rate-words.ts";

interface EventProps {
	readonly event: RecordingEventView;
	readonly trace: RecordingCurves["traces"][number] | null;
	readonly board: BoardLine | null;
}

export function EventSection({ event, trace, board }: EventProps) {
	return (
		<section id={`event-${event.number}`}>
			<h2>{say("recording.event", { number: event.number })}</h2>
			<p>
				{whenWords(event)}: {placeInShort(event)}. {event.place.why}
			</p>
			<ul>
				<li>
					{say("recording.peak")}: {peakWords(event)}.{" "}
					{say(event.peakDoubt === null ? "recording.peak-holds" : `recording.doubt-${event.peakDoubt}`, {
						samples: Math.floor(event.samplesInPulse),
						rate: rateWords([event]),
					})}{" "}
					{say("recording.event-rate", { rate: rateWords([event]) })}
				</li>
				<li>{event.peakAgainstLimit.why}</li>
				<li>
					{say("recording.drop")}: {dropWords(event)}
					{` (${say(event.freeFallDropBandM === null ? "recording.by-rebound" : "recording.by-fall")}). `}
					{event.dropAgainstPack.why}
				</li>
				{board !== null && <li>{boardWords(event, board)}</li>}
			</ul>
			{trace !== null && <Trace event={event} trace={trace} />}
			<Spectrum event={event} board={board} />
		</section>
	);
}

/** Shown around the peak: this many lengths of the pulse before and after. */
const LENGTHS_SHOWN = 4;

function Trace({
	event,
	trace,
}: {
	readonly event: RecordingEventView;
	readonly trace: NonNullable<EventProps["trace"]>;
}) {
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
	const title = say("recording.trace-title", { number: event.number });
	return (
		<figure>
			<figcaption>{title}</figcaption>
			<Chart
				id={`trace-${event.number}`}
				drawing={shockPlot({
					over: "time",
					points,
					limit: [],
					mark: null,
					words: {
						title,
						description: say("recording.trace-description", { peakGn: event.peakGn, durationMs: event.durationMs }),
						axis: say("recording.axis-ms"),
						valueAxis: say("recording.axis-gn"),
						limit: "",
						mark: "",
					},
				})}
			/>
		</figure>
	);
}

function Spectrum({ event, board }: Pick<EventProps, "event" | "board">) {
	const points = event.spectrum.map(({ frequencyHz, maximaxGn }) => ({ at: frequencyHz, gn: maximaxGn }));
	const greatest = event.spectrum.reduce((one, other) => (other.maximaxGn > one.maximaxGn ? other : one));
	const title = say("recording.spectrum-title", { number: event.number });
	const natural = board?.naturalFrequencyHz ?? null;
	const words = { frequencyHz: greatest.frequencyHz, greatestGn: greatest.maximaxGn };
	return (
		<figure>
			<figcaption>
				{title}. {say("recording.spectrum-text")}
			</figcaption>
			<Chart
				id={`spectrum-${event.number}`}
				drawing={shockPlot({
					over: "spectrum",
					points,
					limit: board === null ? [] : points.map(({ at }) => ({ at, gn: allowedGn(board, at) })),
					mark: board === null || natural === null ? null : { at: natural, gn: allowedGn(board, natural) },
					words: {
						title,
						description: say("recording.spectrum-description", words),
						axis: say("recording.axis-hz"),
						valueAxis: say("recording.axis-response"),
						limit: say("recording.board-limit"),
						mark: say("recording.board-frequency"),
					},
				})}
			/>
			<details>
				<summary>{say("recording.spectrum-figures")}</summary>
				<table>
					<thead>
						<tr>
							<th scope="col" class="number">
								{say("recording.axis-hz")}
							</th>
							<th scope="col" class="number">
								{say("recording.axis-response")}
							</th>
						</tr>
					</thead>
					<tbody>
						{event.spectrum.map(({ frequencyHz, maximaxGn }) => (
							<tr key={frequencyHz}>
								<td class="number">{frequencyHz.toPrecision(3)}</td>
								<td class="number">{maximaxGn.toPrecision(3)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</details>
		</figure>
	);
}

function boardWords(event: RecordingEventView, board: BoardLine): string {
	const frequencyHz = board.naturalFrequencyHz;
	if (frequencyHz === null) return say("recording.board-no-frequency");
	const responseGn = spectrumAt(event.spectrum, frequencyHz);
	const limitGn = allowedGn(board, frequencyHz);
	if (responseGn === null) return say("recording.board-beyond", { frequencyHz });
	const values = { frequencyHz, responseGn, limitGn };
	if (responseGn > limitGn) return say("recording.board-above", values);
	return say(event.peakDoubt === null ? "recording.board-below" : "recording.board-open", values);
}
