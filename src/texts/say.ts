/** Turns sentences into words. Every sentence that a person reads stands in `texts/<language>/`, by key. */
import { english } from "./english.ts";
import { fill, type TextValues } from "./fill.ts";

const LANGUAGES = { en: english } as const;
export type Language = keyof typeof LANGUAGES;
/** Those that have words. */
export const languages = Object.keys(LANGUAGES) as Language[];
export type TextKey = keyof typeof english;
export { type TextValues, writeNumber } from "./fill.ts";

/**
 * The words for a key in a language, its values filled in.
 * @throws Error when the key or a value it names is missing: a programming fault, found by the texts test.
 */
export function say(key: TextKey, values: TextValues = {}, language: Language = "en"): string {
	const template: string | undefined = LANGUAGES[language][key];
	if (template === undefined) throw new Error(`no text for key ${key}`);
	return fill(key, template, values, language);
}

/** Whether a string is a text key. */
export function isTextKey(key: string): key is TextKey {
	return Object.hasOwn(english, key);
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
		return say(value.sentence, "values" in value ? (value.values as TextValues) : {}, language);
	}
	return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, spoken(entry, language)]));
}
