/**
 * A ZIP archive whose files are stored, not deflated: every byte has its place before anything is read, so any range can
 * be sent alone, and no file stands in memory as a whole. Written in one form only (no comments, no extra fields but those
 * of ZIP64 where numbers ask for them, files without gaps), which the verifier asks for.
 */
import { fault } from "../../faults.ts";
import type { DossierFile } from "./dossier-file.ts";
import { centralHeader, endRecords, localHeader } from "./zip-headers.ts";

/** The verifier holds the directory in memory, and takes no larger one: about half a million files. Our choice. */
const MOST_DIRECTORY_BYTES = 64 * 1024 * 1024;

interface Part {
	readonly start: number;
	readonly sizeBytes: number;
	readonly read: DossierFile["read"];
}

export interface StoredZip {
	readonly sizeBytes: number;
	readonly parts: readonly Part[];
}

/** @throws too-large where its directory is */
export function storedZip(files: readonly DossierFile[], time: Date): StoredZip {
	const parts: Part[] = [];
	const central: Buffer[] = [];
	let at = 0;
	const add = (sizeBytes: number, read: Part["read"]) => {
		parts.push({ start: at, sizeBytes, read });
		at += sizeBytes;
	};
	for (const file of files) {
		central.push(centralHeader(file, time, at));
		const header = localHeader(file, time);
		add(header.length, (start, end) => [header.subarray(start, end)]);
		add(file.sizeBytes, file.read);
	}
	const directory = Buffer.concat(central);
	if (!(directory.length <= MOST_DIRECTORY_BYTES)) throw fault("too-large");
	const end = endRecords(files.length, directory.length, at);
	add(directory.length, (start, stop) => [directory.subarray(start, stop)]);
	add(end.length, (start, stop) => [end.subarray(start, stop)]);
	return { sizeBytes: at, parts };
}

/** The archive's bytes from `start` up to `end`, which is left out. @throws Error where a file has changed its size */
export async function* zipBytes({ parts }: StoredZip, start: number, end: number): AsyncGenerator<Uint8Array> {
	for (const part of parts) {
		const from = Math.max(start, part.start);
		const to = Math.min(end, part.start + part.sizeBytes);
		if (!(from < to)) continue;
		let left = to - from;
		for await (const bytes of part.read(from - part.start, to - part.start)) {
			left -= bytes.length;
			yield bytes;
		}
		if (left !== 0) throw new Error(`a file of the archive has changed its size by ${left} bytes`);
	}
}
