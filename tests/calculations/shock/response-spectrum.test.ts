/**
 * Response spectra against the table of the measurement page (section 4.4) and its closed forms (4.2), computed there by other
 * programs: a piecewise exact solution, an integration, a filter. Printed to 1e-6, so half of that and rounding are allowed.
 */
import { describe, expect, it } from "vitest";
import {
	type Axes,
	noExtremes,
	respond,
	STATE_LENGTH,
} from "../../../src/calculations/shock/trace/oscillator-responses.ts";
import { parabolicPeak } from "../../../src/calculations/shock/trace/parabolic-peak.ts";
import { oscillatorFilter } from "../../../src/calculations/shock/trace/ramp-invariant.ts";
import { responseSpectra, type SpectrumPoint } from "../../../src/calculations/shock/trace/response-spectrum.ts";
import { classicalPulse } from "./classical-pulse.ts";
import { SPECTRUM_TABLE, type SpectrumRow } from "./spectrum-table.ts";

const near = (got: number | null | undefined, expected: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - expected), `${got} against ${expected}`).toBeLessThanOrEqual(tolerance);

function spectrumOf(row: SpectrumRow, sampleRateHz: number, peak: "sample" | "parabolic" = "sample"): SpectrumPoint {
	const samples = classicalPulse(row.pulse, row.peakGn, row.durationMs, sampleRateHz);
	return pointOf([samples], sampleRateHz, row.frequencyHz, 1 / (2 * row.q), peak);
}

function pointOf(
	axes: Axes,
	sampleRateHz: number,
	frequencyHz: number,
	dampingRatio: number,
	peak: "sample" | "parabolic" = "sample",
): SpectrumPoint {
	const shockEndIndex = axes[0].length - 1;
	const spectra = responseSpectra({
		axes,
		sampleRateHz,
		frequenciesHz: [frequencyHz],
		dampingRatio,
		shockEndIndex,
		peak,
	});
	const point = spectra.axes[0]?.[0];
	if (point === undefined) throw new Error("no point");
	return point;
}

describe("the table of spectra, every row by a filter written elsewhere (half a unit of the last digit, and rounding)", () => {
	it.each(SPECTRUM_TABLE.map((row) => [row.id, row] as const))("%s", (_, row) => {
		const [fine, at100kHz, at10kHz] = row.filtered;
		near(spectrumOf(row, 10_000).maximaxGn, at10kHz, 1e-6);
		near(spectrumOf(row, 100_000).maximaxGn, at100kHz, 1e-6);
		near(spectrumOf(row, 2000 * Math.max(1000 / row.durationMs, row.frequencyHz)).maximaxGn, fine, 1e-6);
	});
});

describe("the table of spectra, every row against the exact solution", () => {
	// A sudden edge takes one sample here, of 2000 to the pulse, and shifts the phase of what follows: 2e-3. Others need far less.
	const sudden = (row: SpectrumRow) => row.pulse === "rectangular" || row.pulse === "terminal_peak_sawtooth";
	it.each(SPECTRUM_TABLE.map((row) => [row.id, row] as const))("%s", (_, row) => {
		const rate = 2000 * Math.max(1000 / row.durationMs, row.frequencyHz);
		const point = spectrumOf(row, rate, "parabolic");
		const tolerance = row.exact * (sudden(row) ? 2e-3 : 2e-6);
		near(point.maximaxGn, row.exact, tolerance);
		near(point.positiveGn, row.positive, tolerance);
		near(point.negativeGn, row.negative, tolerance);
		near(point.primaryGn, row.primary, tolerance);
		near(point.residualGn, row.residual, tolerance);
	});
	it("parabolic peaks at 10 kHz come nearer to the exact value than samples, for every smooth pulse", () => {
		for (const row of SPECTRUM_TABLE.filter((one) => ["half_sine", "versine"].includes(one.pulse))) {
			const bySample = Math.abs(spectrumOf(row, 10_000).maximaxGn - row.exact);
			const byParabola = Math.abs(spectrumOf(row, 10_000, "parabolic").maximaxGn - row.exact);
			expect(byParabola, row.id).toBeLessThanOrEqual(bySample);
		}
	});
});

describe("coefficients of the recursion (agree with an open implementation that cites ISO 18431-4; 1e-12 of each)", () => {
	it.each([
		[
			"R90",
			100,
			[0.0037908042130062602, 0.0026160495890463764, -0.0024726831622156054, -1.989802341984941, 0.9937365126247781],
		],
		[
			"R91",
			1000,
			[0.09328992131919278, 0.24453322266849709, 0.0323912887434854, -1.5688869346931174, 0.9391013674242926],
		],
	] as const)("%s", (_, frequencyHz, expected) => {
		const filter = oscillatorFilter(frequencyHz, 1 / 20, 10_000);
		// b is a difference of numbers near 1: what is left of it has lost 3e-16 of 1, which at R90 is 1e-13 of itself.
		expected.forEach((value, index) => {
			near(filter[index], value, 1e-12 * Math.max(Math.abs(value), 1e-3));
		});
	});
	it("pass a constant as it is", () => {
		const [b0 = 0, b1 = 0, b2 = 0, a1 = 0, a2 = 0] = oscillatorFilter(37, 0.05, 5000);
		near((b0 + b1 + b2) / (1 + a1 + a2), 1, 1e-9);
	});
	it("at a hundred-thousandth of the sampling rate b1 still holds to 1e-5 against its series", () => {
		const [, b1 = 0] = oscillatorFilter(1, 0, 1e5);
		// Undamped, θ = ωT: b1 = 2(sin θ/θ − cos θ) = 2(θ²/3 − θ⁴/30 + …).
		const angle = 2 * Math.PI * 1e-5;
		near(b1 / (2 * (angle ** 2 / 3 - angle ** 4 / 30)), 1, 1e-5);
	});
});

describe("R92: response to a triangle with its corners on the samples, sample by sample (exact solution, 1e-9)", () => {
	const EXPECTED = [
		0.0, 0.002878037, 0.016961804, 0.049308035, 0.104995346, 0.186696014, 0.294492882, 0.425951461, 0.576432386,
		0.739606681, 0.90811791, 1.074322856, 1.225280862, 1.33828875, 1.394869693, 1.382555911, 1.295904285, 1.136803634,
		0.914065932, 0.642363031, 0.340631564, 0.030116214, -0.267748921, -0.530533651,
	];
	it("holds", () => {
		const samples = new Float64Array(2 + EXPECTED.length);
		samples.set(classicalPulse("triangle", 1, 11, 2000), 2);
		const filter = oscillatorFilter(100, 1 / 20, 2000);
		const state = new Float64Array(STATE_LENGTH);
		EXPECTED.forEach((expected, index) => {
			respond([samples], index + 2, index + 2, filter, state, noExtremes());
			near(state[0], expected, 1e-9);
		});
	});
});

describe("closed forms, undamped (1e-5: 20,000 samples a pulse or more)", () => {
	const unit = (frequencyShare: number, pulse: SpectrumRow["pulse"] = "half_sine", perPulse = 20_000) => {
		// A pulse of one second, so that the frequency is the product of frequency and duration.
		const rate = perPulse * Math.max(1, frequencyShare);
		return pointOf([classicalPulse(pulse, 1, 1000, rate)], rate, frequencyShare, 0, "parabolic");
	};
	it.each([
		[0.25, 0.6666666666666666, 0.9428090416],
		[0.5, 1.5707963267948966, 1.5707963267948966],
		[0.75, 1.7633557569, 1.6970562748],
		[1, 1.7320508076, 1.3333333333333333],
		[1.5, 1.5, 0],
		[2, 1.2680753551, 0.5333333333],
		[3, 1.1699134946, 0.3428571429],
		[5, 1.0998016021, 0.202020202],
	])("R93: half sine, frequency × duration %d", (share, primary, residual) => {
		const point = unit(share);
		near(point.primaryGn, primary, 1e-5);
		near(point.residualGn, residual, 1e-5);
	});
	it.each([
		[0.001, 0.0039999963],
		[0.01, 0.0399962609],
		[0.02, 0.0799700904],
		[0.05, 0.1995329981],
		[0.1, 0.3962735485],
	])("R95: low frequencies come to 4·f·T, at %d", (share, expected) => {
		// No more than a million samples a period, beyond which the coefficients lose digits. The area of a half sine of 1000 samples
		// is 8e-7 short.
		near(unit(share, "half_sine", 1000).maximaxGn, expected, 8e-7 * expected + 3e-8);
	});
	it.each([
		["half_sine", 0.8099367802, 1.768457654],
		["versine", 1.0, 1.705143],
		["triangle", 0.904593, 1.517177],
		["trapezoid_10pct", 0.578088, 1.994446],
		["terminal_peak_sawtooth", 0.650239, 1.259591],
	] as const)("greatest of the undamped spectrum of %s", (pulse, share, expected) => {
		near(unit(share, pulse).maximaxGn, expected, pulse === "terminal_peak_sawtooth" ? 1e-4 : 2e-6);
	});
	it.each([
		[50, 0.81282155, 1.74285145],
		[25, 0.81560178, 1.71843198],
		[10, 0.82333554, 1.6516289],
		[5, 0.83434381, 1.55844052],
	])("R94: greatest of the half sine's spectrum at q %d", (q, share, expected) => {
		const samples = classicalPulse("half_sine", 1, 1000, 20_000);
		near(pointOf([samples], 20_000, share, 1 / (2 * q), "parabolic").maximaxGn, expected, 1e-6);
	});
	it.each([
		[5, 0.88014434],
		[10, 0.93134486],
		[25, 0.97023022],
		[50, 0.98470938],
	])("R96: a sudden change of velocity at q %d (pulse of a hundredth of a period: 1e-3)", (q, expected) => {
		const samples = classicalPulse("half_sine", 1, 10, 100_000);
		const velocity = (2 * 0.01) / Math.PI;
		const point = pointOf([samples], 100_000, 1, 1 / (2 * q), "parabolic");
		near(point.maximaxGn / (2 * Math.PI * velocity), expected, 1e-3);
	});
});

describe("V04: what sampling loses of a sine's peak (1 − cos(π/k) at k samples a period), and a parabola gives back", () => {
	it.each([
		[5, 0.190983006, 0.051],
		[10, 0.048943484, 0.0035],
		[16, 0.01921472, 0.001],
		[20, 0.012311659, 0.00023],
		[50, 0.001973272, 0.0001],
	])("at %d samples a period", (perPeriod, bySample, byParabola) => {
		let [worstSample, worstParabola] = [0, 0];
		for (let shift = -0.5; shift <= 0.5; shift += 1 / 512) {
			const [before, peak, after] = [-1, 0, 1].map((step) => Math.cos((2 * Math.PI * (step + shift)) / perPeriod));
			worstSample = Math.max(worstSample, 1 - (peak ?? 0));
			worstParabola = Math.max(worstParabola, Math.abs(1 - parabolicPeak(before ?? 0, peak ?? 0, after ?? 0)));
		}
		near(worstSample, bySample, 1e-9);
		// Printed figures to two digits: half of the last digit is allowed.
		expect(worstParabola).toBeLessThanOrEqual(byParabola * 1.05);
	});
});

describe("three axes at once", () => {
	const rate = 10_000;
	const one = classicalPulse("half_sine", 50, 11, rate);
	const mix = (share: number, shift: number) => one.map((_, index) => share * (one[index - shift] ?? 0));
	const axes: Axes = [mix(0.48, 0), mix(-0.6, 7), mix(0.64, 3)];
	const spectraOf = (given: Axes) =>
		responseSpectra({
			axes: given,
			sampleRateHz: rate,
			frequenciesHz: [20, 100, 400],
			dampingRatio: 0.05,
			shockEndIndex: 110,
			peak: "parabolic",
		});
	it("give each axis what it gives alone", () => {
		const together = spectraOf(axes);
		axes.forEach((samples, axis) => {
			const alone = spectraOf([samples]).axes[0] ?? [];
			alone.forEach((point, index) => {
				for (const member of ["maximaxGn", "positiveGn", "negativeGn", "primaryGn", "residualGn"] as const)
					near(together.axes[axis]?.[index]?.[member], point[member] ?? Number.NaN, 1e-9);
			});
		});
	});
	it("have a resultant that does not change when the recorder is turned", () => {
		const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
		const [x, y, z] = axes;
		const turned: Axes = [x.map((v, i) => c * v - s * (y[i] ?? 0)), x.map((v, i) => s * v + c * (y[i] ?? 0)), z];
		spectraOf(axes).resultant?.forEach((point, index) => {
			near(spectraOf(turned).resultant?.[index]?.maximaxGn, point.maximaxGn, 1e-9);
			expect(point.positiveGn).toBeNull();
		});
	});
	it("have the resultant of simultaneous responses: not the root sum of each axis's greatest, never less than the greatest", () => {
		const { axes: each, resultant } = spectraOf(axes);
		resultant?.forEach((point, index) => {
			const greatest = each.map((axis) => axis[index]?.maximaxGn ?? 0);
			expect(point.maximaxGn).toBeLessThan(Math.hypot(...greatest));
			expect(point.maximaxGn).toBeGreaterThan(Math.max(...greatest));
		});
	});
	it("all along one line, the resultant is the response of that line", () => {
		const line: Axes = [one.map((v) => 0.48 * v), one.map((v) => -0.6 * v), one.map((v) => 0.64 * v)];
		const alone = spectraOf([one]).axes[0] ?? [];
		spectraOf(line).resultant?.forEach((point, index) => {
			near(point.maximaxGn, alone[index]?.maximaxGn ?? 0, 1e-9);
		});
	});
});
