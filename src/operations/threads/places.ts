/** Lets few do something at once and few wait; more are refused. */
import { fault } from "../../faults.ts";

/** Does it when a place is free. @throws too-many */
export type Places = <Answer>(act: () => Promise<Answer>) => Promise<Answer>;

export function places(atOnce: number, mostWaiting: number): Places {
	let running = 0;
	const waiting: (() => void)[] = [];
	return async (act) => {
		if (running >= atOnce) {
			if (waiting.length >= mostWaiting) throw fault("too-many", { retryAfterS: 10 });
			await new Promise<void>((resolve) => waiting.push(resolve));
		} else running += 1;
		try {
			return await act();
		} finally {
			// The place goes to the next that waits.
			const next = waiting.shift();
			if (next === undefined) running -= 1;
			else next();
		}
	};
}
