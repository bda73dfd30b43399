/**
 * Units. Every physical number carries its unit at the end of its name, and each quantity has exactly one unit
 * inside the program; what people type in other units is converted once, at the edge, and kept as typed beside it.
 */

/** Standard acceleration of gravity, m/s² (exact by definition). Source: published, 3rd CGPM (1901), SI Brochure 9th edition. */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

/** The closed list of unit endings for member names. A test refuses exported number members without one of them. */
export const UNIT_SUFFIXES = {
	M: "m",
	M2: "m²",
	M3: "m³",
	Kg: "kg",
	KgPerM3: "kg/m³",
	GramPerM2Day: "g/(m²·day)",
	GramPerM3: "g/m³",
	GramPerKg: "g/kg",
	GramPerUnit: "g/unit",
	S: "s",
	Ms: "ms",
	H: "h",
	Days: "days",
	Months: "months",
	Minutes: "min",
	Hz: "Hz",
	Gn: "gₙ",
	GnRms: "gₙ rms",
	Gn2PerHz: "gₙ²/Hz",
	MPerS: "m/s",
	MPerS2: "m/s²",
	N: "N",
	KNPerM: "kN/m",
	KPa: "kPa",
	GPa: "GPa",
	PerKPa: "1/kPa",
	KJPerM3: "kJ/m³",
	WPerMK: "W/(m·K)",
	JPerKgK: "J/(kg·K)",
	NJ: "nJ",
	Ohm: "Ω",
	V: "V",
	DegC: "°C",
	Percent: "%",
	GTPerS: "GT/s",
	GBytePerS: "GB/s",
	Bytes: "bytes",
	PerH: "1/h",
} as const;

/** Units in which a reading of a check may stand, as the code stored in a record → the symbol shown to people. */
export const READING_UNITS = {
	lanes: "lanes",
	"GT/s": "GT/s",
	ohm: "Ω",
	V: "V",
	A: "A",
	W: "W",
	g: "g",
	kg: "kg",
	degC: "°C",
	rpm: "rpm",
	percent: "%",
	MHz: "MHz",
	MiB: "MiB",
	errors: "errors",
	points: "points",
	s: "s",
	h: "h",
	runs: "runs",
	starts: "starts",
	m: "m",
	mm: "mm",
} as const;

/** Code of a reading's unit. */
export type ReadingUnit = keyof typeof READING_UNITS;
