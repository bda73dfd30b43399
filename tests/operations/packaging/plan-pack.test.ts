/** Planning a pack: the curve of each different cushion, and the design drop beside others. */
import { describe, expect, it } from "vitest";
import { planPack } from "../../../src/operations/packaging/plan-pack.ts";
import { CARD_PACK } from "./pack-request.ts";

describe("a planned pack", () => {
	const plan = planPack(CARD_PACK);

	it("has one curve for faces of the same cushion and stress", () => {
		expect(plan.curves.map((curve) => curve.faces)).toEqual([
			["top", "bottom"],
			["left", "right"],
			["front", "back"],
		]);
	});

	// Independent recomputation by hand from the published set in psi (polyethylene plank at 23 °C: a = 9.869 psi,
	// b = 0.108 1/psi): s = 2·9.80665/(0.27·0.11) = 660.4 Pa, E = s·15 = 9.906 kPa = 1.4368 psi,
	// G = 9.869·exp(0.108·1.4368)/0.09578 psi = 120.3. Tolerance: half of the last digit written.
	it("works at the peak that the published set gives", () => {
		const [top] = plan.curves;
		expect(top?.staticStressKPa).toBeCloseTo(0.6604, 4);
		expect(top?.result.peakGn).toBeCloseTo(120.3, 1);
		expect(top?.result.energyDensityKJPerM3).toBeCloseTo(9.9, 1);
		expect(top?.result.loading).toBe("over-supported");
		expect(top?.result.minimumThicknessAtStressReason).toBe("pad-too-large");
	});

	it("says where the drop that it protects to lies outside the foam's data", () => {
		expect(plan.answer.validity.within).toBe(false);
		expect(plan.answer.validity.notes.map((note) => note.sentence)).toContain("packaging.protected-outside");
		// Own check by hand: four pads of 40 × 27 mm carry 4.540 kPa; 50 gₙ is reached at E = ln(50·4.540/68.04)/0.01566
		// = 76.9 kJ/m³, inside the set's 33 to 99, so at a drop of 76.9·0.0508/4.540 = 0.861 m. Half of the last digit.
		const pads = (count: number) => ({
			layers: [
				{ foam: { id: "pe-plank-23c" }, thicknessM: 0.0508, pads: Array(count).fill({ lengthM: 0.04, widthM: 0.027 }) },
			],
		});
		const four = pads(4);
		const faces = { top: four, bottom: four, left: four, right: four, front: four, back: four };
		const inside = planPack({ ...CARD_PACK, pack: { ...CARD_PACK.pack, faces } }).answer;
		expect(inside.result?.protectedDropHeightM).toBeCloseTo(0.861, 3);
		expect(inside.validity.within).toBe(true);
		expect(inside.validity.notes.map((note) => note.sentence)).not.toContain("packaging.protected-outside");
	});

	it("samples every curve in rising stress, about its point and its optimum", () => {
		for (const curve of plan.curves) {
			const stresses = curve.points.map((point) => point.at);
			expect(stresses).toEqual([...stresses].sort((a, b) => a - b));
			for (const place of [curve.staticStressKPa, curve.result.optimumStaticStressKPa]) {
				expect(stresses[0]).toBeLessThan(place);
				expect(stresses.at(-1)).toBeGreaterThan(place);
			}
			for (const point of curve.points) {
				expect(point.lowGn).toBeLessThanOrEqual(point.peakGn);
				expect(point.highGn).toBeGreaterThanOrEqual(point.peakGn);
			}
		}
	});

	it("gives every other basis with its standing, and what was measured", () => {
		expect(plan.drop?.dropHeightM).toBe(0.762);
		expect(plan.drop?.standing).toBe("our-choice");
		expect(plan.drop?.alternatives.map((row) => row.basis)).toContain("din-55439");
		expect(plan.drop?.alternatives.every((row) => row.standing !== undefined)).toBe(true);
		expect(plan.drop?.measured).toHaveLength(4);
	});

	it("has no curve for a foam of which nothing is known", () => {
		const unknown = { layers: [{ foam: { unknown: true as const }, thicknessM: 0.05, fullFace: true as const }] };
		const pack = { ...CARD_PACK.pack, faces: { ...CARD_PACK.pack.faces, top: unknown, bottom: unknown } };
		expect(planPack({ ...CARD_PACK, pack }).curves).toHaveLength(2);
	});

	it("tells requests apart by what they say, not by how they were written", () => {
		const { item, pack, route } = CARD_PACK;
		expect(planPack({ route, pack, item }).requestSha256).toBe(plan.requestSha256);
		expect(planPack({ ...CARD_PACK, item: { ...item, massKg: 2.01 } }).requestSha256).not.toBe(plan.requestSha256);
	});
});
