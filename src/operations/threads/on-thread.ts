/** Work that may take long: each piece on a thread of its own, within a time and a memory, so that the service goes on serving. */
import { Worker } from "node:worker_threads";
import type { Fault } from "../../faults.ts";

export interface ThreadLimits {
	readonly longestMs: number;
	readonly mostMemoryMb: number;
}

/**
 * What the worker posts. `workerPath` is as built: a thread loads no TypeScript.
 * @throws what `tooLarge` makes where the time or the memory is used up; whatever the worker throws
 */
export async function onThread<Answer>(
	workerPath: string,
	workerData: unknown,
	{ longestMs, mostMemoryMb }: ThreadLimits,
	tooLarge: () => Fault,
	/** Told of what the worker posts as `{ progress }` before its answer. */
	told: (progress: number) => void = () => {},
): Promise<Answer> {
	const worker = new Worker(workerPath, { workerData, resourceLimits: { maxOldGenerationSizeMb: mostMemoryMb } });
	const timer = setTimeout(() => worker.terminate(), longestMs);
	try {
		return await new Promise((resolve, reject) => {
			worker.on("message", (message) => {
				if (typeof message?.progress === "number") told(message.progress);
				else resolve(message);
			});
			worker.once("error", (error: NodeJS.ErrnoException) =>
				reject(error.code === "ERR_WORKER_OUT_OF_MEMORY" ? tooLarge() : error),
			);
			// Ended before it answered: by the timer.
			worker.once("exit", () => reject(tooLarge()));
		});
	} finally {
		clearTimeout(timer);
		await worker.terminate();
	}
}
