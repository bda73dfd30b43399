/** The trip over time: acceleration with custody and impacts, and temperature and humidity where they were recorded. */
import type { RecordingView } from "../../contract/transit-recordings.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import type { RecordingCurves } from "../../operations/transit-recordings/recording-curves.ts";
import { tripDrawings } from "../../operations/transit-recordings/trip-drawings.ts";
import { say } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";

export function TripFigures({
	found,
	result,
	curves,
}: {
	readonly found: OrderLine;
	readonly result: NonNullable<RecordingView["result"]>;
	readonly curves: RecordingCurves;
}) {
	const { acceleration, caption, ...slow } = tripDrawings(found.order, found.line.spans, result, curves);
	return (
		<section id="trip">
			<h2>{say("recording.trip")}</h2>
			<figure>
				<figcaption>{caption}</figcaption>
				<Chart id="trip-acceleration" drawing={acceleration} />
			</figure>
			{(["temperature", "humidity"] as const).map((series) => {
				const drawing = slow[series];
				return (
					drawing !== null && (
						<figure key={series}>
							<figcaption>{drawing.title}</figcaption>
							<Chart id={`trip-${series}`} drawing={drawing} />
						</figure>
					)
				);
			})}
		</section>
	);
}
