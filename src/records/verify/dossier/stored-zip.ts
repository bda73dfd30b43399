/**
 * Reads a ZIP archive in the one form in which dossiers are written: files stored, without gaps, extra fields or comments,
 * each header said twice alike. So a byte of the structure that was changed is found.
 */
import { why } from "../finding.ts";
import { refuse } from "../shape.ts";
import type { ByteSource } from "./byte-source.ts";

export interface StoredFile {
	readonly path: string;
	/** Where its content begins. */
	readonly start: number;
	readonly size: number;
}

const LOCAL_BYTES = 30;
const CENTRAL_BYTES = 46;
const END_BYTES = 22;
const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const MADE_BY = 0x031e;
const MODE = 0o100644 * 0x1_0000;
const LARGEST_DIRECTORY = 16 * 1024 * 1024;
const NAME = /^[A-Za-z0-9_-][A-Za-z0-9._-]*(\/[A-Za-z0-9_-][A-Za-z0-9._-]*)*$/;

/** @throws Unreadable at the first header that is not in its one form */
export async function readStoredZip(source: ByteSource): Promise<StoredFile[]> {
	const { count, directoryAt, directory } = await readDirectory(source);
	const files: StoredFile[] = [];
	const names = new Set<string>();
	let at = 0;
	let place = 0;
	for (let read = 0; read < count; read++) {
		const { path, size, shared, bytes } = readCentral(directory, place, directoryAt, at);
		if (names.has(path)) refuse(`byte ${directoryAt + place}`, why("verify.zip-name"), undefined, path);
		names.add(path);
		const start = at + LOCAL_BYTES + path.length;
		if (start + size > directoryAt) refuse(`byte ${directoryAt + place}`, why("verify.zip-header"));
		checkLocal(await source.read(at, LOCAL_BYTES + path.length), shared, path, at);
		files.push({ path, start, size });
		at = start + size;
		place += bytes;
	}
	if (place !== directory.length || at !== directoryAt) refuse(`byte ${at}`, why("verify.zip-end"));
	return files;
}

async function readDirectory(source: ByteSource) {
	const endAt = source.size - END_BYTES;
	if (endAt < 0) refuse("byte 0", why("verify.zip-end"));
	const end = viewOf(await source.read(endAt, END_BYTES));
	const count = end.getUint16(8, true);
	const bytes = end.getUint32(12, true);
	const directoryAt = end.getUint32(16, true);
	const isEnd =
		end.getUint32(0, true) === END &&
		end.getUint32(4, true) === 0 &&
		end.getUint16(10, true) === count &&
		end.getUint16(20, true) === 0 &&
		directoryAt + bytes === endAt;
	if (!isEnd || bytes > LARGEST_DIRECTORY) refuse(`byte ${endAt}`, why("verify.zip-end"));
	return { count, directoryAt, directory: await source.read(directoryAt, bytes) };
}

/** One header of the directory; `shared` is what the file's own header must say alike. */
function readCentral(directory: Uint8Array, place: number, directoryAt: number, expectedAt: number) {
	const where = `byte ${directoryAt + place}`;
	if (place + CENTRAL_BYTES > directory.length) refuse(where, why("verify.zip-end"));
	const header = viewOf(directory.subarray(place, place + CENTRAL_BYTES));
	const size = header.getUint32(24, true);
	const nameBytes = header.getUint16(28, true);
	const isInForm =
		header.getUint32(0, true) === CENTRAL &&
		header.getUint16(4, true) === MADE_BY &&
		header.getUint16(6, true) === 20 &&
		// Flags and method.
		header.getUint32(8, true) === 0 &&
		header.getUint32(20, true) === size &&
		// No extra field, no comment, first disk, no inner attributes.
		header.getUint32(30, true) === 0 &&
		header.getUint32(34, true) === 0 &&
		header.getUint32(38, true) === MODE &&
		header.getUint32(42, true) === expectedAt;
	if (!isInForm) refuse(where, why("verify.zip-header"));
	const path = String.fromCharCode(...directory.subarray(place + CENTRAL_BYTES, place + CENTRAL_BYTES + nameBytes));
	if (path.length !== nameBytes || nameBytes > 500 || !NAME.test(path)) {
		refuse(where, why("verify.zip-name"), undefined, path.slice(0, 100));
	}
	const shared = directory.subarray(place + 6, place + 32);
	return { path, size, shared, bytes: CENTRAL_BYTES + nameBytes };
}

function checkLocal(header: Uint8Array, shared: Uint8Array, path: string, at: number): void {
	const isSame =
		viewOf(header).getUint32(0, true) === LOCAL &&
		shared.every((byte, index) => header[4 + index] === byte) &&
		path === String.fromCharCode(...header.subarray(LOCAL_BYTES));
	if (!isSame) refuse(`byte ${at}`, why("verify.zip-header"), undefined, path);
}

function viewOf(bytes: Uint8Array): DataView {
	return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
