/**
 * A share of which some cases are not known: of the known ones with its interval, and between which two values it lies
 * whatever the unknown ones were. No number is made up for those who said nothing.
 */
import { clopperPearson } from "../statistics/shares.ts";

/** Coverage of the intervals. Common practice. */
export const CONFIDENCE = 0.95;
/** Below so many known cases a share is marked as of small numbers. Our choice: of 30 clean ones up to 12 % can be bad. */
export const FEW = 30;

export interface Counts {
	readonly seen: number;
	readonly known: number;
	readonly unknown: number;
}

export interface KnownShare extends Counts {
	/** Of the known ones; null where there is none. */
	readonly share: number | null;
	/** Exact interval (Clopper and Pearson) of that share; null as it. */
	readonly interval: readonly [low: number, high: number] | null;
	/** Were all unknown ones good. */
	readonly allGood: number | null;
	/** Were all unknown ones bad. */
	readonly allBad: number | null;
	readonly isFew: boolean;
}

export function knownShare({ seen, known, unknown }: Counts): KnownShare {
	const all = known + unknown;
	return {
		seen,
		known,
		unknown,
		share: known === 0 ? null : seen / known,
		interval: known === 0 ? null : clopperPearson(seen, known, CONFIDENCE),
		allGood: all === 0 ? null : seen / all,
		allBad: all === 0 ? null : (seen + unknown) / all,
		isFew: !(known >= FEW),
	};
}
