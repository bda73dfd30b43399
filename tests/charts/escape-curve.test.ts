/** The chance that a fault passes unseen, drawn: this soak lies on its own curve, and every mark inside the drawing. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeCurve } from "../../src/charts/escape-curve.ts";
import { planSoak } from "../../src/operations/screening/plan-soak.ts";

const words = { title: "t", description: "d", hoursAxis: "h", chanceAxis: "c", now: "now" };
const CLEAN = { failures: 0, coldStarts: 0, coldStartFailures: 0, confidence: 0.95 };

describe("the curve of a soak", () => {
	it("falls from 100 % as exp(−t/mean), the escape of a constant rate, and holds this soak's point", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.5, max: 200, noNaN: true }),
				fc.double({ min: 0.1, max: 3, noNaN: true }),
				(mean, share) => {
					const hours = share * mean;
					const { curve, judged } = planSoak({ ...CLEAN, hours, meanTimeToShowH: mean });
					expect(curve[0]).toEqual({ hours: 0, probability: 1 });
					for (const point of curve) expect(point.probability).toBeCloseTo(Math.exp(-point.hours / mean), 9);
					expect(curve.at(-1)?.hours).toBeGreaterThan(hours);
					const probability = judged.result?.escapeProbability ?? Number.NaN;
					const drawing = escapeCurve({ points: curve, now: { hours, probability }, marks: [], words });
					const point = drawing.primitives.find((mark) => mark.role === "point");
					const path = drawing.primitives.find((mark) => mark.role === "curve");
					if (point?.kind !== "circle" || path?.kind !== "path") throw new Error("no point or no curve");
					const corners = [...path.d.matchAll(/[ML]?(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
					const next = corners.findIndex(([x = 0]) => x >= point.cx);
					const [[x0 = 0, y0 = 0] = [], [x1 = 0, y1 = 0] = []] = [corners[next - 1], corners[next]];
					const height = y0 + ((y1 - y0) * (point.cx - x0)) / (x1 - x0);
					// Corners are written to 0.1 and the curve bends between two of 120: half the point's radius.
					expect(Math.abs(height - point.cy)).toBeLessThan(3);
				},
			),
			{ numRuns: 50 },
		);
	});

	it("is not drawn for a fault that showed, or that nobody described", () => {
		expect(planSoak({ ...CLEAN, hours: 5 }).curve).toEqual([]);
		expect(planSoak({ ...CLEAN, failures: 1, hours: 5, meanTimeToShowH: 8 }).curve).toEqual([]);
	});

	it("keeps the marks of what is asked for inside", () => {
		const { curve, judged } = planSoak({
			...CLEAN,
			hours: 2,
			meanTimeToShowH: 8,
			priorProbability: 0.3,
			targetProbability: 0.01,
		});
		const asked = [judged.result?.hoursForConfidence, judged.result?.hoursForTarget].map((hours) => ({
			hours: hours ?? Number.NaN,
			label: "x",
		}));
		const drawing = escapeCurve({ points: curve, now: { hours: 2, probability: 0.7 }, marks: asked, words });
		const lines = drawing.primitives.flatMap((mark) =>
			mark.kind === "line" && mark.role === "limit" ? [mark.x1] : [],
		);
		expect(lines).toHaveLength(2);
		for (const x of lines) expect(x).toBeLessThan(drawing.width);
		expect(JSON.stringify(drawing)).not.toMatch(/NaN|Infinity|null/);
	});
});
