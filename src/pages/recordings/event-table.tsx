/** The impacts of a trip in figures: beside the plot, and for whoever does not see it. */
import type { RecordingEventView } from "../../contract/transit-recordings.ts";
import {
	dropWords,
	durationWords,
	peakWords,
	placeInShort,
	velocityWords,
	whenWords,
} from "../../operations/transit-recordings/event-words.ts";
import { say } from "../../texts/say.ts";

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
							{durationWords(event)}
						</td>
						<td class="number" data-label={say("recording.velocity-change")}>
							{velocityWords(event)}
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
