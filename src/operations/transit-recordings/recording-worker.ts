/** Reads one recorder's file on a thread of its own. */
import { parentPort, workerData } from "node:worker_threads";
import { answerTo, type RecordingTask } from "./recording-reader.ts";

const told = (progress: number) => parentPort?.postMessage({ progress });
parentPort?.postMessage(answerTo(workerData as RecordingTask, told));
