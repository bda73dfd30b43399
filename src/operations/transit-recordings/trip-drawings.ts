/** A trip over time as drawings: acceleration with custody and impacts, temperature and humidity. The same on the pages and in reports. */
import type { CustodySpan } from "../../calculations/comparison/types.ts";
import type { Drawing } from "../../charts/drawing.ts";
import { overTime, type Stretch } from "../../charts/over-time.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordingView } from "../../contract/transit-recordings.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import type { RecordingCurves } from "./recording-curves.ts";
import { timeScale } from "./time-scale.ts";

type Result = NonNullable<RecordingView["result"]>;
type Series = "acceleration" | "temperature" | "humidity";

export interface TripDrawings {
	readonly acceleration: Drawing;
	/** What the drawing shows, and what it cannot without a clock. */
	readonly caption: string;
	/** Null where it was not recorded. */
	readonly temperature: Drawing | null;
	readonly humidity: Drawing | null;
}

export function tripDrawings(
	order: OrderView,
	spans: readonly CustodySpan[],
	result: Result,
	curves: RecordingCurves,
	speaker: Speaker = ENGLISH,
): TripDrawings {
	const { say, tick } = speaker;
	const scale = timeScale(result.durationS);
	const at = (afterS: number) => afterS / scale.seconds;
	const startsMs = result.startsAt === null ? null : Date.parse(result.startsAt);
	const bands =
		startsMs === null
			? []
			: bandsOf(order, spans, startsMs, speaker).map((band) => ({ ...band, from: at(band.from), to: at(band.to) }));
	const axis = say(`recording.axis-${scale.key}`);
	const slow = (series: "temperature" | "humidity", ends: Result["temperatureDegC"]) =>
		ends === null
			? null
			: overTime(
					{
						stretches: stretchesOf(curves, series, at),
						bands,
						events: [],
						joined: true,
						base: null,
						words: {
							title: say(`recording.${series}-over-time`),
							description: say(`recording.${series}-ends`, { least: ends.least, greatest: ends.greatest }),
							axis,
							valueAxis: series === "temperature" ? "°C" : "%",
							tick,
						},
					},
					220,
				);
	return {
		acceleration: overTime({
			stretches: stretchesOf(curves, "acceleration", at),
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
				tick,
			},
		}),
		caption: say(bands.length === 0 ? "recording.trip-caption-no-clock" : "recording.trip-caption"),
		temperature: slow("temperature", result.temperatureDegC),
		humidity: slow("humidity", result.humidityPercent),
	};
}

/** The finest level that is kept, in seconds after the begin. Levels of all series hold the same stretches. */
function stretchesOf({ series, startsS }: RecordingCurves, name: Series, at: (afterS: number) => number): Stretch[] {
	const times = series.time?.[0]?.ends ?? [];
	const ends = series[name]?.[0]?.ends ?? [];
	return Array.from({ length: times.length / 2 }, (_, index) => ({
		from: at((times[2 * index] ?? 0) - startsS),
		to: at((times[2 * index + 1] ?? 0) - startsS),
		least: ends[2 * index] ?? Number.NaN,
		greatest: ends[2 * index + 1] ?? Number.NaN,
	}));
}

function bandsOf(order: OrderView, spans: readonly CustodySpan[], startsMs: number, { say }: Speaker) {
	return spans.map(({ kind, holderId, startsAt, endsAt }) => ({
		from: (Date.parse(startsAt) - startsMs) / 1000,
		to: (Date.parse(endsAt) - startsMs) / 1000,
		label: say(`recording.band-${kind}` as ReportKey, {
			holder: holderId === order.owner.id ? order.owner.name : order.repairer.name,
		}),
	}));
}
