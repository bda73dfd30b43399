/** Samples of classical pulses by the index rule of the measurement page: i = 0..m with m = round(T·fs), the last with its left limit. */
import type { SpectrumRow } from "./spectrum-table.ts";

/** Height over the peak at a share of the duration, 0 to 1. */
const SHAPES: Readonly<Record<SpectrumRow["pulse"], (share: number) => number>> = {
	half_sine: (share) => (share >= 1 ? 0 : Math.sin(Math.PI * share)),
	terminal_peak_sawtooth: (share) => share,
	trapezoid_10pct: (share) => Math.max(0, Math.min(1, share / 0.1, (1 - share) / 0.1)),
	versine: (share) => (share >= 1 ? 0 : (1 - Math.cos(2 * Math.PI * share)) / 2),
	rectangular: () => 1,
	triangle: (share) => Math.max(0, 1 - Math.abs(2 * share - 1)),
};

export function classicalPulse(
	pulse: SpectrumRow["pulse"],
	peakGn: number,
	durationMs: number,
	sampleRateHz: number,
): Float64Array {
	const durationS = durationMs / 1000;
	const last = Math.round(durationS * sampleRateHz);
	return Float64Array.from({ length: last + 1 }, (_, index) => {
		const share = index === last ? 1 : index / sampleRateHz / durationS;
		return peakGn * SHAPES[pulse](share);
	});
}
