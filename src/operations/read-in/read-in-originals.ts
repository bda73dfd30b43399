/** Originals that a dossier holds, of any size: sealed in segments as they are read, like an upload. */
import { exhibitPlaceOf } from "../../database/records.ts";
import { completeIncoming, openIncoming, placeIncoming, removeIncoming } from "../../exhibits/incoming.ts";
import { FILE_KEY_BYTES } from "../../exhibits/segments.ts";
import { removeExhibit } from "../../exhibits/store.ts";
import type { Bag } from "../../records/verify/dossier/read-bag.ts";
import { uploadLockName } from "../uploads/upload-lock.ts";
import type { ReadInDeps } from "./checked-bytes.ts";
import { ReadInRefusal } from "./read-in-refusal.ts";

export interface StoredOriginal {
	/** Under which the store has it, under a key of its own and so from nobody else. */
	readonly name: string;
	readonly crc32: number;
}

interface FileOfBag {
	readonly path: string;
	readonly sha256: string;
	readonly size: number;
}

const SLICE_BYTES = 4 * 1024 * 1024;

/** By SHA-256, of those that statements name. */
export async function storedOriginals(
	deps: ReadInDeps,
	bag: Bag,
	ownerId: string,
	wanted: ReadonlySet<string>,
	undo: (() => Promise<void>)[],
): Promise<ReadonlyMap<string, StoredOriginal>> {
	const stored = new Map<string, StoredOriginal>();
	for (const [path, { sha256, size }] of bag.files) {
		if (!path.startsWith("data/exhibits/") || !wanted.has(sha256) || stored.has(sha256)) continue;
		stored.set(sha256, await storedOriginal(deps, bag, ownerId, { path, sha256, size }, undo));
	}
	return stored;
}

/** @throws ReadInRefusal where the file has changed since it was verified */
async function storedOriginal(
	deps: ReadInDeps,
	bag: Bag,
	ownerId: string,
	file: FileOfBag,
	undo: (() => Promise<void>)[],
): Promise<StoredOriginal> {
	const id = deps.newId("upl");
	// No row knows the file yet: without the lock the tidying of uploads would take it away.
	const letGo = await deps.database.hold(uploadLockName(id), () => {});
	if (letGo === null) throw new Error(`someone works on ${id}, which is new`);
	try {
		return await storeAs(id, deps, bag, ownerId, file, undo);
	} finally {
		await letGo();
	}
}

async function storeAs(
	id: string,
	{ database, exhibitFolder, randomBytes }: ReadInDeps,
	bag: Bag,
	ownerId: string,
	{ path, sha256, size }: FileOfBag,
	undo: (() => Promise<void>)[],
): Promise<StoredOriginal> {
	const file = { key: randomBytes(FILE_KEY_BYTES), sizeBytes: size };
	undo.push(() => removeIncoming(exhibitFolder, id));
	const nothing = { offsetBytes: 0, tail: new Uint8Array() };
	const incoming = await openIncoming(exhibitFolder, id, file, nothing, randomBytes);
	try {
		for (let at = 0; at < size; at += SLICE_BYTES) {
			await incoming.take(await bag.read(path, at, Math.min(SLICE_BYTES, size - at)));
		}
		await incoming.sync();
	} finally {
		await incoming.close();
	}
	const sealKey = (found: string) => database.vault.of(ownerId).sealBytes(exhibitPlaceOf(found), file.key);
	const facts = await completeIncoming(exhibitFolder, id, file, () => {}, sealKey);
	if (facts.sha256 !== sha256) throw new ReadInRefusal("bag", path);
	undo.push(() => removeExhibit(exhibitFolder, facts.storedSha256));
	await placeIncoming(exhibitFolder, id, facts.storedSha256);
	return { name: facts.storedSha256, crc32: facts.crc32 };
}
