/**
 * Finds the impacts in a recording of a whole trip, which comes in pieces of any length and never stands in memory as a whole:
 * what is kept is the time before a trigger, and one event up to a length.
 *
 * An event begins with the first sample whose resultant reaches the threshold, and ends when none has reached it for a time. Its
 * trace, with what came before, is what `shockTrace` takes.
 */
import type { Axes } from "../trace/oscillator-responses.ts";

export interface DetectionOptions {
	readonly thresholdGn: number;
	/** Samples below the threshold after which an event is over. */
	readonly quietSamples: number;
	/** Samples before the trigger that its trace begins with, as far as the recording has them. */
	readonly pretriggerSamples: number;
	/** The longest trace that is kept, those before the trigger counted; an event may last longer. */
	readonly mostSamples: number;
}

export interface ImpactEvent {
	/** Samples of the stretch, counted from its beginning: the trigger, and the last that reached the threshold. */
	readonly firstIndex: number;
	readonly lastIndex: number;
	readonly peakIndex: number;
	/** Of the resultant, by sample. */
	readonly peakGn: number;
	/** Those that the trace has before the trigger. */
	readonly pretriggerSamples: number;
	readonly axes: Axes;
	/** The event was longer than the trace. */
	readonly cut: boolean;
}

export interface ImpactDetector {
	/** The next samples, of each axis equally many. A sample that is missing is NaN, and counts as quiet. */
	take(axes: readonly Float64Array[]): void;
	/** A stretch is over: an event that is open ends. What is taken next is another stretch, counted from 0. */
	end(): void;
}

/** @param axisCount 1 or 3; @param found told of each event when it is over, in order */
export function impactDetector(
	axisCount: 1 | 3,
	options: DetectionOptions,
	found: (event: ImpactEvent) => void,
): ImpactDetector {
	const { thresholdGn, quietSamples, pretriggerSamples, mostSamples } = options;
	const threshold = thresholdGn ** 2;
	// The samples before the next one, in a ring; and the trace of the open event.
	const ring = Array.from({ length: axisCount }, () => new Float64Array(pretriggerSamples));
	const trace = Array.from({ length: axisCount }, () => new Float64Array(mostSamples));
	let seen = 0;
	let open: { firstIndex: number; lastIndex: number; peakIndex: number; squared: number; before: number } | null = null;
	let kept = 0;

	function begin(squared: number): void {
		const before = Math.min(seen, pretriggerSamples, mostSamples - 1);
		trace.forEach((samples, axis) => {
			for (let back = before; back > 0; back -= 1)
				samples[before - back] = ring[axis]?.[(seen - back) % pretriggerSamples] ?? 0;
		});
		kept = before;
		open = { firstIndex: seen, lastIndex: seen, peakIndex: seen, squared, before };
	}

	function close(): void {
		if (open === null) return;
		const { firstIndex, lastIndex, peakIndex, squared, before } = open;
		const length = kept;
		const axes = trace.map((samples) => samples.slice(0, length)) as unknown as Axes;
		open = null;
		found({
			firstIndex,
			lastIndex,
			peakIndex,
			peakGn: Math.sqrt(squared),
			pretriggerSamples: before,
			axes,
			cut: lastIndex - firstIndex + before >= length,
		});
	}

	return {
		take(axes) {
			const count = axes[0]?.length ?? 0;
			for (let index = 0; index < count; index += 1) {
				let squared = 0;
				for (let axis = 0; axis < axisCount; axis += 1) squared += (axes[axis]?.[index] ?? Number.NaN) ** 2;
				const reached = squared >= threshold;
				if (open === null && reached) begin(squared);
				if (open !== null) {
					if (reached) open.lastIndex = seen;
					if (squared > open.squared) [open.squared, open.peakIndex] = [squared, seen];
					if (kept < mostSamples) {
						for (let axis = 0; axis < axisCount; axis += 1)
							(trace[axis] as Float64Array)[kept] = axes[axis]?.[index] ?? Number.NaN;
						kept += 1;
					}
				}
				if (pretriggerSamples > 0)
					for (let axis = 0; axis < axisCount; axis += 1)
						(ring[axis] as Float64Array)[seen % pretriggerSamples] = axes[axis]?.[index] ?? Number.NaN;
				if (open !== null && seen - open.lastIndex >= quietSamples) close();
				seen += 1;
			}
		},
		end() {
			close();
			seen = 0;
		},
	};
}
