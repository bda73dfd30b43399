/** How things are said in one language: sentences, numbers, times. Whoever writes for a reader is handed one. */
import { decimalSign } from "./fill.ts";
import type { Language } from "./language.ts";
import { type ReportKey, type Spoken, say, speak, type TextValues, writeNumber } from "./say.ts";
import { showDay, showTime } from "./shown-time.ts";

export interface Speaker {
	readonly language: Language;
	readonly say: (key: ReportKey, values?: TextValues) => string;
	readonly speak: <T>(answer: T) => Spoken<T>;
	readonly writeNumber: (value: number) => string;
	/** Digits that stand already, with the decimal sign of the language. */
	readonly writeDigits: (digits: string) => string;
	/** A number of a scale, all its digits. */
	readonly tick: (value: number) => string;
	/** Between a name and what is said of it, where no text of its own holds both. */
	readonly colon: string;
	/** Between the parts of a list that may hold commas. */
	readonly between: string;
	/** Of a civil date, `YYYY-MM-DD`. */
	readonly showDay: (date: string) => string;
	readonly showTime: (time: string | Date, offset?: string) => string;
}

export function speakerOf(language: Language): Speaker {
	const writeDigits = (digits: string) => digits.replace(/^(-?\d+)[.,](?=\d)/, `$1${decimalSign(language)}`);
	return {
		language,
		say: (key, values = {}) => say(key, values, language),
		speak: (answer) => speak(answer, language),
		writeNumber: (value) => writeNumber(value, language),
		writeDigits,
		tick: (value) => writeDigits(String(value)),
		colon: language === "fr" ? "\u00a0: " : ": ",
		between: language === "fr" ? "\u202f; " : "; ",
		showDay: (date) => showDay(date, language),
		showTime: (time, offset) => showTime(time, offset, language),
	};
}

/** For pages and answers, which are in English. */
export const ENGLISH = speakerOf("en");
