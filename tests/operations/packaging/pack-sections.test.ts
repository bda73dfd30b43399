/** The sections of a pack: what they show follows from the pack's own sizes. */
import { describe, expect, it } from "vitest";
import { FACES, type FaceLayers, type FoamLayer } from "../../../src/calculations/packaging/types.ts";
import { packSection } from "../../../src/charts/pack-section.ts";
import { packSections, padGrid } from "../../../src/operations/packaging/pack-sections.ts";

const sheet = (thicknessM: number): FoamLayer => ({ foam: null, thicknessM, bearing: { fullFace: true } });
const all = (layers: readonly FoamLayer[]) =>
	Object.fromEntries(FACES.map((face) => [face, layers])) as unknown as FaceLayers;
const box = (innerLengthM: number, innerWidthM: number, innerHeightM: number) => ({
	innerLengthM,
	innerWidthM,
	innerHeightM,
	caliperM: 0.004,
});
const item = { class: "module", massKg: 1, lengthM: 0.2, widthM: 0.1, heightM: 0.05, cell: "none" as const };

describe("sections", () => {
	it("say what is left over, and what is pressed", () => {
		const pack = { box: box(0.31, 0.2, 0.14), faces: all([sheet(0.05)]), bagLayers: [] };
		const [front, side] = packSections({ item, pack });
		expect(front?.playM.map((play) => Math.round(1e4 * play) / 10)).toEqual([10, -10]);
		expect(side?.playM.map((play) => Math.round(1e4 * play) / 10)).toEqual([0, -10]);
	});

	it("of a box in a box say the play that is there, even where the inner box has none", () => {
		const pack = {
			box: box(0.5, 0.4, 0.35),
			faces: all([sheet(0.01)]),
			innerBox: { ...box(0.22, 0.12, 0.07), faces: all([sheet(0.1)]) },
			bagLayers: [],
		};
		// 500 − (220 + 8) − 200 = 72 mm along, 350 − 78 − 200 = 72 mm upright.
		const [front] = packSections({ item, pack });
		expect(front?.playM.map((play) => Math.round(1000 * play))).toEqual([72, 72]);
		expect(front?.frame.inside).toMatchObject({ alongM: 0.22, uprightM: 0.07 });
	});

	it("draw the item and the cushions to one scale, inside the box", () => {
		const pads = { foam: null, thicknessM: 0.05, bearing: { pads: [{ lengthM: 0.04, widthM: 0.03 }] } };
		const pack = { box: box(0.3, 0.2, 0.15), faces: all([pads]), bagLayers: [] };
		const [front] = packSections({ item, pack });
		if (front === undefined) throw new Error("no section");
		const words = { title: "t", description: "d", item: "i" };
		const { primitives, width, height } = packSection({ frame: front.frame, reach: front.frame, words });
		const sides = primitives.flatMap((mark) => {
			if (mark.kind !== "path") return [];
			const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = (mark.d.match(/-?[\d.]+/g) ?? []).map(Number);
			return [{ role: mark.role, x0, y0, along: x1 - x0, upright: y1 - y0 }];
		});
		const of = (role: string) => sides.filter((one) => one.role === role);
		const scale = (of("box")[0]?.along ?? 0) / 0.3;
		// Written to 0.1 of a unit, twice.
		expect(of("item")[0]?.along).toBeCloseTo(0.2 * scale, 0);
		expect(of("item")[0]?.upright).toBeCloseTo(0.05 * scale, 0);
		expect(of("cushion")).toHaveLength(4);
		for (const { x0, y0, along, upright } of sides) {
			expect(Math.min(x0, y0)).toBeGreaterThanOrEqual(0);
			expect(x0 + along).toBeLessThanOrEqual(width);
			expect(y0 + upright).toBeLessThanOrEqual(height);
		}
	});

	it("lay pads where they are usually laid", () => {
		expect([1, 2, 4, 6].map((count) => padGrid(count, [0.2, 0.1]))).toEqual([
			[1, 1],
			[2, 1],
			[2, 2],
			[3, 2],
		]);
		expect(padGrid(2, [0.1, 0.2])).toEqual([1, 2]);
	});
});
