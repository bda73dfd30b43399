/** Lays reports out on threads: it takes longer than the service may stand still. */
import { fileURLToPath } from "node:url";
import { fault } from "../../faults.ts";
import type { Report } from "../../reports/report.ts";
import { onThread } from "../threads/on-thread.ts";
import { places } from "../threads/places.ts";

// Our choice: the report of an order with five full records, 25 pages, takes about a second.
const LONGEST_MS = 20_000;
const MOST_MEMORY_MB = 512;
/** Beside the one that is written. */
const MOST_WAITING = 7;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(new URL("../../../dist/operations/report/report-worker.js", import.meta.url));

/** @throws too-many, too-large where the time or memory is used up */
export type ReportWriter = (report: Report) => Promise<Buffer>;

export function makeReportWriter(): ReportWriter {
	const inPlace = places(1, MOST_WAITING);
	const limits = { longestMs: LONGEST_MS, mostMemoryMb: MOST_MEMORY_MB };
	return (report) =>
		inPlace(async () => Buffer.from(await onThread<Uint8Array>(WORKER, report, limits, () => fault("too-large"))));
}
