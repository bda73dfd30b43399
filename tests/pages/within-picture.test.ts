/** A rectangle that reaches out of the picture is drawn inside it. Own cases, and a property. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { withinPicture } from "../../src/pages/browser/black-out/within-picture.ts";

it("draws the part inside the picture, and nothing where no part is", () => {
	expect(withinPicture({ x: 10, y: 20, w: 30, h: 200 })).toEqual({ x: 10, y: 20, w: 30, h: 80 });
	expect(withinPicture({ x: -10, y: 0, w: 30, h: 10 })).toEqual({ x: 0, y: 0, w: 20, h: 10 });
	expect(withinPicture({ x: 10, y: 20, w: 30, h: 40 })).toEqual({ x: 10, y: 20, w: 30, h: 40 });
	expect(withinPicture({ x: 120, y: 20, w: 30, h: 40 })).toBeNull();
	expect(withinPicture({ x: 10, y: 20, w: -30, h: 40 })).toBeNull();
});

it("never draws outside", () => {
	const percent = fc.double({ min: -1e6, max: 1e6, noNaN: true });
	fc.assert(
		fc.property(fc.record({ x: percent, y: percent, w: percent, h: percent }), (typed) => {
			const drawn = withinPicture(typed);
			if (drawn === null) return;
			expect(drawn.x).toBeGreaterThanOrEqual(0);
			expect(drawn.y).toBeGreaterThanOrEqual(0);
			// A sum of two doubles may end in another last digit.
			expect(drawn.x + drawn.w).toBeLessThanOrEqual(100 + 1e-9);
			expect(drawn.y + drawn.h).toBeLessThanOrEqual(100 + 1e-9);
		}),
	);
});
