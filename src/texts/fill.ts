/**
 * Fills a text's values in. A template names them in braces: `The drop is {dropHeightM} m.` Numbers are written with up
 * to four significant digits; what is written from right to left is set apart.
 */
import { isolated } from "./isolated.ts";

export type TextValues = Readonly<Record<string, number | string>>;

/** Writes a number for people: up to four significant digits, no exponent between 1e-4 and 1e9. */
export function writeNumber(value: number, language = "en"): string {
	if (!Number.isFinite(value)) return "–";
	const size = Math.abs(value);
	if (size !== 0 && (size < 1e-4 || size >= 1e9)) return value.toExponential(2).replace(".", decimalSign(language));
	return new Intl.NumberFormat(language, { maximumSignificantDigits: 4, useGrouping: false }).format(value);
}

/** Between the whole part of a number and the rest. */
export function decimalSign(language: string): string {
	return language === "en" ? "." : ",";
}

/** The words. @throws Error naming the text's key when a value is missing */
export function fill(key: string, template: string, values: TextValues, language = "en"): string {
	return template.replace(/\{(\w+)\}/g, (_, name: string) => {
		const value = values[name];
		if (value === undefined) throw new Error(`text ${key} needs a value for ${name}`);
		return typeof value === "number" ? writeNumber(value, language) : isolated(value);
	});
}
