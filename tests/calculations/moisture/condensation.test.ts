/** Dew points against values of other sources (static and moisture page, cases marked independent; tolerances as given there). */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { condensation } from "../../../src/calculations/moisture/condensation.ts";
import { dewPointDegC, frostPointDegC, saturationPressureHPa } from "../../../src/calculations/moisture/dew-point.ts";

const near = (got: number, expected: number, tolerance: number) =>
	expect(Math.abs(got - expected)).toBeLessThanOrEqual(tolerance);

describe("dew point, independent values", () => {
	it.each([
		["DP1", 20, 50, 9.27],
		["DP2", 22, 45, 9.53],
		["DP4", 25, 60, 16.7],
		["DP5", 30, 80, 26.17],
		["DP7", 35, 70, 28.7],
		["RC1", 23, 50, 12.03],
	])("%s", (_, temperature, humidity, dew) => near(dewPointDegC(temperature, humidity), dew, 0.05));
	it("ES2: saturation pressure at 20 °C, 23.388 hPa", () => near(saturationPressureHPa(20), 23.388, 0.08));
	it("DP9, DP10: saturated air, and frost point", () => {
		near(dewPointDegC(20, 100), 20, 0.001);
		near(frostPointDegC(20, 20), -3.24, 0.02);
	});
});

describe("waits", () => {
	const room = { roomTemperatureDegC: 22, roomHumidityPercent: 35 };
	it("never spares the wait on a guess", () => {
		const { result } = condensation({
			...room,
			parcelTemperatureDegC: 20,
			parcelTemperatureBasis: "guess",
			timeConstantH: 1.75,
		});
		expect(result).toMatchObject({ condenses: false, modelWaitH: 0, openAfterH: 4, powerAfterH: 6 });
	});
	it("asks for none where a measured parcel is warm enough, but for one where it was wet", () => {
		const warm = {
			...room,
			parcelTemperatureDegC: 20,
			parcelTemperatureBasis: "measured",
			timeConstantH: 1.75,
		} as const;
		expect(condensation(warm).result).toMatchObject({ openAfterH: 0, powerAfterH: 0 });
		expect(condensation({ ...warm, wetnessSeen: true }).result?.powerAfterH).toBeGreaterThan(0);
	});
	it("a warm surface by contact probe ends the wait, a cold one never shortens it, and after a wet finding neither does", () => {
		const cold = {
			...room,
			parcelTemperatureDegC: -20,
			parcelTemperatureBasis: "weather",
			timeConstantH: 6,
		} as const;
		const waits = (more: object) => condensation({ ...cold, ...more }).result;
		const plain = waits({});
		expect(waits({ surfaceTemperatureDegC: 20 })).toMatchObject({ openAfterH: 0, powerAfterH: 0 });
		expect(waits({ surfaceTemperatureDegC: 5 })?.openAfterH).toBe(plain?.openAfterH);
		expect(waits({ surfaceTemperatureDegC: 20, wetnessSeen: true })).toMatchObject({
			openAfterH: plain?.openAfterH,
			powerAfterH: 24,
		});
	});
	// AC1 and AC3 of the static and moisture page: τ·ln((Tr − T0)/(Tr − Tt)), the target set by a dew point 3 K below it.
	it.each([
		["AC1", 4, -10, 21, 10, 4.144],
		["AC3", 6, 18, 20, 17, 0],
	])("%s: the model's wait", (_, timeConstantH, parcel, roomTemperature, target, wait) => {
		const humidity = (100 * saturationPressureHPa(target - 3)) / saturationPressureHPa(roomTemperature);
		const { result } = condensation({
			roomTemperatureDegC: roomTemperature,
			roomHumidityPercent: humidity,
			parcelTemperatureDegC: parcel,
			parcelTemperatureBasis: "measured",
			timeConstantH,
		});
		near(result?.modelWaitH ?? Number.NaN, wait, 0.001);
	});
	it("names every recalled constant that a figure rests on, and says where the formula ends", () => {
		const parcel = {
			outerM: [0.4, 0.3, 0.2],
			layers: [{ thicknessM: 0.05, conductivityWPerMK: 0.045 }],
			contentsMassKg: 2,
		} as const;
		const answer = condensation({ roomTemperatureDegC: 20, roomHumidityPercent: 20, parcelTemperatureDegC: 5, parcel });
		expect(answer.sources.filter((source) => source.standing === "from-memory").map((source) => source.id)).toEqual([
			"wmo-8",
			"iso-6946",
			"remembered-heats",
		]);
		const hot = condensation({ roomTemperatureDegC: 70, roomHumidityPercent: 20, parcelTemperatureDegC: 5 });
		expect(hot.validity).toMatchObject({
			within: false,
			notes: expect.arrayContaining([expect.objectContaining({ sentence: "condensation.outside-range" })]),
		});
	});
	it("has no answer where the room never gets the board warm enough", () => {
		const { result } = condensation({
			roomTemperatureDegC: 20,
			roomHumidityPercent: 95,
			parcelTemperatureDegC: 5,
			timeConstantH: 2,
		});
		expect(result).toMatchObject({ modelWaitH: null, openAfterH: null, powerAfterH: null });
	});
	it("24 hours before power where it was below 0 °C and wet", () => {
		const { result } = condensation({
			...room,
			parcelTemperatureDegC: -20,
			parcelTemperatureBasis: "weather",
			timeConstantH: 1.75,
			wetnessSeen: true,
		});
		expect(result?.powerAfterH).toBe(24);
	});
	it("a parcel's time constant by hand: 1400 J/K through 2.87 K/W is 1.12 h (1 %)", () => {
		// 0.635 m² outside at 7.7 W/(m²·K), 4 mm of corrugated board at 0.06, 50 mm of foam at 0.045 W/(m·K).
		const parcel = {
			outerM: [0.45, 0.35, 0.2],
			layers: [
				{ thicknessM: 0.004, conductivityWPerMK: 0.06 },
				{ thicknessM: 0.05, conductivityWPerMK: 0.045 },
			],
			contentsMassKg: 2,
		} as const;
		const { result } = condensation({ ...room, parcelTemperatureDegC: -20, parcel });
		const areas = [
			0.635,
			2 * (0.442 * 0.342 + 0.342 * 0.192 + 0.442 * 0.192),
			2 * (0.342 * 0.242 + 0.242 * 0.092 + 0.342 * 0.092),
		] as const;
		const resistance =
			1 / (7.7 * areas[0]) +
			0.004 / (0.06 * Math.sqrt(areas[0] * areas[1])) +
			0.05 / (0.045 * Math.sqrt(areas[1] * areas[2]));
		near((result?.timeConstantH ?? 0) / ((1400 * resistance) / 3600), 1, 1e-9);
		near(result?.timeConstantH ?? 0, 1.16, 0.05);
	});
	it("a colder parcel or a damper room never shortens the wait", () => {
		const temperatures = fc.double({ min: -30, max: 21, noNaN: true });
		fc.assert(
			fc.property(temperatures, fc.double({ min: 5, max: 80, noNaN: true }), (parcel, humidity) => {
				const wait = (parcelTemperatureDegC: number, roomHumidityPercent: number) =>
					condensation({
						roomTemperatureDegC: 22,
						roomHumidityPercent,
						parcelTemperatureDegC,
						parcelTemperatureBasis: "measured",
						timeConstantH: 2,
					}).result?.openAfterH ?? Number.POSITIVE_INFINITY;
				expect(wait(parcel - 1, humidity)).toBeGreaterThanOrEqual(wait(parcel, humidity));
				expect(wait(parcel, humidity + 1)).toBeGreaterThanOrEqual(wait(parcel, humidity));
			}),
		);
	});
});
