/** One impact: its figures, what they say against the pack, its trace, and its spectrum against what the board's rule allows. */
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import type { BoardLine } from "../../operations/transit-recordings/board-line.ts";
import { spectrumDrawing, traceDrawing } from "../../operations/transit-recordings/event-drawings.ts";
import { eventSentences, placeInShort, whenWords } from "../../operations/transit-recordings/event-words.ts";
import type { RecordingCurves } from "../../operations/transit-recordings/recording-curves.ts";
import { say } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";

type Trace = RecordingCurves["traces"][number];

interface EventProps {
	readonly event: RecordingEventView;
	readonly trace: Trace | null;
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
				{eventSentences(event, board).map((sentence) => (
					<li key={sentence}>{sentence}</li>
				))}
			</ul>
			{trace !== null && <Trace event={event} trace={trace} />}
			<Spectrum event={event} board={board} />
		</section>
	);
}

function Trace({ event, trace }: { readonly event: RecordingEventView; readonly trace: Trace }) {
	const drawing = traceDrawing(event, trace);
	if (drawing === null) return null;
	return (
		<figure>
			<figcaption>{drawing.title}</figcaption>
			<Chart id={`trace-${event.number}`} drawing={drawing} />
		</figure>
	);
}

function Spectrum({ event, board }: Pick<EventProps, "event" | "board">) {
	const drawing = spectrumDrawing(event, board);
	return (
		<figure>
			<figcaption>
				{drawing.title}. {say("recording.spectrum-text")}
			</figcaption>
			<Chart id={`spectrum-${event.number}`} drawing={drawing} />
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
