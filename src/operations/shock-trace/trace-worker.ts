/** Reads one recorded shock on a thread of its own: the text of a long trace alone takes a second to check. */
import { parentPort, workerData } from "node:worker_threads";
import { Fault } from "../../faults.ts";
import { assessShockTrace } from "./assess-shock-trace.ts";
import type { Outcome } from "./trace-assessor.ts";

function outcome(text: string): Outcome {
	try {
		return { answer: assessShockTrace(text) };
	} catch (error) {
		if (!(error instanceof Fault)) throw error;
		// What a thread posts loses its class.
		return { fault: { code: error.code, members: error.members, facts: error.facts } };
	}
}

parentPort?.postMessage(outcome(workerData as string));
