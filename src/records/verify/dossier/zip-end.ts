/** Reads the end of a ZIP archive: where its directory lies. ZIP64 must stand there where a number does not fit, and only there. */
import { why } from "../finding.ts";
import { refuse } from "../shape.ts";
import type { ByteSource } from "./byte-source.ts";
import { shortOf16, shortOf32, uint64At, viewOf } from "./zip-numbers.ts";

export interface Directory {
	readonly count: number;
	readonly at: number;
	readonly bytes: number;
}

const END_BYTES = 22;
const ZIP64_END_BYTES = 56;
const LOCATOR_BYTES = 20;
const END = 0x06054b50;
const ZIP64_END = 0x06064b50;
const LOCATOR = 0x07064b50;
const MADE_BY = 0x031e;

/** @throws Unreadable */
export async function readEnd(source: ByteSource): Promise<Directory> {
	const endAt = source.size - END_BYTES;
	if (endAt < 0) refuse("byte 0", why("verify.zip-end"));
	const end = viewOf(await source.read(endAt, END_BYTES));
	const said = { count: end.getUint16(8, true), bytes: end.getUint32(12, true), at: end.getUint32(16, true) };
	const isShort = said.count === 0xffff || said.bytes === 0xffff_ffff || said.at === 0xffff_ffff;
	const directory = isShort ? await readZip64End(source, endAt) : said;
	const isEnd =
		end.getUint32(0, true) === END &&
		// First disk.
		end.getUint32(4, true) === 0 &&
		said.count === shortOf16(directory.count) &&
		end.getUint16(10, true) === said.count &&
		said.bytes === shortOf32(directory.bytes) &&
		said.at === shortOf32(directory.at) &&
		end.getUint16(20, true) === 0 &&
		directory.at + directory.bytes + (isShort ? ZIP64_END_BYTES + LOCATOR_BYTES : 0) === endAt;
	if (!isEnd) refuse(`byte ${endAt}`, why("verify.zip-end"));
	return directory;
}

async function readZip64End(source: ByteSource, endAt: number): Promise<Directory> {
	const at = endAt - LOCATOR_BYTES - ZIP64_END_BYTES;
	if (at < 0) refuse(`byte ${endAt}`, why("verify.zip-end"));
	const bytes = viewOf(await source.read(at, ZIP64_END_BYTES + LOCATOR_BYTES));
	const count = uint64At(bytes, 24);
	const isEnd =
		bytes.getUint32(0, true) === ZIP64_END &&
		uint64At(bytes, 4) === ZIP64_END_BYTES - 12 &&
		bytes.getUint16(12, true) === MADE_BY &&
		bytes.getUint16(14, true) === 45 &&
		// First disk, twice.
		uint64At(bytes, 16) === 0 &&
		uint64At(bytes, 32) === count &&
		bytes.getUint32(ZIP64_END_BYTES, true) === LOCATOR &&
		bytes.getUint32(ZIP64_END_BYTES + 4, true) === 0 &&
		uint64At(bytes, ZIP64_END_BYTES + 8) === at &&
		bytes.getUint32(ZIP64_END_BYTES + 16, true) === 1;
	if (!isEnd) refuse(`byte ${at}`, why("verify.zip-end"));
	return { count, bytes: uint64At(bytes, 40), at: uint64At(bytes, 48) };
}
