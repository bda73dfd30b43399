/** Units of desiccant for a sealed barrier, by the published rules. They differ much: each names what it leaves out. */
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";

export const DESICCANT_METHODS = ["mil-area", "mil-volume", "eia-583", "j-std-033", "din-55474", "jis-z-0301"] as const;
export type DesiccantMethod = (typeof DESICCANT_METHODS)[number];
export const DUNNAGE_KINDS = ["cellulose", "bound-fibre", "glass-fibre", "synthetic-foam"] as const;
export type DunnageKind = (typeof DUNNAGE_KINDS)[number];

export interface Dunnage {
	readonly kind: DunnageKind;
	readonly massKg: number;
	/** Water that it gives off, where it is known. */
	readonly moistureGramPerKg?: number | undefined;
}

export interface DesiccantInput {
	readonly method: DesiccantMethod;
	/** Inside area, both faces. */
	readonly barrierAreaM2?: number | undefined;
	readonly barrierVolumeM3?: number | undefined;
	readonly waterVapourGramPerM2Day?: number | undefined;
	readonly days?: number | undefined;
	readonly months?: number | undefined;
	readonly finalHumidityPercent?: number | undefined;
	readonly capacityGramPerUnit?: number | undefined;
	readonly dunnage?: readonly Dunnage[] | undefined;
	/** Water in the air that is sealed in. */
	readonly airGramPerM3?: number | undefined;
}

export interface Desiccant {
	readonly units: number;
	/** The smallest pouch that holds them; null beyond the largest. */
	readonly unitsRounded: number | null;
}

const DAYS_PER_MONTH = 30.4;
/** Pouches, units. Source: published, MIL-D-3464E, as quoted. */
const POUCHES = [1 / 6, 1 / 3, 1 / 2, 1, 2, 4, 8, 16, 80];
/** Units per m² (0.011 per in²) and per m³ (0.0007 per in³). Source: published, MIL-P-116, as quoted. */
const UNITS_PER_M2 = 0.011 / 0.0254 ** 2;
const UNITS_PER_M3 = 0.0007 / 0.0254 ** 3;
/** Units per pound of dunnage. Source: from memory. */
const UNITS_PER_POUND: Readonly<Record<DunnageKind, number>> = {
	cellulose: 8,
	"bound-fibre": 6,
	"glass-fibre": 2,
	"synthetic-foam": 0.5,
};
const POUND_KG = 0.45359237;
/** Water that a unit takes, g, by the humidity that may be left. Sources: published, as quoted. */
const UNIT_TAKES: Readonly<Record<"mil-d-3464" | "eia-583" | "din-55474", Readonly<Record<number, number>>>> = {
	"mil-d-3464": { 20: 3, 40: 6 },
	"eia-583": { 10: 2, 20: 4.8, 30: 5.8, 40: 6.2 },
	"din-55474": { 20: 3, 40: 6, 60: 8 },
};
/** Share of the vapour rate by the final humidity; water of air and of wood, paper and card. Source: published, DIN 55474, as quoted. */
const DIN_RATE: Readonly<Record<number, number>> = { 20: 0.9, 40: 0.7, 60: 0.6 };
const DIN_AIR_GRAM_PER_M3 = 15;
const DIN_CARD_GRAM_PER_KG = 140;
/** JIS Z 0301, short form, kilograms: area · rate · months / K; K by climate, here the hottest. Source: published, as quoted. */
const JIS_K = 12;
/** Mass of a unit of clay, kg. Source: published, as quoted by suppliers. */
const UNIT_KG = 0.028;

const MIL_UNIT = cite("mil-d-3464", "3.00 g at 20 %, 6.00 g at 40 %, 25 °C", "published");
const DIN = cite("din-55474", "n = (V·b + m·c + A·e·W·t)/a", "published");
const DUNNAGE = cite("remembered-dunnage", "8, 6, 2 and 0.5 units per pound", "from-memory");

/** How each rule computes, and which members it needs. */
const RULES: Readonly<
	Record<
		DesiccantMethod,
		{
			readonly needs: readonly (keyof DesiccantInput)[];
			readonly units: (input: Needed) => number;
			readonly source: Source;
		}
	>
> = {
	"mil-area": {
		needs: ["barrierAreaM2"],
		units: ({ area, dunnage }) => UNITS_PER_M2 * area + milDunnage(dunnage),
		source: cite("mil-p-116", "U = 0.011 per in² + X·dunnage, flexible barrier", "published"),
	},
	"mil-volume": {
		needs: ["barrierVolumeM3"],
		units: ({ volume, dunnage }) => UNITS_PER_M3 * volume + milDunnage(dunnage),
		source: cite("mil-p-116", "U = 0.0007 per in³ + X·dunnage, sealed rigid metal", "published"),
	},
	"eia-583": {
		needs: ["barrierAreaM2", "waterVapourGramPerM2Day"],
		// Printed per 100 in² and day: 0.231·A·W·M/capacity; the rest is conversion.
		units: ({ area, rate, months, takes }) =>
			(0.231 * (area / 0.0254 ** 2) * (rate * 0.0254 ** 2 * 100) * months) / takes,
		source: cite("eia-583", "U = 0.231·A·MVTR·M/capacity", "published"),
	},
	"j-std-033": {
		needs: ["barrierAreaM2", "waterVapourGramPerM2Day"],
		units: ({ area, rate, months, takes }) => (DAYS_PER_MONTH * months * rate * area) / takes,
		source: cite("j-std-033", "U = 0.304·M·WVTR·A/D, in SI 30.4·M·W·A/D", "published"),
	},
	"din-55474": {
		needs: ["barrierAreaM2", "barrierVolumeM3", "waterVapourGramPerM2Day"],
		units: ({ area, volume, rate, months, takes, dunnage, air, humidity }) =>
			(volume * air +
				dunnage.reduce((sum, one) => sum + one.massKg * dinMoisture(one), 0) +
				area * (DIN_RATE[humidity] ?? Number.NaN) * rate * months * DAYS_PER_MONTH) /
			takes,
		source: DIN,
	},
	"jis-z-0301": {
		needs: ["barrierAreaM2", "waterVapourGramPerM2Day"],
		units: ({ area, rate, months }) => (area * rate * months) / JIS_K / UNIT_KG,
		source: cite("jis-z-0301", "short form, W = A·R·months/K in kg, K = 12 for 35 to 40 °C and 90 %", "published"),
	},
};

interface Needed {
	readonly area: number;
	readonly volume: number;
	readonly rate: number;
	readonly months: number;
	readonly takes: number;
	readonly air: number;
	readonly humidity: number;
	readonly dunnage: readonly Dunnage[];
}

export function desiccant(input: DesiccantInput): Judged<Desiccant> {
	const rule = RULES[input.method];
	const timed = input.method !== "mil-area" && input.method !== "mil-volume";
	const months = input.months ?? (input.days === undefined ? undefined : input.days / DAYS_PER_MONTH);
	const missing = rule.needs.filter((member) => input[member] === undefined);
	if (timed && months === undefined) missing.push("days");
	if (missing.length > 0)
		return notAssessed("missing-input", sentence("desiccant.missing", { members: missing.join(", ") }), {
			sources: [rule.source],
		});
	const humidity = input.finalHumidityPercent ?? DEFAULT_HUMIDITY[input.method];
	const table =
		input.method === "eia-583"
			? UNIT_TAKES["eia-583"]
			: input.method === "din-55474"
				? UNIT_TAKES["din-55474"]
				: UNIT_TAKES["mil-d-3464"];
	const takes = input.capacityGramPerUnit ?? table[humidity];
	const needsCapacity = timed && input.method !== "jis-z-0301";
	if (needsCapacity && (takes === undefined || (input.method === "din-55474" && DIN_RATE[humidity] === undefined)))
		return notAssessed("outside-range", sentence("desiccant.humidity", { list: Object.keys(table).join(", ") }), {
			sources: [rule.source],
		});
	const dunnage = input.dunnage ?? [];
	const units = rule.units({
		area: input.barrierAreaM2 ?? 0,
		volume: input.barrierVolumeM3 ?? 0,
		rate: input.waterVapourGramPerM2Day ?? 0,
		months: months ?? 0,
		takes: takes ?? 0,
		air: input.airGramPerM3 ?? DIN_AIR_GRAM_PER_M3,
		humidity,
		dunnage,
	});
	const notes: Sentence[] = [sentence(timed ? "desiccant.sealed" : "desiccant.long-storage")];
	if (dunnage.length > 0 && timed && input.method !== "din-55474") notes.push(sentence("desiccant.no-dunnage"));
	if (dunnage.some((one) => one.kind === "cellulose")) notes.push(sentence("desiccant.paper"));
	return assessed<Desiccant>(
		{ units, unitsRounded: POUCHES.find((pouch) => pouch >= units - 1e-12) ?? null },
		{
			notes,
			sources: [
				rule.source,
				...(needsCapacity && input.method !== "eia-583" ? [MIL_UNIT] : []),
				...(dunnage.length > 0 && !timed ? [DUNNAGE] : []),
			],
		},
	);
}

const DEFAULT_HUMIDITY: Readonly<Record<DesiccantMethod, number>> = {
	"mil-area": 40,
	"mil-volume": 40,
	"eia-583": 20,
	"j-std-033": 20,
	"din-55474": 40,
	"jis-z-0301": 40,
};

function milDunnage(dunnage: readonly Dunnage[]): number {
	return dunnage.reduce((sum, { kind, massKg }) => sum + (UNITS_PER_POUND[kind] * massKg) / POUND_KG, 0);
}

/** Wood, paper and card give off 140 g/kg where nothing is known of them; foam and glass none. */
function dinMoisture({ kind, moistureGramPerKg }: Dunnage): number {
	return moistureGramPerKg ?? (kind === "cellulose" ? DIN_CARD_GRAM_PER_KG : 0);
}
