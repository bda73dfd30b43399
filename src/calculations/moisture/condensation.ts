/** Whether a cold parcel's contents would sweat when opened, and how long to wait with the parcel shut. */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { dewPointDegC, frostPointDegC } from "./dew-point.ts";

export interface ParcelBuild {
	/** Outer length, width, height. */
	readonly outerM: readonly [number, number, number];
	/** From outside in. */
	readonly layers: readonly { readonly thicknessM: number; readonly conductivityWPerMK: number }[];
	readonly contentsMassKg: number;
	readonly specificHeatJPerKgK?: number | undefined;
}

export interface CondensationInput {
	readonly roomTemperatureDegC: number;
	readonly roomHumidityPercent: number;
	readonly parcelTemperatureDegC: number;
	readonly parcelTemperatureBasis?: "measured" | "weather" | "guess" | undefined;
	readonly timeConstantH?: number | undefined;
	readonly parcel?: ParcelBuild | undefined;
	/** Temperature of the board's surface, measured with a contact probe; ends the wait once it is warm enough, unless wet. */
	readonly surfaceTemperatureDegC?: number | undefined;
	readonly wetnessSeen?: boolean | undefined;
}

export interface Condensation {
	readonly dewPointDegC: number;
	/** Only where it lies below 0 °C. */
	readonly frostPointDegC: number | null;
	readonly condenses: boolean;
	readonly timeConstantH: number | null;
	/** Time until the contents are 3 K above the dew point; null where they never get there, or no time constant is known. */
	readonly modelWaitH: number | null;
	/** From when the parcel was brought in; null where no wait helps. */
	readonly openAfterH: number | null;
	readonly powerAfterH: number | null;
}

/** The surface must be this much above the dew point: hygrometers are off by about 0.9 K. Source: static-moisture page, our choice. */
const MARGIN_K = 3;
/** Our choice, longer than the model: published rules of thumb are 3 to 12 times longer, and it was never measured. */
const SAFETY_FACTOR = 2;
const LEAST_WAIT_H = 4;
const DRYING_H = 2;
const FROZEN_H = 12;
const FROZEN_AND_WET_H = 24;
/** Heat transfer outside a parcel, W/(m²·K). Source: from memory, ISO 6946, surface resistance 0.13 m²·K/W. */
const OUTER_TRANSFER = 7.7;
/** Specific heat of a card with its cooler, J/(kg·K). Source: from memory, mixed from aluminium, copper and laminate. */
const CARD_HEAT = 700;

const WITHIN_DEG_C = { low: -45, high: 60 } as const;

const SOURCES = [
	cite("wmo-8", "annex 4.B, Magnus form over water", "published"),
	cite(
		"our-choice",
		"waits: twice the model, at least 4 h; 2 h more before power; 12 h from below 0 °C, 24 h if wet too",
		"our-choice",
	),
	cite("our-choice", "one time constant for the whole parcel, not checked against a measured box", "our-choice"),
];
const OVER_ICE = cite("wmo-8", "annex 4.B, Magnus form over ice, recalled", "from-memory");
const OUTER_SURFACE = cite("iso-6946", "inner surface resistance 0.13 m²·K/W, recalled", "from-memory");
const MIXED_HEAT = cite("remembered-heats", "700 J/(kg·K) for a card with its cooler", "from-memory");

/** Temperatures in °C, humidity above 0 to 100 %. The model is a lower bound; the waits are ours and longer. */
export function condensation(input: CondensationInput): Judged<Condensation> {
	const { roomTemperatureDegC, roomHumidityPercent, parcelTemperatureDegC } = input;
	const dewPoint = dewPointDegC(roomTemperatureDegC, roomHumidityPercent);
	const target = dewPoint + MARGIN_K;
	const timeConstantH = input.timeConstantH ?? (input.parcel === undefined ? null : timeConstantOf(input.parcel));
	const never = !(target < roomTemperatureDegC);
	const wet = input.wetnessSeen === true;
	// A contact reading of a warm surface ends the wait, never after a wet finding. While it is cold it shortens nothing:
	// the wait counts from when the parcel was brought in, not from the reading.
	const surface = input.surfaceTemperatureDegC;
	const ended = surface !== undefined && surface >= target && !wet;
	const coldest = ended ? surface : Math.min(parcelTemperatureDegC, surface ?? parcelTemperatureDegC);
	const known = ended || input.parcelTemperatureBasis === "measured" || input.parcelTemperatureBasis === "weather";
	const warm = coldest >= target;
	const modelWaitH = warm
		? 0
		: never || timeConstantH === null
			? null
			: timeConstantH * Math.log((roomTemperatureDegC - coldest) / (roomTemperatureDegC - target));
	const waits = waitsOf({
		modelWaitH,
		warm,
		known,
		never,
		wet,
		frozen: parcelTemperatureDegC < 0,
		hasModel: timeConstantH !== null,
	});
	const frost = frostPointDegC(roomTemperatureDegC, roomHumidityPercent);
	const inside = roomTemperatureDegC >= WITHIN_DEG_C.low && roomTemperatureDegC <= WITHIN_DEG_C.high;
	return assessed<Condensation>(
		{
			dewPointDegC: dewPoint,
			frostPointDegC: frost < 0 ? frost : null,
			condenses: (surface ?? parcelTemperatureDegC) < dewPoint,
			timeConstantH,
			modelWaitH,
			...waits,
		},
		{
			cautions: [
				...(wet ? [sentence("condensation.wet")] : []),
				...(never && !warm ? [sentence("condensation.never")] : []),
			],
			within: inside,
			notes: [...notesOf(timeConstantH), ...(inside ? [] : [sentence("condensation.outside-range", WITHIN_DEG_C)])],
			sources: sourcesOf(input, frost),
		},
	);
}

function waitsOf(found: {
	readonly modelWaitH: number | null;
	readonly warm: boolean;
	readonly known: boolean;
	readonly never: boolean;
	readonly wet: boolean;
	readonly frozen: boolean;
	readonly hasModel: boolean;
}): { readonly openAfterH: number | null; readonly powerAfterH: number | null } {
	if (found.warm && found.known && !found.wet) return { openAfterH: 0, powerAfterH: 0 };
	if (found.never && !found.warm) return { openAfterH: null, powerAfterH: null };
	if (!found.warm && !found.hasModel) return { openAfterH: null, powerAfterH: null };
	const openAfterH = Math.max(SAFETY_FACTOR * (found.modelWaitH ?? 0), LEAST_WAIT_H);
	const floor = found.frozen ? (found.wet ? FROZEN_AND_WET_H : FROZEN_H) : 0;
	return { openAfterH, powerAfterH: Math.max(openAfterH + DRYING_H, floor) };
}

function notesOf(timeConstantH: number | null): Sentence[] {
	return timeConstantH === null ? [sentence("condensation.no-time-constant")] : [sentence("condensation.lower-bound")];
}

/** What was used: constants that are only recalled are named where a figure rests on them. */
function sourcesOf({ parcel, timeConstantH }: CondensationInput, frost: number): Source[] {
	const modelled = timeConstantH === undefined && parcel !== undefined;
	return [
		...SOURCES,
		...(frost < 0 ? [OVER_ICE] : []),
		...(modelled ? [OUTER_SURFACE] : []),
		...(modelled && parcel.specificHeatJPerKgK === undefined ? [MIXED_HEAT] : []),
	];
}

/** τ = m·c/G with 1/G = 1/(h·A) + Σ t/(k·√(A·Aᵢ)), hours. */
function timeConstantOf(parcel: ParcelBuild): number {
	let [length, width, height] = parcel.outerM;
	const areaOf = () => 2 * (length * width + width * height + length * height);
	let area = areaOf();
	let resistance = 1 / (OUTER_TRANSFER * area);
	for (const layer of parcel.layers) {
		[length, width, height] = [length, width, height].map((side) => Math.max(side - 2 * layer.thicknessM, 1e-3)) as [
			number,
			number,
			number,
		];
		const inner = areaOf();
		resistance += layer.thicknessM / (layer.conductivityWPerMK * Math.sqrt(area * inner));
		area = inner;
	}
	return (parcel.contentsMassKg * (parcel.specificHeatJPerKgK ?? CARD_HEAT) * resistance) / 3600;
}
