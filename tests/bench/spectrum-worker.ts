/** Half of the frequencies on a thread of its own. */
import { parentPort } from "node:worker_threads";
import { type SpectrumTask, spectraOf } from "./spectrum.ts";

parentPort?.on("message", (task: SpectrumTask) => parentPort?.postMessage(spectraOf(task)));
