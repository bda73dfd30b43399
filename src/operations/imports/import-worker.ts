/** Reads one diagnostic output on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import { importDiagnostic } from "../../importers/import-diagnostic.ts";
import { ImportRefusal } from "../../importers/import-result.ts";
import type { ImportAnswer, ImportTask } from "./read-diagnostic.ts";

const { bytes, kind, condition } = workerData as ImportTask;

function answer(): ImportAnswer {
	try {
		return { result: importDiagnostic(bytes, kind, condition) };
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
		const { code, line, reason } = error;
		return { refusal: { code, line, reason } };
	}
}

parentPort?.postMessage(answer());
