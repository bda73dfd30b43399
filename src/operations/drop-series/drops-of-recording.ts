/** A series of drops out of one recording that holds them all, in the order in which they were done. */
import {
	type DropSeries,
	type DropSeriesInput,
	dropSeries,
	type SeriesDrop,
} from "../../calculations/cushioning/drop-series.ts";
import type { Judged } from "../../calculations/judged.ts";
import type { EventFacts, EventTrace } from "../../calculations/shock/recording/event-facts.ts";
import { shockTrace } from "../../calculations/shock/trace/shock-trace.ts";
import type { RecordingReading } from "../../contract/transit-recordings.ts";
import { invalid } from "../../faults.ts";
import { previewedFile } from "../transit-recordings/previewed-file.ts";
import { readRecorderFile } from "../transit-recordings/recording-reader.ts";

export type ToldDrop = Pick<SeriesDrop, "massKg" | "dropHeightM" | "drop">;

/** An impact this soon after a greater one is the dummy's bounce. Our choice: from 0.8 m it bounces within a second. */
const BOUNCE_S = 1.5;

/** @throws bad-input where the file cannot be read, or has not as many drops as were told */
export async function dropsOfRecording(
	bytes: Uint8Array,
	reading: RecordingReading,
	series: Omit<DropSeriesInput, "drops" | "device">,
	told: readonly ToldDrop[],
): Promise<Judged<DropSeries>> {
	const { events } = await readRecorderFile({ bytes }, previewedFile(bytes), {
		...reading,
		fullScaleGn: series.fullScaleGn,
	});
	const drops = withoutBounces(events);
	if (drops.length !== told.length)
		throw invalid([{ path: "/drops", code: "other-drops", facts: { found: drops.length, told: told.length } }]);
	return dropSeries({
		...series,
		device: reading.device,
		drops: told.map((drop, index) => {
			const { sampleRateHz, axes, baselineSamples } = (drops[index] as Found).trace;
			return {
				...drop,
				sampleRateHz,
				shock: shockTrace({
					sampleRateHz,
					axes,
					pretriggerSamples: baselineSamples ?? undefined,
					fullScaleGn: series.fullScaleGn,
					undamped: true,
					frequenciesHz: [],
				}),
			};
		}),
	});
}

interface Found {
	readonly facts: EventFacts;
	readonly trace: EventTrace;
}

function withoutBounces(events: readonly Found[]): Found[] {
	const kept: Found[] = [];
	for (const event of events) {
		const last = kept.at(-1)?.facts;
		const bounced = last !== undefined && event.facts.timeS - last.timeS < BOUNCE_S && event.facts.peakGn < last.peakGn;
		if (!bounced) kept.push(event);
	}
	return kept;
}
