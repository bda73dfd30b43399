/**
 * A foam characterised by own drops. The traces are half sines of a foam whose stress-energy set is chosen here, so the fit must give
 * that set back; the pulse's length follows from the change of velocity, Δv = 2AT/π (reference page), for a restitution of 0.3.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { STANDARD_GRAVITY_M_PER_S2 as G } from "../../../src/calculations/quantities.ts";
import { assessDropSeries } from "../../../src/operations/drop-series/assess-drop-series.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";

/** Chosen: peak G·s = a·exp(b·E), E = s·h/t, in kPa. */
const SET = { aKPa: 40, bPerKPa: 0.03 };
const SERIES = {
	thicknessM: 0.05,
	bearingAreaM2: 0.01,
	temperatureDegC: 22,
	device: "recorder",
	fullScaleGn: 500,
} as const;
const RESTITUTION = 0.3;
const PRETRIGGER = 40;

function drop(
	massKg: number,
	dropHeightM: number,
	nth: number,
	{ rateHz = 10_000, fullScaleGn = 500, factor = 1 } = {},
) {
	const stress = (massKg * G) / SERIES.bearingAreaM2 / 1000;
	const energy = (stress * dropHeightM) / SERIES.thicknessM;
	const peakGn = (SET.aKPa * Math.exp(SET.bPerKPa * energy)) / stress;
	const velocity = factor * (1 + RESTITUTION) * Math.sqrt(2 * G * dropHeightM);
	const lengthS = (velocity * Math.PI) / (2 * peakGn * G);
	const samples = Math.round(lengthS * rateHz);
	const trace = Array.from({ length: PRETRIGGER + samples + 40 }, (_, index) => {
		const into = (index - PRETRIGGER) / rateHz / lengthS;
		const gn = into > 0 && into < 1 ? peakGn * Math.sin(Math.PI * into) : 0;
		return Math.min(gn, fullScaleGn);
	});
	return { massKg, dropHeightM, drop: nth, sampleRateHz: rateHz, pretriggerSamples: PRETRIGGER, axes: [trace] };
}
const THREE = [1, 2, 3];
const GOOD = [
	...THREE.map(() => drop(1.2, 0.5, 1)),
	...THREE.map(() => drop(2, 0.8, 1)),
	...THREE.map((nth) => drop(1.2, 0.5, 1 + nth)),
];
const assess = (request: object) => assessDropSeries(JSON.stringify(request));

describe("a series of drops", () => {
	it("gives the foam's set back from first drops, and keeps later ones apart", () => {
		const answer = assess({ ...SERIES, drops: GOOD });
		if (answer.status !== "assessed") throw new Error(answer.reason.message);
		expect(answer.result.drops.map(({ refusal }) => refusal)).toEqual(GOOD.map(() => null));
		const { fit, points } = answer.result.first;
		expect(points).toHaveLength(6);
		if (fit.status !== "assessed") throw new Error(fit.reason.message);
		// Sampled half sines of 60 and more samples: peaks within 0.1 %.
		expect(fit.result.aKPa).toBeCloseTo(SET.aKPa, 0);
		expect(fit.result.bPerKPa).toBeCloseTo(SET.bPerKPa, 3);
		// Three later drops at one energy are too few for a line.
		expect(answer.result.later.fit).toMatchObject({ status: "not-assessed", reason: { code: "few-drops" } });
		expect(answer.result.drops[0]?.velocityRatio).toBeCloseTo(1 + RESTITUTION, 1);
		expect(answer.validity.notes[0]).toContain("22 °C");
	});

	const refusalOf = (one: object, change: object = {}) => {
		const answer = assess({ ...SERIES, ...change, drops: [one] });
		return answer.status === "assessed" ? answer.result.drops[0]?.refusal : answer.reason.code;
	};
	it.each([
		["a phone", drop(1.2, 0.5, 1), { device: "phone" }, /^phone$/],
		["a range below 1.5 times the peak", drop(1.2, 0.5, 1), { fullScaleGn: 70 }, /less than 1\.5 times/],
		["a clipped trace", drop(1.2, 0.5, 1, { fullScaleGn: 40 }), { fullScaleGn: 40 }, /full scale/],
		["fewer than ten samples in the pulse", drop(1.2, 0.5, 1, { rateHz: 600 }), {}, /too few/],
		["a change of velocity that the fall cannot make", drop(1.2, 0.5, 1, { factor: 2 }), {}, /change of velocity/],
		["a trace without a shock", { ...drop(1.2, 0.5, 1), axes: [Array(100).fill(0)] }, {}, /no shock/],
	])("refuses %s", (_, one, change, words) => {
		expect(refusalOf(one, change)).toMatch(words);
	});

	it("two drops at the second energy are too few", () => {
		const answer = assess({ ...SERIES, drops: GOOD.slice(0, 5) });
		expect(answer.result?.first.fit).toMatchObject({ reason: { code: "few-drops" } });
	});
});

describe("over the API", () => {
	let shop: TestApp;
	beforeAll(async () => {
		shop = await testApp();
	});
	afterAll(async () => shop?.close());

	it("goes into the stock as it stands, and is found again there", async () => {
		const answer = await shop.ask("POST", "/api/v1/calculations/drop-series", { ...SERIES, drops: GOOD });
		expect(answer.statusCode, answer.body).toBe(200);
		const { points } = answer.json().result.first;
		const kept = await shop.ask("PUT", "/api/v1/stock/foams/own-foam", {
			foam: { points },
			thicknessM: SERIES.thicknessM,
		});
		expect(kept.statusCode, kept.body).toBe(200);
		expect(kept.json().foams[0]).toMatchObject({ id: "own-foam", foam: { points } });
	});

	it("refuses what is no series, naming the member", async () => {
		const wrong = await shop.ask("POST", "/api/v1/calculations/drop-series", {
			...SERIES,
			drops: [{ ...GOOD[0], drop: 0 }],
		});
		expect(wrong.statusCode).toBe(400);
		expect(wrong.json().errors[0]).toMatchObject({ path: "/drops/0/drop" });
		expect((await shop.ask("POST", "/api/v1/calculations/drop-series", "text")).statusCode).toBe(400);
	});
});
