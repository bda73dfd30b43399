/** How long a parcel stays shut, from what was entered, by the calculation `condensation`. */
import type { Judged } from "../../calculations/judged.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import { CALCULATIONS } from "../../operations/calculations/list.ts";

/** Members of the calculation's result that the page shows. */
interface Condensation {
	readonly dewPointDegC: number;
	readonly modelWaitH: number | null;
	readonly openAfterH: number | null;
	readonly powerAfterH: number | null;
}

export type Wait =
	| { readonly kind: "not-entered" }
	/** No wait can be worked out from what was entered. */
	| { readonly kind: "not-assessed" }
	| { readonly kind: "never"; readonly dewPointDegC: number }
	| {
			readonly kind: "wait";
			readonly dewPointDegC: number;
			readonly modelWaitH: number;
			readonly countedFrom: Date;
			/** True where no time in hand was given: counted from when the temperatures were entered. */
			readonly countedFromEntry: boolean;
			/** Null: no wait. */
			readonly openAt: Date | null;
			readonly powerAt: Date | null;
			/** The humidity that was assumed where none was entered. */
			readonly assumedHumidityPercent: number | null;
			readonly frozen: boolean;
	  };

/** Taken where the person has no hygrometer: a damp room, so that the wait comes out long. Source: our choice. */
export const ASSUMED_HUMIDITY_PERCENT = 70;

/**
 * Time constants of a closed parcel. Source: our choice, from three computed cases (2 kg card in 50 mm polyethylene
 * foam 1.75 h, 6 kg in 75 mm foam 4.0 h); the calculation's doubled wait covers what a mass alone cannot say.
 */
const TIME_CONSTANT_LIGHT_H = 1.75;
const TIME_CONSTANT_HEAVY_H = 4;
const LIGHT_PARCEL_MOST_KG = 3;

const KG_PER_UNIT: Readonly<Record<string, number>> = { kg: 1, g: 1e-3, lb: 0.45359237 };
const MS_PER_H = 3_600_000;

type Assess = (request: unknown) => Judged<unknown>;
const condensation = CALCULATIONS.find((candidate) => candidate.name === "condensation");

/** The wait; `not-entered` until both temperatures are there. */
export function waitOf(
	content: RecordContentInput,
	now: Date,
	assess: Assess | undefined = condensation?.assess,
): Wait {
	const roomTemperatureDegC = content.setUp?.ambient?.value;
	const parcelTemperatureDegC = content.parcel?.temperature?.value;
	if (roomTemperatureDegC === undefined || parcelTemperatureDegC === undefined) return { kind: "not-entered" };
	if (assess === undefined) return { kind: "not-assessed" };
	const humidity = content.setUp?.humidity?.value;
	const answer = assess({
		roomTemperatureDegC,
		roomHumidityPercent: humidity ?? ASSUMED_HUMIDITY_PERCENT,
		parcelTemperatureDegC,
		parcelTemperatureBasis: content.parcel?.temperatureBasis ?? "guess",
		timeConstantH: timeConstantOf(content),
		wetnessSeen: content.firstPowerOn?.wetnessSeen ?? false,
	});
	if (answer.status !== "assessed") return { kind: "not-assessed" };
	const result = answer.result as Condensation;
	if (result.openAfterH === null || result.powerAfterH === null) {
		return { kind: "never", dewPointDegC: result.dewPointDegC };
	}
	const inHandAt = content.parcel?.inHandAt;
	// A draft that was last saved by an older service does not say when; its next save does.
	const from = inHandAt ?? content.parcel?.temperaturesNotedAt;
	const countedFrom = from === undefined ? now : new Date(from);
	const after = (hours: number) => (hours > 0 ? new Date(countedFrom.getTime() + hours * MS_PER_H) : null);
	return {
		kind: "wait",
		dewPointDegC: result.dewPointDegC,
		modelWaitH: result.modelWaitH ?? 0,
		countedFrom,
		countedFromEntry: inHandAt === undefined,
		openAt: after(result.openAfterH),
		powerAt: after(result.powerAfterH),
		assumedHumidityPercent: humidity === undefined ? ASSUMED_HUMIDITY_PERCENT : null,
		frozen: parcelTemperatureDegC < 0,
	};
}

function timeConstantOf(content: RecordContentInput): number {
	const mass = content.parcel?.mass;
	const massKg = mass === undefined ? Number.NaN : mass.value * (KG_PER_UNIT[mass.unit] ?? Number.NaN);
	return massKg <= LIGHT_PARCEL_MOST_KG ? TIME_CONSTANT_LIGHT_H : TIME_CONSTANT_HEAVY_H;
}
