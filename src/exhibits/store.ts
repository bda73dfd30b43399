/**
 * The exhibit store: files by their SHA-256 in one folder, `ab/abcdef…`; uploads that are not whole yet lie in
 * `.incoming` (incoming.ts). A file is written beside its place, synced,
 * renamed, and its folder synced, so that a name that exists always has its whole content, also after a power cut.
 */
import { createHash, randomUUID } from "node:crypto";
import { access, mkdir, open, readFile, rename, rm, statfs } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type Fault, fault } from "../faults.ts";

/** Stores bytes and gives their SHA-256; bytes that are there already are not written again. */
export async function storeExhibit(folder: string, bytes: Uint8Array): Promise<string> {
	const sha256 = createHash("sha256").update(bytes).digest("hex");
	const place = exhibitPlace(folder, sha256);
	if (await exists(place)) return sha256;
	const temporary = join(folder, `.incoming-${randomUUID()}`);
	try {
		await mkdir(dirname(place), { recursive: true });
		const file = await open(temporary, "wx", 0o600);
		try {
			await file.writeFile(bytes);
			await file.sync();
		} finally {
			await file.close();
		}
		await rename(temporary, place);
		await syncFolder(dirname(place));
		await syncFolder(folder);
		return sha256;
	} catch (error) {
		await rm(temporary, { force: true });
		throw fullOr(error);
	}
}

/** The bytes of a stored file. @throws Error when the store lost it or its bytes changed */
export async function readExhibit(folder: string, sha256: string): Promise<Buffer> {
	const bytes = await readFile(exhibitPlace(folder, sha256));
	if (createHash("sha256").update(bytes).digest("hex") !== sha256)
		throw new Error(`exhibit ${sha256} has changed on disk`);
	return bytes;
}

/** Removes an exhibit; one that is not there is no fault. */
export async function removeExhibit(folder: string, sha256: string): Promise<void> {
	await rm(exhibitPlace(folder, sha256), { force: true });
}

/** Bytes that are free where a folder lies. */
export async function freeBytesOf(folder: string): Promise<number> {
	const { bavail, bsize } = await statfs(folder);
	return bavail * bsize;
}

/** The fault of a disk that is full; any other error as it is. */
export function fullOr(error: unknown): Fault | unknown {
	return ["ENOSPC", "EDQUOT"].includes((error as NodeJS.ErrnoException).code ?? "") ? fault("disk-full") : error;
}

/** Whether the store has a file. */
export async function hasExhibit(folder: string, sha256: string): Promise<boolean> {
	return exists(exhibitPlace(folder, sha256));
}

/** Where the store keeps an exhibit. */
export function exhibitPlace(folder: string, sha256: string): string {
	if (!/^[0-9a-f]{64}$/.test(sha256)) throw new Error("not a SHA-256");
	return join(folder, sha256.slice(0, 2), sha256);
}

async function exists(path: string): Promise<boolean> {
	return access(path).then(
		() => true,
		() => false,
	);
}

/** Puts a folder's names on disk. */
export async function syncFolder(path: string): Promise<void> {
	const folder = await open(path, "r");
	try {
		await folder.sync();
	} finally {
		await folder.close();
	}
}
