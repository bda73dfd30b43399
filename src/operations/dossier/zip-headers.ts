/**
 * What stands in a ZIP archive beside the content of its files: a header before each, the directory, the end. ZIP64 stands
 * where a number does not fit, and only there, so that a smaller archive is the same with or without it. Layout: PKWARE's
 * APPNOTE 6.3, sections 4.3.7, 4.3.12, 4.3.14 to 4.3.16 and 4.5.3 (from memory; the tests read with Debian's unzip and
 * Python's zipfile). Times are UTC, so that the bytes depend on no time zone.
 */
import type { DossierFile } from "./dossier-file.ts";

const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const END_BYTES = 22;
const FAR_END_BYTES = 56;
const LOCATOR_BYTES = 20;
/** A number that stands elsewhere: in the extra field, or in the ZIP64 record at the end. */
const ELSEWHERE_32 = 0xffff_ffff;
const ELSEWHERE_16 = 0xffff;
/** Sections 4.4.3.2: 2.0, and 4.5 where a header has ZIP64 in it. */
const VERSION = 20;
const VERSION_ZIP64 = 45;
/** Section 4.5.3. */
const ZIP64_FIELD = 0x0001;
/** Unix, so that the mode below is read. */
const MADE_BY = 0x031e;
/** A plain file that its owner may write: 0100644. */
const MODE = 0o100644 * 0x1_0000;

export function localHeader(file: DossierFile, time: Date): Buffer {
	const name = Buffer.from(file.path, "ascii");
	const extra = zip64Field(sizesOf(file));
	const header = Buffer.alloc(LOCAL_BYTES);
	header.writeUInt32LE(0x04034b50, 0);
	writeCommon(header, 4, file, time, { nameBytes: name.length, extraBytes: extra.length });
	return Buffer.concat([header, name, extra]);
}

/** @param offset where the file's own header begins */
export function centralHeader(file: DossierFile, time: Date, offset: number): Buffer {
	const name = Buffer.from(file.path, "ascii");
	const extra = zip64Field([...sizesOf(file), ...(offset < ELSEWHERE_32 ? [] : [offset])]);
	const header = Buffer.alloc(CENTRAL_BYTES);
	header.writeUInt32LE(0x02014b50, 0);
	header.writeUInt16LE(MADE_BY, 4);
	writeCommon(header, 6, file, time, { nameBytes: name.length, extraBytes: extra.length });
	header.writeUInt32LE(MODE, 38);
	header.writeUInt32LE(Math.min(offset, ELSEWHERE_32), 42);
	return Buffer.concat([header, name, extra]);
}

/** The end of the archive, behind the directory. */
export function endRecords(count: number, directoryBytes: number, directoryAt: number): Buffer {
	const end = Buffer.alloc(END_BYTES);
	end.writeUInt32LE(0x06054b50, 0);
	end.writeUInt16LE(Math.min(count, ELSEWHERE_16), 8);
	end.writeUInt16LE(Math.min(count, ELSEWHERE_16), 10);
	end.writeUInt32LE(Math.min(directoryBytes, ELSEWHERE_32), 12);
	end.writeUInt32LE(Math.min(directoryAt, ELSEWHERE_32), 16);
	const fits = count < ELSEWHERE_16 && directoryBytes < ELSEWHERE_32 && directoryAt < ELSEWHERE_32;
	return fits ? end : Buffer.concat([zip64End(count, directoryBytes, directoryAt), end]);
}

/** The ZIP64 record of the end, and what says where it is. */
function zip64End(count: number, directoryBytes: number, directoryAt: number): Buffer {
	const end = Buffer.alloc(FAR_END_BYTES);
	end.writeUInt32LE(0x06064b50, 0);
	// Of what follows.
	end.writeBigUInt64LE(BigInt(FAR_END_BYTES - 12), 4);
	end.writeUInt16LE(MADE_BY, 12);
	end.writeUInt16LE(VERSION_ZIP64, 14);
	end.writeBigUInt64LE(BigInt(count), 24);
	end.writeBigUInt64LE(BigInt(count), 32);
	end.writeBigUInt64LE(BigInt(directoryBytes), 40);
	end.writeBigUInt64LE(BigInt(directoryAt), 48);
	const locator = Buffer.alloc(LOCATOR_BYTES);
	locator.writeUInt32LE(0x07064b50, 0);
	locator.writeBigUInt64LE(BigInt(directoryAt + directoryBytes), 8);
	// Of one disk.
	locator.writeUInt32LE(1, 16);
	return Buffer.concat([end, locator]);
}

/** A file's size, before and after packing, where it does not fit the header. */
function sizesOf({ sizeBytes }: DossierFile): number[] {
	return sizeBytes < ELSEWHERE_32 ? [] : [sizeBytes, sizeBytes];
}

/** The extra field with the numbers that do not fit; nothing where all fit. */
function zip64Field(numbers: readonly number[]): Buffer {
	if (numbers.length === 0) return Buffer.alloc(0);
	const field = Buffer.alloc(4 + 8 * numbers.length);
	field.writeUInt16LE(ZIP64_FIELD, 0);
	field.writeUInt16LE(8 * numbers.length, 2);
	for (const [place, number] of numbers.entries()) field.writeBigUInt64LE(BigInt(number), 4 + 8 * place);
	return field;
}

/** What a local and a central header say alike. */
function writeCommon(
	header: Buffer,
	at: number,
	file: DossierFile,
	time: Date,
	{ nameBytes, extraBytes }: { readonly nameBytes: number; readonly extraBytes: number },
): void {
	const [date, clock] = dosTime(time);
	const size = Math.min(file.sizeBytes, ELSEWHERE_32);
	header.writeUInt16LE(extraBytes === 0 ? VERSION : VERSION_ZIP64, at);
	// Flags and method: 0, stored.
	header.writeUInt16LE(clock, at + 6);
	header.writeUInt16LE(date, at + 8);
	header.writeUInt32LE(file.crc32, at + 10);
	header.writeUInt32LE(size, at + 14);
	header.writeUInt32LE(size, at + 18);
	header.writeUInt16LE(nameBytes, at + 22);
	header.writeUInt16LE(extraBytes, at + 24);
}

/** Date and time in the archive's form, two seconds fine, from 1980. */
function dosTime(time: Date): readonly [date: number, clock: number] {
	const years = Math.min(Math.max(time.getUTCFullYear() - 1980, 0), 127);
	return [
		years * 512 + (time.getUTCMonth() + 1) * 32 + time.getUTCDate(),
		time.getUTCHours() * 2048 + time.getUTCMinutes() * 32 + Math.floor(time.getUTCSeconds() / 2),
	];
}
