/** Reads a dossier's bag (BagIt 1.0, RFC 8493): which files stand in it, each with the hash that its bytes have. */
import { why } from "../finding.ts";
import { runningHash } from "../hashes.ts";
import { refuse } from "../shape.ts";
import type { ByteSource } from "./byte-source.ts";
import { readStoredZip, type StoredFile } from "./stored-zip.ts";

export interface Bag {
	/** By path from the bag's base folder. */
	readonly files: ReadonlyMap<string, HashedEntry>;
	/** The bytes of a small file. @throws Unreadable where it is not there, or too large to be one */
	readonly bytesOf: (path: string) => Promise<Uint8Array>;
	/** A part of a file, of any size. */
	readonly read: (path: string, start: number, length: number) => Promise<Uint8Array>;
}

interface HashedEntry extends StoredFile {
	readonly sha256: string;
}

const SLICE_BYTES = 4 * 1024 * 1024;
const LARGEST_READ = 64 * 1024 * 1024;
const MANIFEST = "manifest-sha256.txt";
const TAG_MANIFEST = "tagmanifest-sha256.txt";
const TAG_FILES = ["VERIFY.txt", "bag-info.txt", "bagit.txt", MANIFEST];
const DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/** @param tell told how much is read, 0 to 100 @throws Unreadable */
export async function readBag(source: ByteSource, tell: (percent: number) => void): Promise<Bag> {
	const stored = await readStoredZip(source);
	const [folder = ""] = stored[0]?.path.split("/") ?? [];
	const files = new Map<string, HashedEntry>();
	for (const file of stored) {
		if (!file.path.startsWith(`${folder}/`)) refuse(file.path, why("verify.bag-name"));
		const path = file.path.slice(folder.length + 1);
		if (!path.startsWith("data/") && path !== TAG_MANIFEST && !TAG_FILES.includes(path)) {
			refuse(path, why("verify.bag-name"));
		}
		const readTo = (place: number) => tell(Math.min(100, Math.round((100 * place) / source.size)));
		files.set(path, { ...file, path, sha256: await hashOf(source, file, readTo) });
	}
	const bytesOf = async (path: string) => {
		const file = files.get(path);
		if (file === undefined) refuse(path, why("verify.bag-missing"));
		if (file.size > LARGEST_READ) refuse(path, why("verify.zip-large"));
		return source.read(file.start, file.size);
	};
	const textOf = async (path: string) => new TextDecoder().decode(await bytesOf(path));
	if ((await textOf("bagit.txt")) !== DECLARATION) refuse("bagit.txt", why("verify.bag-name"));
	const payload = [...files.keys()].filter((path) => path.startsWith("data/"));
	checkManifest(MANIFEST, await textOf(MANIFEST), payload, files);
	checkManifest(TAG_MANIFEST, await textOf(TAG_MANIFEST), TAG_FILES, files);
	const read = async (path: string, start: number, length: number) => {
		const file = files.get(path);
		if (file === undefined || start + length > file.size) refuse(path, why("verify.bag-missing"));
		return source.read(file.start + start, length);
	};
	return { files, bytesOf, read };
}

/** @param readTo told after each slice up to where the archive was read */
async function hashOf(
	source: ByteSource,
	{ start, size }: StoredFile,
	readTo: (place: number) => void,
): Promise<string> {
	const hash = runningHash();
	for (let at = 0; at < size; at += SLICE_BYTES) {
		const slice = await source.read(start + at, Math.min(SLICE_BYTES, size - at));
		hash.update(slice);
		readTo(start + at + slice.length);
	}
	return hash.hex();
}

/** A manifest lists these files, each once and no other, with the hashes that they have. */
function checkManifest(
	name: string,
	text: string,
	expected: readonly string[],
	files: ReadonlyMap<string, HashedEntry>,
): void {
	const asked = new Set(expected);
	if (!text.endsWith("\n")) refuse(name, why("verify.bag-line", { line: text.split("\n").length }));
	const listed = new Set<string>();
	for (const [index, line] of text.slice(0, -1).split("\n").entries()) {
		const [, sha256 = "", path = ""] = /^([0-9a-f]{64}) {2}(\S+)$/.exec(line) ?? [];
		if (path === "" || listed.has(path)) refuse(name, why("verify.bag-line", { line: index + 1 }));
		const file = files.get(path);
		if (file === undefined || !asked.has(path)) refuse(path, why("verify.bag-missing"));
		if (file.sha256 !== sha256) refuse(path, why("verify.bag-hash"), sha256, file.sha256);
		listed.add(path);
	}
	const unlisted = expected.find((path) => !listed.has(path));
	if (unlisted !== undefined) refuse(unlisted, why("verify.bag-unlisted"));
}
