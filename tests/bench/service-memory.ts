/** What a running service takes of the memory, by Linux's own count. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import type { ServiceProcess } from "../../src/start/demo/service-process.ts";

/** The most that the process has held. */
export function peakMib({ pid }: ServiceProcess): number {
	const [, kib = "0"] = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8")) ?? [];
	return Math.round(Number(kib) / 1024);
}

/** Makes Linux count anew. */
export function resetPeak({ pid }: ServiceProcess): void {
	spawnSync("sh", ["-c", `echo 5 > /proc/${pid}/clear_refs`]);
}
