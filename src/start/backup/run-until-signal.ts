/** A run in a terminal: it says its lines there, and Ctrl-C ends it after it has cleared away. */
import type { Run } from "./progress.ts";

export function runUntilSignal(): Run {
	const stop = new AbortController();
	for (const signal of ["SIGINT", "SIGTERM"] as const) {
		process.on(signal, () => stop.abort(new Error("it was stopped before it was whole")));
	}
	return { say: (line) => console.log(line), stop: stop.signal };
}
