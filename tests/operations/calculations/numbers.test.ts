/**
 * Property over every calculation: whatever request the door accepts, the answer holds only numbers that JSON can hold and
 * keeps its published shape. Requests are drawn from each operation's example with numbers replaced by extremes.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Fault } from "../../../src/faults.ts";
import { CALCULATIONS } from "../../../src/operations/calculations/list.ts";
import { speak } from "../../../src/texts/say.ts";
import { allFaces, layer, SOUND, soundBut } from "../../calculations/packaging/sound-pack.ts";

const INNER = { innerLengthM: 0.3, innerWidthM: 0.14, innerHeightM: 0.08, caliperM: 0.004, reused: false };
const MIXED = allFaces(layer(0.03, 0.07, 2, { id: "epp-30-gas" }), layer(0.03, 0.08));

const MORE_EXAMPLES: Readonly<Record<string, readonly unknown[]>> = {
	packaging: [
		SOUND,
		soundBut({ pack: { faces: allFaces(layer(0.0508, 0.07, 1, { id: "pe-27-first" })) } }),
		soundBut({ pack: { faces: MIXED, innerBox: { ...INNER, faces: allFaces(layer(0.0508, 0.0775)) } } }),
	],
	"board-strength": [
		{
			component: { factor: 1.75, lengthM: 0.045, position: "quarter-edge", boardEdgeM: 0.27 },
			boardThicknessM: 0.0016,
			plate: { lengthM: 0.27, widthM: 0.11, massKg: 0.4, modulusGPa: 20, poissonRatio: 0.15, support: "XSSS" },
			shockGn: 50,
			pulseDurationMs: 11,
		},
	],
	"box-compression": [
		{
			formula: "kellicutt",
			flute: "B",
			edgeCrushKNPerM: 6,
			caliperM: 0.004,
			perimeterM: 1.4,
			days: 30,
			palletFactor: 0.8,
			stack: { lengthM: 0.4, widthM: 0.3, heightM: 0.2, stackHeightM: 1.4, densityKgPerM3: 192, factor: 7 },
		},
	],
	desiccant: ["mil-area", "mil-volume", "eia-583", "j-std-033", "jis-z-0301"].map((method) => ({
		method,
		barrierAreaM2: 0.24,
		barrierVolumeM3: 0.004,
		waterVapourGramPerM2Day: 0.3,
		months: 2,
		capacityGramPerUnit: 3,
		dunnage: [{ kind: "cellulose", massKg: 0.1 }],
	})),
	vibration: [
		{
			profile: [
				{ frequencyHz: 5, gn2PerHz: 0.01 },
				{ frequencyHz: 500, gn2PerHz: 0.02 },
			],
			naturalFrequencyHz: 60,
			q: 8,
			cushionFrequencyHz: 20,
			cushionDampingRatio: 0.1,
		},
	],
	cushion: [
		{
			foam: { model: "stress-energy", aKPa: 68, bPerKPa: 0.0157 },
			thicknessM: 0.05,
			dropHeightM: 0.7,
			staticStressKPa: 1,
			limitGn: 50,
		},
		{
			foam: { model: "gas-compression", yieldStressKPa: 64, gasPressureKPa: 72, relativeDensity: 0.037 },
			thicknessM: 0.05,
			dropHeightM: 0.7,
			staticStressKPa: 1,
			limitGn: 50,
			temperatureDegC: 20,
		},
		{ foam: { unknown: true }, thicknessM: 0.05, dropHeightM: 0.7, staticStressKPa: 1, limitGn: 50 },
	],
	pulse: [
		{
			shape: "points",
			points: [
				{ timeMs: 0, gn: 0 },
				{ timeMs: 5, gn: 50 },
				{ timeMs: 11, gn: 0 },
			],
		},
		{ shape: "trapezoid", peakGn: 50, durationMs: 11, rampShare: 0.1 },
	],
	impact: [{ freeFallTimeS: 0.4, restitution: 0.5, naturalFrequencyHz: 20 }],
	condensation: [
		{
			roomTemperatureDegC: 22,
			roomHumidityPercent: 35,
			parcelTemperatureDegC: -20,
			surfaceTemperatureDegC: 4,
			parcel: { outerM: [0.4, 0.3, 0.2], layers: [{ thicknessM: 0.05, conductivityWPerMK: 0.045 }], contentsMassKg: 2 },
		},
	],
};

const extreme = fc.oneof(
	fc.constantFrom(
		0,
		1,
		-1,
		1e-300,
		5e-324,
		1e-9,
		1e-4,
		1e-3,
		0.01,
		0.5,
		2,
		20,
		100,
		1e4,
		1e5,
		1e6,
		1e9,
		1e300,
		-273.15,
	),
	fc.double({ noNaN: true, noDefaultInfinity: true }),
	fc.double({ min: 0, max: 100, noNaN: true }),
);

/** Numbers in an example: of a large one few are replaced at once, or nothing would be accepted. */
function numbersIn(value: unknown): number {
	if (typeof value === "number") return 1;
	if (value === null || typeof value !== "object") return 0;
	return Object.values(value).reduce((sum: number, entry) => sum + numbersIn(entry), 0);
}

/** The example with some of its numbers replaced. */
function drawn(value: unknown, keep = Math.max(2, Math.floor(numbersIn(value) / 2))): fc.Arbitrary<unknown> {
	if (typeof value === "number")
		return fc.oneof({ weight: keep, arbitrary: fc.constant(value) }, { weight: 1, arbitrary: extreme });
	if (Array.isArray(value)) return fc.tuple(...value.map((entry) => drawn(entry, keep)));
	if (value === null || typeof value !== "object") return fc.constant(value);
	return fc.record(Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, drawn(entry, keep)])));
}

function unheld(value: unknown, path = ""): string[] {
	if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path}: ${value}`];
	if (value === null || typeof value !== "object") return [];
	return Object.entries(value).flatMap(([name, entry]) => unheld(entry, `${path}/${name}`));
}

describe("no accepted request gives a number that JSON cannot hold, or an answer outside its shape", () => {
	const cases = CALCULATIONS.flatMap((operation) =>
		[operation.example.request, ...(MORE_EXAMPLES[operation.name] ?? [])].map(
			(example, index) => [`${operation.name} ${index}`, operation, example] as const,
		),
	);
	it.each(cases)("%s", (_, operation, example) => {
		fc.assert(
			fc.property(drawn(example), (candidate) => {
				const request = operation.request.safeParse(candidate);
				if (!request.success) return;
				let answer: ReturnType<typeof operation.assess>;
				try {
					answer = operation.assess(request.data);
				} catch (error) {
					if (error instanceof Fault) return;
					throw error;
				}
				expect(unheld(answer)).toEqual([]);
				if (answer.status !== "assessed") return;
				const shape = operation.result.safeParse(JSON.parse(JSON.stringify(speak(answer.result))));
				expect(shape.success ? [] : shape.error.issues).toEqual([]);
			}),
			{ numRuns: 400 },
		);
	});
});
