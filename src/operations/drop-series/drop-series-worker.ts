/** Judges one series of drops on a thread of its own. */
import { parentPort, workerData } from "node:worker_threads";
import { outcomeOf } from "../threads/answer-on-thread.ts";
import { assessDropSeries } from "./assess-drop-series.ts";

parentPort?.postMessage(outcomeOf(() => assessDropSeries(workerData as string)));
