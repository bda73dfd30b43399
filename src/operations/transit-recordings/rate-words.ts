/** How often a recording was sampled: at one rate, or from the slow log to the bursts. */
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

export function rateWords(
	rates: readonly { readonly sampleRateHz: number }[],
	{ say, writeNumber }: Speaker = ENGLISH,
): string {
	const written = rates.map(({ sampleRateHz }) => writeNumber(Number(sampleRateHz.toPrecision(4))));
	const [slowest = "", fastest] = [written[0], written.at(-1)];
	return rates.length > 1 ? say("recording.rates", { slowest, fastest: fastest ?? "" }) : slowest;
}
