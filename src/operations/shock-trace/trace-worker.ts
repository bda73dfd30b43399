/** Reads one recorded shock on a thread of its own: the text of a long trace alone takes a second to check. */
import { parentPort, workerData } from "node:worker_threads";
import { outcomeOf } from "../threads/answer-on-thread.ts";
import { assessShockTrace } from "./assess-shock-trace.ts";

parentPort?.postMessage(outcomeOf(() => assessShockTrace(workerData as string)));
