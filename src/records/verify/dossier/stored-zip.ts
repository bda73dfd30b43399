/**
 * Reads a ZIP archive in the one form in which dossiers are written: files stored, without gaps or comments, without extra
 * fields but ZIP64's where a number does not fit, each header said twice alike. So a byte of the structure that was changed
 * is found.
 */
import { why } from "../finding.ts";
import { refuse } from "../shape.ts";
import type { ByteSource } from "./byte-source.ts";
import { readEnd } from "./zip-end.ts";
import { shortOf32, uint64At, viewOf } from "./zip-numbers.ts";

export interface StoredFile {
	readonly path: string;
	/** Where its content begins. */
	readonly start: number;
	readonly size: number;
}

const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const MADE_BY = 0x031e;
const MODE = 0o100644 * 0x1_0000;
const LARGEST_DIRECTORY = 64 * 1024 * 1024;
const NAME = /^[A-Za-z0-9_-][A-Za-z0-9._-]*(\/[A-Za-z0-9_-][A-Za-z0-9._-]*)*$/;

/** @throws Unreadable at the first header that is not in its one form */
export async function readStoredZip(source: ByteSource): Promise<StoredFile[]> {
	const { count, at: directoryAt, bytes } = await readEnd(source);
	if (bytes > LARGEST_DIRECTORY) refuse(`byte ${directoryAt}`, why("verify.zip-end"));
	const directory = await source.read(directoryAt, bytes);
	const files: StoredFile[] = [];
	const names = new Set<string>();
	let at = 0;
	let place = 0;
	for (let read = 0; read < count; read++) {
		const where = `byte ${directoryAt + place}`;
		const { path, size, local, bytes } = readCentral(directory, place, where, at);
		if (names.has(path)) refuse(where, why("verify.zip-name"), undefined, path);
		names.add(path);
		const start = at + local.length;
		if (!(start + size <= directoryAt)) refuse(where, why("verify.zip-header"));
		const header = await source.read(at, local.length);
		if (!local.every((byte, index) => header[index] === byte)) {
			refuse(`byte ${at}`, why("verify.zip-header"), undefined, path);
		}
		files.push({ path, start, size });
		at = start + size;
		place += bytes;
	}
	if (place !== directory.length || at !== directoryAt) refuse(`byte ${at}`, why("verify.zip-end"));
	return files;
}

/** One header of the directory; `local` is what the file's own header must be. */
function readCentral(directory: Uint8Array, place: number, where: string, expectedAt: number) {
	if (place + CENTRAL_BYTES > directory.length) refuse(where, why("verify.zip-end"));
	const header = viewOf(directory.subarray(place, place + CENTRAL_BYTES));
	const nameBytes = header.getUint16(28, true);
	const extraBytes = header.getUint16(30, true);
	const extraAt = place + CENTRAL_BYTES + nameBytes;
	const bytes = CENTRAL_BYTES + nameBytes + extraBytes;
	if (place + bytes > directory.length) refuse(where, why("verify.zip-end"));
	const extra = directory.subarray(extraAt, extraAt + extraBytes);
	const said = header.getUint32(24, true);
	const size = said === 0xffff_ffff && extraBytes >= 12 ? uint64At(viewOf(extra), 4) : said;
	const own = size < 0xffff_ffff ? [] : [size, size];
	const expected = zip64Field(expectedAt < 0xffff_ffff ? own : [...own, expectedAt]);
	const isInForm =
		header.getUint32(0, true) === CENTRAL &&
		header.getUint16(4, true) === MADE_BY &&
		header.getUint16(6, true) === versionFor(expected) &&
		// Flags and method.
		header.getUint32(8, true) === 0 &&
		said === shortOf32(size) &&
		header.getUint32(20, true) === said &&
		isSame(extra, expected) &&
		// No comment, first disk, no inner attributes.
		header.getUint16(32, true) === 0 &&
		header.getUint32(34, true) === 0 &&
		header.getUint32(38, true) === MODE &&
		header.getUint32(42, true) === shortOf32(expectedAt);
	if (!isInForm) refuse(where, why("verify.zip-header"));
	const name = directory.subarray(place + CENTRAL_BYTES, extraAt);
	const path = String.fromCharCode(...name);
	if (nameBytes > 500 || !NAME.test(path)) refuse(where, why("verify.zip-name"), undefined, path.slice(0, 100));
	return { path, size, bytes, local: localHeader(directory.subarray(place + 8, place + 30), name, zip64Field(own)) };
}

/** @param shared what both headers say alike: flags, method, time, CRC-32, sizes, length of the name */
function localHeader(shared: Uint8Array, name: Uint8Array, extra: Uint8Array): Uint8Array {
	const header = new Uint8Array(LOCAL_BYTES + name.length + extra.length);
	const view = viewOf(header);
	view.setUint32(0, LOCAL, true);
	view.setUint16(4, versionFor(extra), true);
	header.set(shared, 6);
	view.setUint16(28, extra.length, true);
	header.set(name, LOCAL_BYTES);
	header.set(extra, LOCAL_BYTES + name.length);
	return header;
}

/** The extra field of the numbers that do not fit; of none, none. */
function zip64Field(numbers: readonly number[]): Uint8Array {
	const field = new Uint8Array(numbers.length === 0 ? 0 : 4 + 8 * numbers.length);
	if (numbers.some((number) => !Number.isSafeInteger(number))) return field;
	const view = viewOf(field);
	for (const [place, number] of numbers.entries()) {
		view.setUint16(0, 1, true);
		view.setUint16(2, 8 * numbers.length, true);
		view.setBigUint64(4 + 8 * place, BigInt(number), true);
	}
	return field;
}

function versionFor(extra: Uint8Array): number {
	return extra.length === 0 ? 20 : 45;
}

function isSame(one: Uint8Array, other: Uint8Array): boolean {
	return one.length === other.length && one.every((byte, index) => other[index] === byte);
}
