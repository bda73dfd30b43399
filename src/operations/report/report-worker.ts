/** Lays one report out on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import type { Report } from "../../reports/report.ts";
import { writeReport } from "../../reports/write-report.ts";

parentPort?.postMessage(await writeReport(workerData as Report));
