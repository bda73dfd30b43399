/** A series of drops from the text of its request to the answer in words; runs on a thread of its own. */
import { dropSeries } from "../../calculations/cushioning/drop-series.ts";
import type { Axes } from "../../calculations/shock/trace/oscillator-responses.ts";
import { shockTrace } from "../../calculations/shock/trace/shock-trace.ts";
import { type DropSeriesAnswer, dropSeriesRequest } from "../../contract/drop-series.ts";
import { speak } from "../../texts/say.ts";
import { parseStrictJson } from "../strict-json.ts";
import { validate } from "../validate.ts";

/** @throws malformed-json, bad-input */
export function assessDropSeries(text: string): DropSeriesAnswer {
	const { drops, ...series } = validate(dropSeriesRequest, parseStrictJson(text));
	return speak(
		dropSeries({
			...series,
			drops: drops.map(({ axes, pretriggerSamples, ...drop }) => ({
				...drop,
				shock: shockTrace({
					sampleRateHz: drop.sampleRateHz,
					axes: axes.map((samples) => Float64Array.from(samples)) as unknown as Axes,
					pretriggerSamples,
					fullScaleGn: series.fullScaleGn,
					undamped: true,
					frequenciesHz: [],
				}),
			})),
		}),
	) as unknown as DropSeriesAnswer;
}
