/**
 * The finest levels of a pyramid that still fit: a level that grows past a number of stretches is let go, since the one above
 * shows a plot of any width without it. So what is kept of a recording does not grow with its length.
 */
import { samplePyramid } from "./sample-pyramid.ts";

export interface SeriesLevel {
	readonly samplesPerStretch: number;
	/** Least and greatest of each stretch, one after the other; NaN where it has no sample. */
	readonly ends: Float64Array;
}

export interface SeriesLevels {
	take(samples: Float64Array): void;
	/** The recording is over. The levels that are kept, finest first. */
	end(): SeriesLevel[];
}

// Our choice: from four samples to more than a hundred million; stretches of a level between a quarter of the most and it.
export const FINEST_STRETCH = 4;
const OPTIONS = { samplesPerStretch: FINEST_STRETCH, fanOut: 4, levels: 13 };
const MOST_STRETCHES = 8192;

export function seriesLevels(): SeriesLevels {
	const kept: (number[] | null)[] = Array.from({ length: OPTIONS.levels }, () => []);
	const pyramid = samplePyramid(OPTIONS, (level, least, greatest) => {
		const ends = kept[level];
		if (ends === null || ends === undefined) return;
		if (ends.length >= 2 * MOST_STRETCHES) kept[level] = null;
		else ends.push(least, greatest);
	});
	return {
		take: pyramid.take,
		end() {
			pyramid.end();
			return kept.flatMap((ends, level): SeriesLevel[] =>
				ends === null || ends.length === 0
					? []
					: [{ samplesPerStretch: OPTIONS.samplesPerStretch * OPTIONS.fanOut ** level, ends: Float64Array.from(ends) }],
			);
		},
	};
}
