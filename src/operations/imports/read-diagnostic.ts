/**
 * Reads a diagnostic output without holding up the service: a small one at once, a large one on a thread of its own, one
 * after the other, within a time that every real output keeps far below.
 */
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { fault } from "../../faults.ts";
import { type ImportKind, importDiagnostic } from "../../importers/import-diagnostic.ts";
import { type ImportCondition, ImportRefusal, type ImportResult } from "../../importers/import-result.ts";

/** Up to here the slowest format takes some 50 ms. */
const SMALL_BYTES = 64 * 1024;
/** Our choice: 16 MiB of the slowest format take about 12 s. */
const LONGEST_MS = 30_000;
const MOST_MEMORY_MB = 1024;
const MOST_WAITING = 8;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/imports/import-worker.js", import.meta.url));

export interface ImportTask {
	readonly bytes: Uint8Array;
	readonly kind: ImportKind | null;
	readonly condition: ImportCondition;
}

/** What the thread answers: the result, or the parts of a refusal. */
export type ImportAnswer =
	| { readonly result: ImportResult }
	| { readonly refusal: Pick<ImportRefusal, "code" | "line" | "reason"> };

let waiting = 0;
let last: Promise<unknown> = Promise.resolve();

/** @throws ImportRefusal with line and reason; too-many; too-large where the time or memory is used up */
export async function readDiagnostic(task: ImportTask): Promise<ImportResult> {
	if (task.bytes.length <= SMALL_BYTES) return importDiagnostic(task.bytes, task.kind, task.condition);
	if (waiting >= MOST_WAITING) throw fault("too-many", { retryAfterS: 10 });
	waiting += 1;
	const reading = last.then(() => readInThread(task));
	last = reading.catch(() => undefined);
	try {
		const answer = await reading;
		if ("result" in answer) return answer.result;
		const { code, line, reason } = answer.refusal;
		throw new ImportRefusal(code, line, reason.values);
	} finally {
		waiting -= 1;
	}
}

async function readInThread(task: ImportTask): Promise<ImportAnswer> {
	const worker = new Worker(WORKER, {
		workerData: task,
		resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
	});
	const timer = setTimeout(() => worker.terminate(), LONGEST_MS);
	try {
		return await new Promise((resolve, reject) => {
			worker.once("message", resolve);
			worker.once("error", (error: NodeJS.ErrnoException) =>
				reject(error.code === "ERR_WORKER_OUT_OF_MEMORY" ? fault("too-large") : error),
			);
			// Ended before it answered: by the timer.
			worker.once("exit", () => reject(fault("too-large")));
		});
	} finally {
		clearTimeout(timer);
		await worker.terminate();
	}
}
