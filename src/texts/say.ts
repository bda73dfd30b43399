/**
 * Turns sentences into words. Every sentence that a person reads stands in `texts/<language>/`, by key; a template
 * names its values in braces: `The drop is {dropHeightM} m.` Numbers are written with up to four significant digits.
 */
import { english } from "./english.ts";

const LANGUAGES = { en: english } as const;
export type Language = keyof typeof LANGUAGES;
export type TextKey = keyof typeof english;
export type TextValues = Readonly<Record<string, number | string>>;

/** Writes a number for people: up to four significant digits, no exponent between 1e-4 and 1e9. */
export function writeNumber(value: number, language: Language = "en"): string {
	if (!Number.isFinite(value)) return "–";
	const size = Math.abs(value);
	if (size !== 0 && (size < 1e-4 || size >= 1e9)) return value.toExponential(2);
	return new Intl.NumberFormat(language, { maximumSignificantDigits: 4, useGrouping: false }).format(value);
}

/**
 * The words for a key in a language, its values filled in.
 * @throws Error when the key or a value it names is missing: a programming fault, found by the texts test.
 */
export function say(key: TextKey, values: TextValues = {}, language: Language = "en"): string {
	const template: string | undefined = LANGUAGES[language][key];
	if (template === undefined) throw new Error(`no text for key ${key}`);
	return template.replace(/\{(\w+)\}/g, (_, name: string) => {
		const value = values[name];
		if (value === undefined) throw new Error(`text ${key} needs a value for ${name}`);
		return typeof value === "number" ? writeNumber(value, language) : value;
	});
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
