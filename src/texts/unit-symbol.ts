/** Symbols of the units that a person may type. A unit without a line here is written as its code, or in words. */
import { isReportKey } from "./say.ts";
import { ENGLISH, type Speaker } from "./speaker.ts";

const SYMBOLS: Readonly<Record<string, string>> = {
	degC: "°C",
	percent: "%",
	ohm: "Ω",
	mohm: "mΩ",
	kohm: "kΩ",
	Mohm: "MΩ",
	one: "",
};

/** What is counted, such as `errors`, has a word in each language. */
export function unitSymbol(unit: string, { say }: Speaker = ENGLISH): string {
	const key = `unit.${unit}`;
	return isReportKey(key) ? say(key) : (SYMBOLS[unit] ?? unit);
}
