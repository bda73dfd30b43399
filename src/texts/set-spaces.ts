/**
 * Spaces that no line may break at, set by rule, so that dictionaries are typed with plain spaces. In German and French a
 * number and the unit or sign behind it stay together. French sets a narrow space before `; ! ? %` and a full one before
 * `:` and inside `« »`. Source: from memory, the usual rules of French typesetting; DIN 5008 for German.
 */
import type { Language } from "./language.ts";

const NARROW = "\u202f";
const FULL = "\u00a0";
/** A number, or a place for one, and what measures it. */
const MEASURED = /(\d|\}) (%|gₙ|GT\/s|kPa|kJ|kg|cm²|mm|m|N·m|N|Hz|°C|V|h)(?![\p{L}\d])/gu;

/** A template with the spaces of its language. */
export function setSpaces(template: string, language: Language): string {
	if (language === "en") return template;
	const measured = template.replace(MEASURED, (_, number: string, unit: string) => `${number}${FULL}${unit}`);
	if (language === "de") return measured;
	return measured
		.replace(/[ \u00a0]([;!?%])/g, `${NARROW}$1`)
		.replace(/ :/g, `${FULL}:`)
		.replace(/« /g, `«${FULL}`)
		.replace(/ »/g, `${FULL}»`);
}
