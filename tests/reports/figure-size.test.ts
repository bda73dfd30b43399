/** How large a figure stands on its page. Own expectations: it fills what is left within its bounds, and is never cut. */
import { expect, it } from "vitest";
import { figureFor, leastFigure } from "../../src/reports/figure-size.ts";
import { WIDTH } from "../../src/reports/page-styles.ts";

const curve = { width: 640, height: 400 };

it("is as large as it gets where there is room, and as small as what is left, down to where it must go on the next page", () => {
	expect(figureFor(curve, 700).height).toBeCloseTo(248, 6);
	expect(figureFor(curve, 220).height).toBeCloseTo(220, 6);
	expect(figureFor(curve, 100)).toEqual(leastFigure(curve));
	expect(leastFigure(curve).height).toBeCloseTo(208, 6);
});

it("keeps its proportions, and the width of the page", () => {
	for (const room of [100, 215, 900]) {
		const { width, height } = figureFor({ width: 1200, height: 300 }, room);
		expect(width).toBeLessThanOrEqual(WIDTH);
		expect(width / height).toBeCloseTo(4, 9);
	}
});
