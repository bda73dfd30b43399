/** Turns sentences into words. Every sentence that a person reads stands in `texts/<language>/`, by key. */
import { english } from "./english.ts";
import { fill, type TextValues } from "./fill.ts";
import { french } from "./french.ts";
import { german } from "./german.ts";
import type { Language } from "./language.ts";
import type { ReportKey } from "./report-texts.ts";
import { setSpaces } from "./set-spaces.ts";

export type TextKey = keyof typeof english;
export { type TextValues, writeNumber } from "./fill.ts";
export type { Language, ReportKey };

const TEMPLATES: Readonly<Record<Language, Readonly<Record<string, string>>>> = { en: english, de: german, fr: french };

/**
 * The words for a key in a language, its values filled in. What a report can say is there in every language; all else
 * in English alone.
 * @throws Error when the key or a value it names is missing: a programming fault, found by the texts test. Another
 * language's words never stand in for it.
 */
export function say(key: TextKey, values?: TextValues, language?: "en"): string;
export function say(key: ReportKey, values: TextValues, language: Language): string;
export function say(key: TextKey, values: TextValues = {}, language: Language = "en"): string {
	const template = TEMPLATES[language][key];
	if (template === undefined) throw new Error(`no text for key ${key} in ${language}`);
	return fill(key, setSpaces(template, language), worded(values, language), language);
}

/** Whether a string is a text key. */
export function isTextKey(key: string): key is TextKey {
	return Object.hasOwn(english, key);
}

/** Whether a string is a key that a report can say, in any language. */
export function isReportKey(key: string): key is ReportKey {
	return Object.hasOwn(german, key);
}

/** Values that calculations give as codes, by name; the code's words stand under this key and a dot. */
const CODED: Readonly<Record<string, string>> = { face: "pack.face", where: "pack.face", unit: "unit" };

/** Codes among the values in words: `top-left` by its parts, ` errors` with its space. What is no code stays. */
function worded(values: TextValues, language: Language): TextValues {
	return Object.fromEntries(
		Object.entries(values).map(([name, value]) => {
			const start = CODED[name];
			if (start === undefined || typeof value !== "string") return [name, value];
			return [name, value.replace(/[a-z]+/g, (code) => wordOf(`${start}.${code}`, language) ?? code)];
		}),
	);
}

function wordOf(key: string, language: Language): string | undefined {
	return isReportKey(key) ? TEMPLATES[language][key] : undefined;
}

/** An answer in which each sentence object has become its words. */
export type Spoken<T> = T extends { readonly sentence: string }
	? string
	: T extends readonly unknown[]
		? { [K in keyof T]: Spoken<T[K]> }
		: T extends object
			? { [K in keyof T]: Spoken<T[K]> }
			: T;

/** Replaces every `{ sentence, values }` inside an answer by its words; everything else is kept as it is. */
export function speak<T>(answer: T, language: Language = "en"): Spoken<T> {
	return spoken(answer, language) as Spoken<T>;
}

function spoken(value: unknown, language: Language): unknown {
	if (Array.isArray(value)) return value.map((entry) => spoken(entry, language));
	if (value === null || typeof value !== "object") return value;
	if ("sentence" in value && typeof value.sentence === "string") {
		if (!isTextKey(value.sentence)) throw new Error(`no text for key ${value.sentence}`);
		// Whether another language has it is tested; `say` throws where it has not.
		return say(value.sentence as ReportKey, "values" in value ? (value.values as TextValues) : {}, language);
	}
	return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, spoken(entry, language)]));
}
