/** Reads recorders' files: each on a thread of its own, few at once, within a time and a memory. */
import { fileURLToPath } from "node:url";
import type { Sentence } from "../../calculations/judged.ts";
import type { RecordingReading } from "../../contract/transit-recordings.ts";
import { readSealedSync } from "../../exhibits/sealed-file.ts";
import { fault } from "../../faults.ts";
import { ImportRefusal } from "../../importers/import-result.ts";
import type { Separator } from "../../importers/table-separator.ts";
import type { StoredContent } from "../exhibits/stored-content.ts";
import { onThread } from "../threads/on-thread.ts";
import { places } from "../threads/places.ts";
import { type ReadRecording, readRecording } from "./read-recording.ts";
import { refusedFile } from "./refused-file.ts";

export interface RecordingTask {
	/** At hand, or in the store, from where the thread reads it piece by piece. */
	readonly content: StoredContent | { readonly bytes: Uint8Array };
	readonly separator: Separator;
	readonly reading: RecordingReading;
}
export type RecordingAnswer =
	| { readonly read: ReadRecording }
	| { readonly refusal: { readonly line: number | null; readonly reason: Sentence } };

/** Our choice: 20 MiB take about two seconds, and a busy machine may take ten times as long. */
const LEAST_MS = 60_000;
const MS_PER_MIB = 1000;
const MOST_MEMORY_MB = 256;
/** Larger files are read while their reader does something else. Source: our choice. */
export const LONG_BYTES = 20 * 1024 * 1024;
const TOLD_EVERY_BYTES = 4 * 1024 * 1024;
/** Read in some 20 ms. */
const SMALL_BYTES = 64 * 1024;
const PIECE_BYTES = 64 * 1024;

/** As built: a thread loads no TypeScript. */
const WORKER = fileURLToPath(
	new URL("../../../dist/operations/transit-recordings/recording-worker.js", import.meta.url),
);

const inPlace = places(1, 8);
/** Long files wait for each other, and hold up no short one. */
const inLongPlace = places(1, 8);

/** A small file at once, a large one on a thread. @throws bad-input with line and reason; too-many; too-large where the time or the memory is used up */
export async function readRecorderFile(
	content: RecordingTask["content"],
	{ separator }: { readonly separator: Separator },
	reading: RecordingReading,
	/** Told how many bytes were read. */
	told: (bytesRead: number) => void = () => {},
): Promise<ReadRecording> {
	const task = { content, separator, reading };
	const sizeBytes = "bytes" in content ? content.bytes.length : content.file.sizeBytes;
	const limits = {
		longestMs: LEAST_MS + (sizeBytes / (1024 * 1024)) * MS_PER_MIB,
		mostMemoryMb: MOST_MEMORY_MB,
	};
	const onOwnThread = () => onThread<RecordingAnswer>(WORKER, task, limits, () => fault("too-large"), told);
	const answer =
		sizeBytes <= SMALL_BYTES ? answerTo(task) : await (sizeBytes > LONG_BYTES ? inLongPlace : inPlace)(onOwnThread);
	if ("read" in answer) return answer.read;
	throw refusedFile(answer.refusal.line, answer.refusal.reason);
}

export function answerTo(
	{ content, separator, reading }: RecordingTask,
	told: (bytesRead: number) => void = () => {},
): RecordingAnswer {
	const pieces = "bytes" in content ? inPieces(content.bytes) : readSealedSync(content.file);
	try {
		return { read: readRecording(counted(pieces, told), separator, reading) };
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
		// What a thread posts loses its class.
		const { line, reason } = error;
		return { refusal: { line, reason } };
	}
}

function* counted(pieces: Iterable<Uint8Array>, told: (bytesRead: number) => void): Generator<Uint8Array> {
	let [bytesRead, saidAt] = [0, 0];
	for (const piece of pieces) {
		yield piece;
		bytesRead += piece.length;
		if (bytesRead - saidAt < TOLD_EVERY_BYTES) continue;
		saidAt = bytesRead;
		told(bytesRead);
	}
}

function* inPieces(bytes: Uint8Array): Generator<Uint8Array> {
	for (let at = 0; at < bytes.length; at += PIECE_BYTES) yield bytes.subarray(at, at + PIECE_BYTES);
}
