/**
 * A ZIP archive whose files are stored, not deflated: every byte has its place before anything is read, so any range can
 * be sent alone, and no file stands in memory as a whole. Written in one form only (no extra fields, no comments, files without
 * gaps), which the verifier asks for. Layout: PKWARE's APPNOTE, sections 4.3.7, 4.3.12 and 4.3.16 (from memory; the tests
 * unpack with Debian's unzip). Times are UTC, so that the bytes depend on no time zone.
 */
import { fault } from "../../faults.ts";
import type { DossierFile } from "./dossier-file.ts";

const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const END_BYTES = 22;
/** Without the extension for larger archives, which no order here comes near. */
const MOST_BYTES = 0xffff_ffff;
const MOST_FILES = 0xffff;
const VERSION_NEEDED = 20;
/** Unix, so that the mode below is read. */
const MADE_BY = 0x031e;
/** A plain file that its owner may write: 0100644. */
const MODE = 0o100644 * 0x1_0000;

interface Part {
	readonly start: number;
	readonly sizeBytes: number;
	readonly read: DossierFile["read"];
}

export interface StoredZip {
	readonly sizeBytes: number;
	readonly parts: readonly Part[];
}

/** @throws too-large from 4 GiB, or 65,535 files */
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
	const end = endRecord(files.length, directory.length, at);
	add(directory.length, (start, stop) => [directory.subarray(start, stop)]);
	add(end.length, (start, stop) => [end.subarray(start, stop)]);
	if (at > MOST_BYTES || files.length >= MOST_FILES) throw fault("too-large");
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

function localHeader(file: DossierFile, time: Date): Buffer {
	const name = Buffer.from(file.path, "ascii");
	const header = Buffer.alloc(LOCAL_BYTES);
	header.writeUInt32LE(0x04034b50, 0);
	writeCommon(header, 4, file, time, name.length);
	return Buffer.concat([header, name]);
}

function centralHeader(file: DossierFile, time: Date, offset: number): Buffer {
	const name = Buffer.from(file.path, "ascii");
	const header = Buffer.alloc(CENTRAL_BYTES);
	header.writeUInt32LE(0x02014b50, 0);
	header.writeUInt16LE(MADE_BY, 4);
	writeCommon(header, 6, file, time, name.length);
	header.writeUInt32LE(MODE, 38);
	header.writeUInt32LE(offset % 0x1_0000_0000, 42);
	return Buffer.concat([header, name]);
}

/** What a local and a central header say alike. */
function writeCommon(header: Buffer, at: number, file: DossierFile, time: Date, nameBytes: number): void {
	const [date, clock] = dosTime(time);
	header.writeUInt16LE(VERSION_NEEDED, at);
	// Flags and method: 0, stored.
	header.writeUInt16LE(clock, at + 6);
	header.writeUInt16LE(date, at + 8);
	header.writeUInt32LE(file.crc32, at + 10);
	header.writeUInt32LE(file.sizeBytes % 0x1_0000_0000, at + 14);
	header.writeUInt32LE(file.sizeBytes % 0x1_0000_0000, at + 18);
	header.writeUInt16LE(nameBytes, at + 22);
}

function endRecord(count: number, directoryBytes: number, directoryAt: number): Buffer {
	const end = Buffer.alloc(END_BYTES);
	end.writeUInt32LE(0x06054b50, 0);
	end.writeUInt16LE(count % 0x1_0000, 8);
	end.writeUInt16LE(count % 0x1_0000, 10);
	end.writeUInt32LE(directoryBytes, 12);
	end.writeUInt32LE(directoryAt % 0x1_0000_0000, 16);
	return end;
}

/** Date and time in the archive's form, two seconds fine, from 1980. */
function dosTime(time: Date): readonly [date: number, clock: number] {
	const years = Math.min(Math.max(time.getUTCFullYear() - 1980, 0), 127);
	return [
		years * 512 + (time.getUTCMonth() + 1) * 32 + time.getUTCDate(),
		time.getUTCHours() * 2048 + time.getUTCMinutes() * 32 + Math.floor(time.getUTCSeconds() / 2),
	];
}
