/** A reading in words, from a draft or from a sealed and opened statement. */
import { isReportKey } from "./say.ts";
import { ENGLISH, type Speaker } from "./speaker.ts";
import { unitSymbol } from "./unit-symbol.ts";

interface Quantity {
	readonly value: number;
	readonly unit: string;
	readonly typed?: string | undefined;
	readonly typedUnit?: string | undefined;
}

/** The members of a reading that are told. */
export interface ToldReading {
	readonly values?: readonly Quantity[] | undefined;
	readonly count?: number | undefined;
	readonly exposure?: Quantity | undefined;
	readonly trials?: number | undefined;
	readonly successes?: number | undefined;
	readonly notTested?: { readonly reason: string } | undefined;
}

/**
 * What was read, with the digits as they were typed, the decimal sign that of the language. A `visual` check was looked
 * at once: found well, or not.
 */
export function readingWords(reading: ToldReading, kind?: string, speaker: Speaker = ENGLISH): string {
	const { say, writeNumber, between } = speaker;
	const written = (quantity: Quantity) => quantityWords(quantity, speaker);
	if (reading.notTested !== undefined) {
		const key = `arrival.not-tested.${reading.notTested.reason}`;
		return say("arrival.reading.not-tested", { why: isReportKey(key) ? say(key) : reading.notTested.reason });
	}
	if (reading.values !== undefined) return reading.values.map(written).join(between);
	if (reading.count !== undefined) {
		const over = reading.exposure === undefined ? "–" : written(reading.exposure);
		return say("arrival.reading.count", { count: writeNumber(reading.count), over });
	}
	const { trials = 0, successes = 0 } = reading;
	if (kind === "visual") return say(successes === trials ? "arrival.check.good" : "arrival.check.bad");
	return say("arrival.reading.tries", { trials: writeNumber(trials), successes: writeNumber(successes) });
}

/** A number with its unit, as typed. */
export function quantityWords(quantity: Quantity, speaker: Speaker = ENGLISH): string {
	const digits =
		quantity.typed === undefined ? speaker.writeNumber(quantity.value) : speaker.writeDigits(quantity.typed);
	return `${digits} ${unitSymbol(quantity.typedUnit ?? quantity.unit, speaker)}`.trim();
}
