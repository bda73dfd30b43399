/** How often a recording was sampled: at one rate, or from the slow log to the bursts. */
import { say, writeNumber } from "../../texts/say.ts";

export function rateWords(rates: readonly { readonly sampleRateHz: number }[]): string {
	const written = rates.map(({ sampleRateHz }) => writeNumber(Number(sampleRateHz.toPrecision(4))));
	const [slowest = "", fastest] = [written[0], written.at(-1)];
	return rates.length > 1 ? say("recording.rates", { slowest, fastest: fastest ?? "" }) : slowest;
}
