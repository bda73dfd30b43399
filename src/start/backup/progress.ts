/** How a long work talks with whoever started it. */

export interface Run {
	/** One plain line about what was done. */
	say(line: string): void;
	/** Asks the work to end early and to leave nothing behind. */
	readonly stop: AbortSignal;
}

/** Our choice: not more often than a person reads. */
const EVERY_S = 2;

/**
 * The function to call after each of many steps: says how far the work is when the last word is some seconds old.
 * @throws the stop's reason, from that function, once the work is to end
 */
export function progressOf(run: Run, what: string, total: number): (done: number) => void {
	let spokenAtMs = performance.now();
	return (done) => {
		run.stop.throwIfAborted();
		if (performance.now() - spokenAtMs < EVERY_S * 1000) return;
		spokenAtMs = performance.now();
		run.say(`${what}: ${done} of ${total}`);
	};
}
