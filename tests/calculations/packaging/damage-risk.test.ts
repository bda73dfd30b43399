/**
 * The risk of damage. Closed form: load and strength both lognormal, P = Φ((ln load − ln strength)/√(σ₁² + σ₂²)) (textbook
 * stress-strength interference); simulation: 200,000 trips with a fixed seed, tolerance four standard errors.
 */
import { describe, expect, it } from "vitest";
import { damageRisk } from "../../../src/calculations/packaging/damage-risk.ts";
import { packaging } from "../../../src/calculations/packaging/packaging.ts";
import { dropDamage, lognormalThrough, tripDamage } from "../../../src/calculations/packaging/trip-damage.ts";
import { normalCumulative } from "../../../src/calculations/statistics/distributions.ts";
import { ORIENTATION_SHARES } from "../../../src/catalogue/drop-tables.ts";
import { packaging as operation, packagingInput } from "../../../src/operations/calculations/packaging.ts";
import { SOUND, soundBut } from "./sound-pack.ts";

/** Uniform numbers from a seed (a 32-bit mixing generator), and normal ones of them. */
function seeded(seed: number) {
	let state = seed;
	const uniform = () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
		mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
	const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
	return { uniform, normal };
}

const HEIGHT = { median: 0.25, spread: 0.7 };
const STRENGTH = { median: 100, spread: 0.2 };
/** Peak 60 gₙ at 1 m, as the power 0.8 of the height. */
const load = (logHeight: number) => Math.log(60) + 0.8 * logHeight;

describe("one drop", () => {
	it.each([
		[HEIGHT, STRENGTH],
		[
			{ median: 0.8, spread: 0.5 },
			{ median: 60, spread: 0.1 },
		],
		[
			{ median: 0.06, spread: 1.2 },
			{ median: 30, spread: 0.3 },
		],
	])("agrees with the closed form for lognormal load and strength (1e-6)", (height, strength) => {
		const median = load(Math.log(height.median));
		const closed = normalCumulative(
			(median - Math.log(strength.median)) / Math.hypot(0.8 * height.spread, strength.spread),
		);
		expect(Math.abs(dropDamage(height, strength, load) / closed - 1)).toBeLessThan(1e-6);
	});
	it("a lognormal through two quantiles has them", () => {
		const { median, spread } = lognormalThrough([0.95, 0.4], [0.9987, 1.97]);
		expect(normalCumulative(Math.log(0.4 / median) / spread)).toBeCloseTo(0.95, 9);
		expect(normalCumulative(Math.log(1.97 / median) / spread)).toBeCloseTo(0.9987, 9);
	});
});

describe("a trip", () => {
	it("agrees with a seeded simulation of 200,000 trips", () => {
		const { uniform, normal } = seeded(20260101);
		const strong = { median: 40, spread: 0.2 };
		const [trips, mean] = [200_000, 7.44];
		let harmed = 0;
		for (let trip = 0; trip < trips; trip += 1) {
			let drops = 0;
			for (let product = uniform(); product > Math.exp(-mean); product *= uniform()) drops += 1;
			for (let drop = 0; drop < drops; drop += 1) {
				const peak = load(Math.log(HEIGHT.median) + HEIGHT.spread * normal());
				if (peak > Math.log(strong.median) + strong.spread * normal()) {
					harmed += 1;
					break;
				}
			}
		}
		const expected = tripDamage(mean, dropDamage(HEIGHT, strong, load));
		const error = Math.sqrt((expected * (1 - expected)) / trips);
		expect(Math.abs(harmed / trips - expected)).toBeLessThan(4 * error);
	});
});

describe("beside the verdict", () => {
	const risk = (request: typeof SOUND) => damageRisk(packagingInput(request), ORIENTATION_SHARES);
	it("is an interval with its assumptions and the one that matters most", () => {
		const found = risk(SOUND);
		const [low, high] = found?.probability ?? [1, 0];
		expect(low).toBeGreaterThanOrEqual(0);
		expect(low).toBeLessThan(high);
		expect(high).toBeLessThan(1);
		expect(found?.assumptions.length).toBeGreaterThan(4);
		expect(["network", "orientation", "curve", "strength-spread"]).toContain(found?.turnsOn);
	});
	it("is higher for a weaker item", () => {
		const weak = risk(soundBut({ item: { fragility: { gn: 60, basis: "tested" } } }));
		expect(weak?.probability[1]).toBeGreaterThan(risk(SOUND)?.probability[1] ?? 1);
		expect(weak?.probability[0]).toBeGreaterThanOrEqual(risk(SOUND)?.probability[0] ?? 1);
	});
	it("is not given where strength is neither tested nor the maker's, or a foam is not known", () => {
		for (const basis of ["class", "board-strength", "our-choice"] as const)
			expect(risk(soundBut({ item: { fragility: { gn: 100, basis } } }))).toBeNull();
		expect(risk(soundBut({ item: { fragility: undefined } }))).toBeNull();
		const bubble = { layers: [{ foam: { id: "bubble-film" }, thicknessM: 0.05, fullFace: true as const }] };
		expect(risk(soundBut({ pack: { faces: { ...SOUND.pack.faces, top: bubble } } }))).toBeNull();
	});
	it("stands in the calculation's answer, and never in what is sealed, which is the calculation itself", () => {
		expect(operation.assess(SOUND).result).toHaveProperty("damageRisk.turnsOn");
		expect(packaging(packagingInput(SOUND)).result).not.toHaveProperty("damageRisk");
	});
});
