/** The impacts of a trip in figures: beside the plot, and for whoever does not see it. */
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import { say, writeNumber } from "../../texts/say.ts";
import { lasting, showSecond } from "./time-scale.ts";

export function EventTable({ events }: { readonly events: readonly RecordingEventView[] }) {
	if (events.length === 0) return <p>{say("recording.no-events")}</p>;
	const heads = ["when", "where", "peak", "duration", "velocity-change", "drop"] as const;
	return (
		<table class="stacked impacts" id="events">
			<caption>{say("recording.events")}</caption>
			<thead>
				<tr>
					<th scope="col">{say("recording.number")}</th>
					{heads.map((head) => (
						<th key={head} scope="col" class={head === "when" || head === "where" ? undefined : "number"}>
							{say(`recording.${head}`)}
						</th>
					))}
				</tr>
			</thead>
			<tbody>
				{events.map((event) => (
					<tr key={event.number}>
						<th scope="row">
							<a href={`#event-${event.number}`}>{event.number}</a>
						</th>
						<td data-label={say("recording.when")}>{whenWords(event)}</td>
						<td data-label={say("recording.where")}>{placeInShort(event)}</td>
						<td class="number" data-label={say("recording.peak")}>
							{peakWords(event)}
						</td>
						<td class="number" data-label={say("recording.duration")}>
							{writeNumber(Number(event.durationMs.toPrecision(3)))} ms
						</td>
						<td class="number" data-label={say("recording.velocity-change")}>
							{velocityTaken(event)
								? `${writeNumber(Number(event.velocityChangeMPerS.toPrecision(3)))} m/s`
								: say("recording.not-taken")}
						</td>
						<td class="number" data-label={say("recording.drop")}>
							{dropWords(event)}
						</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

export function whenWords({ at, afterS }: RecordingEventView): string {
	return at === null ? say("recording.after", { time: lasting(afterS) }) : showSecond(at);
}

export function placeInShort({ place }: RecordingEventView): string {
	if (place.status === "cannot-be-placed" || place.status === "outside") return say(`recording.${place.status}`);
	return [...new Set(place.spans.map(({ kind }) => say(`recording.span-${kind}`)))].join(` ${say("recording.or")} `);
}

/** A lower bound says so. */
export function peakWords({ peakGn, peakDoubt }: RecordingEventView): string {
	const value = `${writeNumber(Number(peakGn.toPrecision(3)))} gₙ`;
	return peakDoubt === null ? value : `≥ ${value}`;
}

/** Of a pulse between the samples the change of velocity is not known to either side. */
function velocityTaken({ peakDoubt }: RecordingEventView): boolean {
	return peakDoubt !== "few-samples" && peakDoubt !== "slow-sampling" && peakDoubt !== "phone";
}

/** By the time of the fall where it was seen, else by the rebound that nobody knows. */
export function dropWords(event: RecordingEventView): string {
	const { freeFallDropBandM, equivalentDropHeightM } = event;
	if (freeFallDropBandM === null && !velocityTaken(event)) return say("recording.not-taken");
	const [low, high] = freeFallDropBandM ?? [equivalentDropHeightM.restitution1, equivalentDropHeightM.restitution0];
	const millimetres = (metres: number) => Math.round(1000 * metres);
	return `${millimetres(low)} – ${millimetres(high)} mm`;
}
