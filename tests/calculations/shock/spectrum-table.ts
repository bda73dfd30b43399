/**
 * Shock response spectra of classical pulses: exact (piecewise analytic, the same by an integration of the differential equation to
 * 6.4e-13), and by a ramp-invariant filter written elsewhere at three sampling rates. Source: measurement page, section 4.4,
 * computed there independently of this code; printed to 1e-6.
 */
export interface SpectrumRow {
	readonly id: string;
	readonly pulse: "half_sine" | "terminal_peak_sawtooth" | "trapezoid_10pct" | "versine" | "rectangular" | "triangle";
	readonly peakGn: number;
	readonly durationMs: number;
	readonly frequencyHz: number;
	/** `inf` was run as 1e9. */
	readonly q: number;
	readonly exact: number;
	/** At 2000 samples per pulse or per period, whichever is more; at 100 kHz; at 10 kHz. */
	readonly filtered: readonly [fine: number, at100kHz: number, at10kHz: number];
	readonly positive: number;
	readonly negative: number;
	readonly primary: number;
	readonly residual: number;
}

const row = (
	id: string,
	pulse: SpectrumRow["pulse"],
	[peakGn, durationMs, frequencyHz, q]: readonly [number, number, number, number],
	exact: number,
	filtered: SpectrumRow["filtered"],
	[positive, negative, primary, residual]: readonly [number, number, number, number],
): SpectrumRow => ({
	id,
	pulse,
	peakGn,
	durationMs,
	frequencyHz,
	q,
	exact,
	filtered,
	positive,
	negative,
	primary,
	residual,
});

export const SPECTRUM_TABLE: readonly SpectrumRow[] = [
	row(
		"R01",
		"half_sine",
		[50, 11, 10, 10],
		20.258787,
		[20.258783, 20.258773, 20.25734],
		[20.258787, 17.310483, 9.196719, 20.258787],
	),
	row(
		"R02",
		"half_sine",
		[50, 11, 30, 10],
		55.440505,
		[55.440492, 55.440462, 55.436731],
		[55.440505, 47.372131, 51.08738, 55.440505],
	),
	row(
		"R04",
		"half_sine",
		[50, 11, 100, 10],
		79.569786,
		[79.569767, 79.569727, 79.558726],
		[79.569786, 43.668679, 79.569786, 43.668679],
	),
	row(
		"R05",
		"half_sine",
		[50, 11, 200, 10],
		56.980311,
		[56.980302, 56.98025, 56.968239],
		[56.980311, 14.209443, 56.980311, 14.209443],
	),
	row(
		"R06",
		"half_sine",
		[50, 11, 500, 10],
		52.350951,
		[52.35095, 52.350823, 52.34679],
		[52.350951, 3.494948, 52.350951, 3.494948],
	),
	row(
		"R07",
		"half_sine",
		[50, 11, 1000, 10],
		50.378215,
		[50.378214, 50.377965, 50.374553],
		[50.378215, 2.176519, 50.378215, 2.176519],
	),
	row(
		"R09",
		"half_sine",
		[50, 11, 100, 5],
		75.447534,
		[75.44752, 75.447482, 75.439957],
		[75.447534, 35.934932, 75.447534, 35.934932],
	),
	row(
		"R10",
		"half_sine",
		[1, 10, 81, 1e9],
		1.768458,
		[1.768457, 1.768454, 1.768153],
		[1.768458, 1.649681, 1.768458, 1.649681],
	),
	row(
		"R11",
		"half_sine",
		[1, 10, 10, 1e9],
		0.396274,
		[0.396273, 0.396273, 0.396241],
		[0.396274, 0.396274, 0.122455, 0.396274],
	),
	row(
		"R12",
		"half_sine",
		[1, 10, 500, 1e9],
		1.099802,
		[1.099801, 1.099789, 1.098585],
		[1.099802, 0.20202, 1.099802, 0.20202],
	),
	row(
		"R13",
		"half_sine",
		[1, 10, 50, 1e9],
		1.570796,
		[1.570796, 1.570795, 1.570667],
		[1.570796, 1.570796, 1.570796, 1.570796],
	),
	row(
		"R14",
		"terminal_peak_sawtooth",
		[50, 11, 20, 10],
		30.523171,
		[30.53762, 30.549438, 30.785187],
		[30.523171, 26.081069, 16.81137, 30.523171],
	),
	row(
		"R16",
		"terminal_peak_sawtooth",
		[50, 11, 100, 10],
		47.02242,
		[47.024597, 47.026637, 47.039964],
		[47.02242, 40.208169, 47.02242, 47.02242],
	),
	row(
		"R17",
		"terminal_peak_sawtooth",
		[50, 11, 250, 10],
		51.220945,
		[51.221984, 51.224363, 51.220945],
		[51.220945, 43.804976, 51.220945, 51.220945],
	),
	row(
		"R18",
		"terminal_peak_sawtooth",
		[50, 11, 1000, 10],
		50.001974,
		[50.001974, 50.001974, 50.001974],
		[50.001974, 42.883639, 50.001974, 50.001974],
	),
	row(
		"R19",
		"trapezoid_10pct",
		[50, 11, 20, 10],
		54.225869,
		[54.225869, 54.225864, 54.225564],
		[54.225869, 46.334264, 39.764465, 54.225869],
	),
	row(
		"R20",
		"trapezoid_10pct",
		[50, 11, 60, 10],
		92.630906,
		[92.630905, 92.630906, 92.628183],
		[92.630906, 75.707589, 92.630906, 75.707589],
	),
	row(
		"R22",
		"trapezoid_10pct",
		[50, 11, 250, 10],
		87.793697,
		[87.793658, 87.793299, 87.793299],
		[87.793697, 54.823359, 87.793697, 54.823359],
	),
	row(
		"R23",
		"trapezoid_10pct",
		[50, 11, 1000, 10],
		53.808389,
		[53.808389, 53.806565, 53.717709],
		[53.808389, 3.686341, 53.808389, 3.686341],
	),
	row(
		"R24",
		"versine",
		[50, 11, 30, 10],
		44.981021,
		[44.981017, 44.980992, 44.979497],
		[44.981021, 38.434839, 41.508192, 44.981021],
	),
	row(
		"R25",
		"versine",
		[50, 11, 100, 10],
		79.559334,
		[79.559286, 79.559177, 79.529748],
		[79.559334, 58.617226, 79.559334, 58.617226],
	),
	row(
		"R27",
		"rectangular",
		[50, 11, 30, 10],
		80.171157,
		[80.195733, 80.215821, 80.610122],
		[80.171157, 68.50368, 73.593332, 80.171157],
	),
	row(
		"R28",
		"rectangular",
		[50, 11, 100, 10],
		92.937905,
		[92.937884, 92.937806, 92.930759],
		[92.937905, 24.392105, 92.937905, 28.546543],
	),
	row(
		"R29",
		"rectangular",
		[50, 11, 300, 10],
		92.937905,
		[92.937884, 92.937241, 92.78494],
		[92.937905, 48.732705, 92.937905, 57.03281],
	),
	row(
		"R31",
		"half_sine",
		[60, 18, 150, 25],
		66.040207,
		[66.040196, 66.040181, 66.027577],
		[66.040207, 11.333497, 66.040207, 11.333497],
	),
	row(
		"R32",
		"half_sine",
		[100, 6, 120, 10],
		163.768037,
		[163.767964, 163.767663, 163.718292],
		[163.768037, 136.145678, 163.768037, 136.145678],
	),
	row(
		"R34",
		"triangle",
		[50, 11, 100, 10],
		69.941973,
		[69.941949, 69.941901, 69.93402],
		[69.941973, 45.017841, 69.941973, 45.017841],
	),
];
