/**
 * The least and the greatest sample of every stretch of a recording, at several sizes of stretch, so that a plot of any part of a
 * trip shows every peak without reading the samples. The recording comes in pieces of any length; of each level only the
 * stretch that is open is kept, and finished ones are handed on.
 */
export interface PyramidOptions {
	/** Samples to a stretch of the lowest level. */
	readonly samplesPerStretch: number;
	/** Stretches of a level to one of the level above. */
	readonly fanOut: number;
	readonly levels: number;
}

export interface SamplePyramid {
	/** The next samples. One that is missing is NaN, and left out. */
	take(samples: Float64Array): void;
	/** The recording is over: stretches that are open are handed on as they are. */
	end(): void;
}

/** @param finished told of each stretch in order, its level counted from 0; of one without any sample both ends are NaN */
export function samplePyramid(
	{ samplesPerStretch, fanOut, levels }: PyramidOptions,
	finished: (level: number, least: number, greatest: number) => void,
): SamplePyramid {
	const least = new Float64Array(levels).fill(Number.POSITIVE_INFINITY);
	const greatest = new Float64Array(levels).fill(Number.NEGATIVE_INFINITY);
	/** Samples of the lowest level, stretches of the level below of the others. */
	const filled = new Float64Array(levels);

	function close(level: number): void {
		const [low, high] = [least[level] as number, greatest[level] as number];
		least[level] = Number.POSITIVE_INFINITY;
		greatest[level] = Number.NEGATIVE_INFINITY;
		filled[level] = 0;
		if (low <= high) finished(level, low, high);
		else finished(level, Number.NaN, Number.NaN);
		const above = level + 1;
		if (above === levels) return;
		if (low < (least[above] as number)) least[above] = low;
		if (high > (greatest[above] as number)) greatest[above] = high;
		filled[above] = (filled[above] as number) + 1;
		if (filled[above] === fanOut) close(above);
	}

	return {
		take(samples) {
			let [low, high, count] = [least[0] as number, greatest[0] as number, filled[0] as number];
			for (let index = 0; index < samples.length; index += 1) {
				const sample = samples[index] as number;
				if (sample < low) low = sample;
				if (sample > high) high = sample;
				count += 1;
				if (count === samplesPerStretch) {
					[least[0], greatest[0]] = [low, high];
					close(0);
					[low, high, count] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
				}
			}
			[least[0], greatest[0], filled[0]] = [low, high, count];
		},
		end() {
			for (let level = 0; level < levels; level += 1) if ((filled[level] as number) > 0) close(level);
		},
	};
}
