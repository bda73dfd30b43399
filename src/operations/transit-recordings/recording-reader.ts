/** Reads recorders' files: each on a thread of its own, few at once, within a time and a memory. */
import { fileURLToPath } from "node:url";
import type { Sentence } from "../../calculations/judged.ts";
import type { RecordingReading } from "../../contract/transit-recordings.ts";
import { fault } from "../../faults.ts";
import { ImportRefusal } from "../../importers/import-result.ts";
import type { Separator } from "../../importers/table-separator.ts";
import { onThread } from "../threads/on-thread.ts";
import { places } from "../threads/places.ts";
import { type ReadRecording, readRecording } from "./read-recording.ts";
import { refusedFile } from "./refused-file.ts";

export interface RecordingTask {
	readonly bytes: Uint8Array;
	readonly separator: Separator;
	readonly reading: RecordingReading;
}
export type RecordingAnswer =
	| { readonly read: ReadRecording }
	| { readonly refusal: { readonly line: number | null; readonly reason: Sentence } };

// Our choice: 20 MiB take about two seconds.
const LIMITS = { longestMs: 60_000, mostMemoryMb: 256 };
/** Read in some 20 ms. */
const SMALL_BYTES = 64 * 1024;
const PIECE_BYTES = 64 * 1024;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(
	new URL("../../../dist/operations/transit-recordings/recording-worker.js", import.meta.url),
);

const inPlace = places(1, 8);

/** A small file at once, a large one on a thread. @throws bad-input with line and reason; too-many; too-large where the time or the memory is used up */
export async function readRecorderFile(
	bytes: Uint8Array,
	{ separator }: { readonly separator: Separator },
	reading: RecordingReading,
): Promise<ReadRecording> {
	const task = { bytes, separator, reading };
	const answer =
		bytes.length <= SMALL_BYTES
			? answerTo(task)
			: await inPlace(() => onThread<RecordingAnswer>(WORKER, task, LIMITS, () => fault("too-large")));
	if ("read" in answer) return answer.read;
	throw refusedFile(answer.refusal.line, answer.refusal.reason);
}

export function answerTo({ bytes, separator, reading }: RecordingTask): RecordingAnswer {
	try {
		return { read: readRecording(inPieces(bytes), separator, reading) };
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
		// What a thread posts loses its class.
		const { line, reason } = error;
		return { refusal: { line, reason } };
	}
}

function* inPieces(bytes: Uint8Array): Generator<Uint8Array> {
	for (let at = 0; at < bytes.length; at += PIECE_BYTES) yield bytes.subarray(at, at + PIECE_BYTES);
}
