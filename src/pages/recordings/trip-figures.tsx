/** The trip over time: acceleration with custody and impacts, and temperature and humidity where they were recorded. */
import { overTime, type Stretch } from "../../charts/over-time.ts";
import type { RecordingView } from "../../contract/transit-recordings.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import type { RecordingCurves } from "../../operations/transit-recordings/transit-recordings.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";
import { timeScale } from "./time-scale.ts";

type Result = NonNullable<RecordingView["result"]>;

export function TripFigures({
	found,
	result,
	curves,
}: {
	readonly found: OrderLine;
	readonly result: Result;
	readonly curves: RecordingCurves;
}) {
	const scale = timeScale(result.durationS);
	const at = (afterS: number) => afterS / scale.seconds;
	const startsMs = result.startsAt === null ? null : Date.parse(result.startsAt);
	const bands =
		startsMs === null
			? []
			: bandsOf(found, startsMs).map((band) => ({ ...band, from: at(band.from), to: at(band.to) }));
	const stretches = (series: "acceleration" | "temperature" | "humidity") => stretchesOf(curves, series, at);
	const axis = say(`recording.axis-${scale.key}`);
	const figure = (series: "temperature" | "humidity", ends: Result["temperatureDegC"]) =>
		ends === null ? null : (
			<figure key={series}>
				<figcaption>{say(`recording.${series}-over-time`)}</figcaption>
				<Chart
					id={`trip-${series}`}
					drawing={overTime(
						{
							stretches: stretches(series),
							bands,
							events: [],
							joined: true,
							base: null,
							words: {
								title: say(`recording.${series}-over-time`),
								description: say(`recording.${series}-ends`, { least: ends.least, greatest: ends.greatest }),
								axis,
								valueAxis: series === "temperature" ? "°C" : "%",
							},
						},
						220,
					)}
				/>
			</figure>
		);
	return (
		<section id="trip">
			<h2>{say("recording.trip")}</h2>
			<figure>
				<figcaption>
					{say(bands.length === 0 ? "recording.trip-caption-no-clock" : "recording.trip-caption")}
				</figcaption>
				<Chart
					id="trip-acceleration"
					drawing={overTime({
						stretches: stretches("acceleration"),
						bands,
						events: result.events.map(({ number, afterS, peakGn }) => ({
							at: at(afterS),
							value: peakGn,
							label: String(number),
						})),
						joined: false,
						base: 0,
						words: {
							title: say("recording.trip"),
							description: say("recording.trip-description", {
								events: result.eventsFound,
								greatestGn: Math.max(0, ...result.events.map(({ peakGn }) => peakGn)),
							}),
							axis,
							valueAxis: say("recording.axis-gn"),
						},
					})}
				/>
			</figure>
			{figure("temperature", result.temperatureDegC)}
			{figure("humidity", result.humidityPercent)}
		</section>
	);
}

/** The finest level that is kept, in seconds after the begin. Levels of all series hold the same stretches. */
function stretchesOf(
	{ series, startsS }: RecordingCurves,
	name: "acceleration" | "temperature" | "humidity",
	at: (afterS: number) => number,
): Stretch[] {
	const times = series.time?.[0]?.ends ?? [];
	const ends = series[name]?.[0]?.ends ?? [];
	return Array.from({ length: times.length / 2 }, (_, index) => ({
		from: at((times[2 * index] ?? 0) - startsS),
		to: at((times[2 * index + 1] ?? 0) - startsS),
		least: ends[2 * index] ?? Number.NaN,
		greatest: ends[2 * index + 1] ?? Number.NaN,
	}));
}

function bandsOf({ line, order }: OrderLine, startsMs: number) {
	return line.spans.map(({ kind, holderId, startsAt, endsAt }) => ({
		from: (Date.parse(startsAt) - startsMs) / 1000,
		to: (Date.parse(endsAt) - startsMs) / 1000,
		label: say(`recording.band-${kind}` as TextKey, {
			holder: holderId === order.owner.id ? order.owner.name : order.repairer.name,
		}),
	}));
}
