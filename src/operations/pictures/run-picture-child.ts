/** Runs the picture child: few at once, within a time, a memory and nothing else of ours; killed where it goes beyond. */
import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { places } from "../threads/places.ts";
import { type PictureAnswer, type PictureTask, unframed } from "./picture-task.ts";

/** Our choice: 120 million pixels take some 5 s. */
const LONGEST_MS = 30_000;
const MOST_CPU_S = 20;
/** Of addresses, of which Node takes some 1.3 GB that it never fills. */
const MOST_ADDRESSES_KIB = 2_500_000;
const MOST_HEAP_MB = 256;
const MOST_ANSWER_BYTES = 128 * 1024 * 1024;
/** Beside the two that run. */
const MOST_WAITING = 200;

const inPlace = places(2, MOST_WAITING);

/** As built: a child loads no TypeScript. */
const CHILD = fileURLToPath(new URL("../../../dist/operations/pictures/picture-child.js", import.meta.url));

/**
 * Addresses, processor time, no files written, no dump of a crash. A shell sets them, since Node cannot; where a system
 * knows one of them not, the others and the time still hold.
 */
const WITH_LIMITS =
	'ulimit -v "$1" 2>/dev/null; ulimit -t "$2" 2>/dev/null; ulimit -f 0; ulimit -c 0; shift 2; exec "$@"';

const TOO_MUCH: PictureAnswer = { size: null, refusal: "too-much-work", claimed: null, parts: [] };

/** @throws too-many; Error where the child cannot be started at all */
export function runPictureChild(task: PictureTask, bytes: Uint8Array): Promise<PictureAnswer> {
	return inPlace(() => run(task, bytes));
}

async function run(task: PictureTask, bytes: Uint8Array): Promise<PictureAnswer> {
	const limits = [String(MOST_ADDRESSES_KIB), String(MOST_CPU_S)];
	const program = [process.execPath, `--max-old-space-size=${MOST_HEAP_MB}`, CHILD, JSON.stringify(task)];
	const child = spawn("/bin/sh", ["-c", WITH_LIMITS, "sh", ...limits, ...program], {
		cwd: "/",
		// Nothing of the service's settings. Fewer arenas, so that addresses are not spent on threads.
		env: { MALLOC_ARENA_MAX: "2" },
		stdio: ["pipe", "pipe", "pipe"],
	});
	const answer: Buffer[] = [];
	let answerBytes = 0;
	let said = "";
	child.stdout.on("data", (chunk: Buffer) => {
		answerBytes += chunk.length;
		if (answerBytes > MOST_ANSWER_BYTES) child.kill("SIGKILL");
		else answer.push(chunk);
	});
	child.stderr.on("data", (chunk: Buffer) => {
		said = (said + chunk.toString("utf8")).slice(0, 1000);
	});
	// It may end before it has read everything.
	child.stdin.on("error", () => {});
	child.stdin.end(bytes);
	const timer = setTimeout(() => child.kill("SIGKILL"), LONGEST_MS);
	try {
		const { code, signal } = await new Promise<{ code: number | null; signal: string | null }>((resolve, reject) => {
			child.once("error", reject);
			child.once("close", (code, signal) => resolve({ code, signal }));
		});
		const whole = code === 0 ? unframed(Buffer.concat(answer)) : null;
		if (whole !== null) return whole;
		// Ended by a limit, or by a crash in a decoder.
		if (signal !== null) return TOO_MUCH;
		throw new Error(`the picture child ended with ${code}: ${said}`);
	} finally {
		clearTimeout(timer);
	}
}
