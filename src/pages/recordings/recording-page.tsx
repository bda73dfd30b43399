/** A recording that was read: the trip over time with custody and impacts, each impact's trace and spectrum, and what they say. */
import type { FastifyRequest } from "fastify";
import { callerOf } from "../../access/callers.ts";
import type { RecordingView } from "../../contract/transit-recordings.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import { rateWords } from "../../operations/transit-recordings/rate-words.ts";
import type { RecordingCurves } from "../../operations/transit-recordings/recording-curves.ts";
import { lasting } from "../../operations/transit-recordings/time-scale.ts";
import { say, writeNumber } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { EventSection } from "./event-section.tsx";
import { EventTable } from "./event-table.tsx";
import { IndicatorNote } from "./indicator-note.tsx";
import { RecordingLayout } from "./recording-layout.tsx";
import { TripFigures } from "./trip-figures.tsx";

export function RecordingPage(props: {
	readonly request: FastifyRequest;
	readonly found: OrderLine;
	readonly recording: RecordingView;
	readonly curves: RecordingCurves | null;
	readonly address: string;
}) {
	const { request, found, recording, curves, address } = props;
	const { result, reading } = recording;
	const crumbs = [{ href: address.split("/").slice(0, -1).join("/"), label: say("recording.title") }];
	const isShop = callerOf(request).kind === "account";
	return (
		<RecordingLayout request={request} order={found.order} title={say("recording.one-title")} crumbs={crumbs}>
			<p>
				{recording.fileName}, {say("recording.brought", { time: showTime(recording.broughtAt) })}.{" "}
				<a href={`/api/v1/transit-recordings/${recording.id}/file`}>{say("recording.fetch")}</a>
				{isShop && (
					<>
						{" · "}
						<a href={`${address}/columns`}>{say("recording.read-again")}</a>
					</>
				)}
			</p>
			<Pending recording={recording} />
			{result === null || reading === null || curves === null ? (
				recording.pending === null && <p>{say("recording.waits")}</p>
			) : (
				<>
					<p class="lead">
						{say("recording.lead", {
							events: result.eventsFound,
							time: lasting(result.durationS),
							rate: rateWords(result.rates),
							where: say(`recording.where-${reading.place}`),
						})}
					</p>
					<ul>
						{result.notes.map((note) => (
							<li key={note}>{note}</li>
						))}
					</ul>
					<TripFigures found={found} result={result} curves={curves} />
					<EventTable events={result.events} />
					{result.events.map((event) => (
						<EventSection
							key={event.number}
							event={event}
							trace={curves.traces.find(({ number }) => number === event.number) ?? null}
							board={curves.board}
						/>
					))}
					{result.temperatureDegC !== null && (
						<p>
							{say("recording.temperature-ends", {
								least: result.temperatureDegC.least,
								greatest: result.temperatureDegC.greatest,
							})}
						</p>
					)}
					{result.humidityPercent !== null && (
						<p>
							{say("recording.humidity-ends", {
								least: result.humidityPercent.least,
								greatest: result.humidityPercent.greatest,
							})}
						</p>
					)}
				</>
			)}
			<IndicatorNote />
			<p class="hint">
				{say("recording.fingerprint")} <span class="fingerprint">{groupsOfFour(recording.sha256)}</span>,{" "}
				{writeNumber(recording.sizeBytes)} B
			</p>
		</RecordingLayout>
	);
}

/** How far a long file was read, or why it was not. */
function Pending({ recording: { pending, sizeBytes } }: { readonly recording: RecordingView }) {
	if (pending === null) return null;
	if (pending.status === "refused") return <p class="error">{say("recording.refused", { why: pending.why ?? "" })}</p>;
	if (pending.status === "stopped") return <p class="error">{say("recording.stopped")}</p>;
	const percent = Math.floor((100 * pending.bytesRead) / sizeBytes);
	return (
		<div class="note" role="status">
			<p id="read-so-far">{say("recording.being-read", { percent })}</p>
			<progress max={sizeBytes} value={pending.bytesRead} aria-labelledby="read-so-far" />
		</div>
	);
}
