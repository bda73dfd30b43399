/** The drawings of recordings: what must hold of any. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Drawing } from "../../src/charts/drawing.ts";
import { overTime, type Stretch } from "../../src/charts/over-time.ts";
import { shockPlot } from "../../src/charts/shock-plot.ts";

/** Every number of a drawing, those in paths included. */
function numbersOf({ primitives }: Drawing): number[] {
	return primitives.flatMap((mark) => {
		if (mark.kind === "path") return (mark.d.match(/-?[\d.]+(e-?\d+)?|NaN|Infinity/g) ?? []).map(Number);
		return Object.values(mark).filter((value) => typeof value === "number");
	});
}
const words = { title: "t", description: "d", axis: "h", valueAxis: "g", tick: String };
const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });

test("property: a trip of any values lies inside its drawing, empty stretches left out, peaks never lost", () => {
	const stretch = fc.tuple(value, fc.double({ min: 0, max: 100, noNaN: true }), fc.boolean());
	fc.assert(
		fc.property(fc.array(stretch, { minLength: 1, maxLength: 3000 }), (made) => {
			const stretches = made.map(([least, height, missing], at): Stretch => {
				if (missing) return { from: at, to: at + 1, least: Number.NaN, greatest: Number.NaN };
				return { from: at, to: at + 1, least, greatest: least + height };
			});
			const bands = [{ from: -5, to: made.length / 2, label: "b" }];
			const drawing = overTime({ stretches, bands, events: [], joined: true, base: null, words });
			for (const one of numbersOf(drawing)) {
				expect(Number.isFinite(one)).toBe(true);
				expect(one).toBeGreaterThanOrEqual(0);
				expect(one).toBeLessThanOrEqual(drawing.width);
			}
			const path = drawing.primitives.find((mark) => mark.role === "envelope");
			const drawn = path?.kind === "path" ? path.d.split("M").length - 1 : 0;
			expect(drawn).toBeLessThanOrEqual(700);
		}),
		{ numRuns: 200 },
	);
});

test("no stretch reaches over a gap, and the greatest of those that are joined is drawn", () => {
	const made = (from: number) =>
		Array.from({ length: 2000 }, (_, index): Stretch => {
			const at = from + index / 10_000;
			return { from: at, to: at + 1e-4, least: 0, greatest: index === 777 ? 50 : 1 };
		});
	const stretches = [...made(0), ...made(10)];
	const drawing = overTime({ stretches, bands: [], events: [], joined: false, base: 0, words });
	const path = drawing.primitives.find((mark) => mark.role === "envelope");
	const boxes = (path?.kind === "path" ? path.d : "").split("M").slice(1);
	const widths = boxes.map((box) => {
		const [, left = 0, , right = 0] = (/^([\d.]+),([\d.]+)H([\d.]+)/.exec(box) ?? []).map(Number);
		return right - left;
	});
	expect(Math.max(...widths)).toBeLessThan(2);
	const tops = boxes.map((box) => Number(/,([\d.]+)H/.exec(box)?.[1]));
	// 50 of 53 on a scale of 224 points: near the top.
	expect(Math.min(...tops)).toBeLessThan(62);
});

test("a spectrum is straight on its axes: ten times the frequency and the response are one length each", () => {
	const points = [1, 10, 100].map((at) => ({ at, gn: at }));
	const drawing = shockPlot({
		over: "spectrum",
		points,
		limit: [],
		mark: null,
		words: { ...words, limit: "l", mark: "m" },
	});
	const curve = drawing.primitives.find((mark) => mark.role === "curve");
	const places = (curve?.kind === "path" ? curve.d : "")
		.slice(1)
		.split("L")
		.map((pair) => pair.split(",").map(Number));
	const [a, b, c] = places as [number, number][];
	expect((b?.[0] ?? 0) - (a?.[0] ?? 0)).toBeCloseTo((c?.[0] ?? 0) - (b?.[0] ?? 0), 0);
	expect((a?.[1] ?? 0) - (b?.[1] ?? 0)).toBeCloseTo((b?.[1] ?? 0) - (c?.[1] ?? 0), 0);
});

test("a spectrum that begins at 0 and a trace without any change are drawn", () => {
	const flat = [0, 1, 2].map((at) => ({ at, gn: 1 }));
	const zero = [10, 20, 40].map((at, index) => ({ at, gn: index }));
	for (const [over, points] of [
		["time", flat],
		["spectrum", zero],
	] as const) {
		const drawing = shockPlot({ over, points, limit: points, mark: null, words: { ...words, limit: "l", mark: "m" } });
		for (const one of numbersOf(drawing)) expect(Number.isFinite(one)).toBe(true);
	}
});
