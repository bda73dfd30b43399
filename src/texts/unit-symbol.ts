/** Symbols of the units that a person may type. A unit without a line here is written as its code. */
const SYMBOLS: Readonly<Record<string, string>> = {
	degC: "°C",
	percent: "%",
	ohm: "Ω",
	mohm: "mΩ",
	kohm: "kΩ",
	Mohm: "MΩ",
	one: "",
};

export function unitSymbol(unit: string): string {
	return SYMBOLS[unit] ?? unit;
}
