/** The drawing of two ends on one scale: what must hold of any. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type EndOnScale, type TwoEndsData, twoEnds } from "../../src/charts/two-ends.ts";

const words = { title: "t", description: "d", departure: "left", arrival: "arrived", tick: String };
const draw = (departure: EndOnScale, arrival: EndOnScale, limits: readonly number[] = []) =>
	twoEnds({ departure, arrival, limits, words } satisfies TwoEndsData);
const circles = (drawing: ReturnType<typeof draw>) =>
	drawing.primitives.flatMap((mark) => (mark.kind === "circle" ? [mark] : []));
const lines = (drawing: ReturnType<typeof draw>, role: string) =>
	drawing.primitives.flatMap((mark) => (mark.kind === "line" && mark.role === role ? [mark] : []));

test("property: the larger value never lies left of the smaller, every mark inside the drawing, every number finite", () => {
	const value = fc.oneof(
		fc.double({ min: -1e15, max: 1e15, noNaN: true }),
		fc.constantFrom(0, 1, 5e-324, -5e-324, 1e-200, 1e-300, 1e15, 1e15 - 0.125),
	);
	const half = fc.option(fc.oneof(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.constantFrom(0, 5e-324, 1e-201)));
	const end = fc.tuple(value, half).map(
		([at, width]): EndOnScale => ({
			value: at,
			interval: width === null ? null : [at - width, at + width],
		}),
	);
	fc.assert(
		fc.property(end, end, fc.array(value, { maxLength: 2 }), (left, came, limits) => {
			const drawing = draw(left, came, limits);
			const [one, other] = circles(drawing);
			if (left.value < came.value) expect(one?.cx ?? 0).toBeLessThanOrEqual(other?.cx ?? 0);
			for (const mark of drawing.primitives) {
				if (mark.kind !== "line") continue;
				for (const x of [mark.x1, mark.x2]) {
					expect(Number.isFinite(x)).toBe(true);
					expect(x).toBeGreaterThanOrEqual(0);
					expect(x).toBeLessThanOrEqual(drawing.width);
				}
			}
		}),
		{ numRuns: 3000 },
	);
});

test("a closed interval has two bars, one open above has one, none has no line", () => {
	const bars = (interval: EndOnScale["interval"]) =>
		lines(draw({ value: 1, interval }, { value: 1, interval: null }), "axis").length;
	expect([bars([0, 2]), bars([0, null]), bars(null)]).toEqual([3, 2, 0]);
});

test("a limit far away is left out, one near is drawn", () => {
	const ends = [
		{ value: 12, interval: [11.9, 12.1] },
		{ value: 11.95, interval: [11.9, 12] },
	] as const;
	expect(lines(draw(...ends, [11.5]), "limit")).toHaveLength(1);
	expect(lines(draw(...ends, [5]), "limit")).toHaveLength(0);
});
