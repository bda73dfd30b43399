/** The content of exhibits between the caller's bytes and the encrypted file in the store. */
import { crc32 } from "node:zlib";
import { exhibitPlaceOf, storedExhibit } from "../../database/records.ts";
import { readSealed, readSealedKey, type SealedFile, sealWhole } from "../../exhibits/sealed-file.ts";
import { FILE_KEY_BYTES } from "../../exhibits/segments.ts";
import { exhibitPlace, readExhibit, storeExhibit } from "../../exhibits/store.ts";
import { fault } from "../../faults.ts";
import { sha256Hex } from "../../records/canonical.ts";
import type { Deps } from "../deps.ts";

/** Which content of whom, and where its file lies. */
export interface StoredFile {
	readonly sha256: string;
	readonly party_id: string;
	/** Null once the party is erased. */
	readonly stored_sha256: string | null;
	readonly size_bytes: number;
}

/** The content of a file: either in segments, or small and whole as it was stored before. */
export type StoredContent = { readonly file: SealedFile } | { readonly bytes: Buffer };

/** Stores content that is at hand under its party's key, where the party does not have it already. */
export async function storeContent(
	deps: Deps,
	partyId: string,
	bytes: Uint8Array,
): Promise<{ readonly sha256: string; readonly stored_sha256: string; readonly crc32: number }> {
	const sha256 = sha256Hex(bytes);
	const stored = await storedExhibit(deps.database, sha256, partyId);
	if (stored !== null) return { sha256, stored_sha256: stored, crc32: crc32(bytes) };
	const key = deps.randomBytes(FILE_KEY_BYTES);
	const sealedKey = deps.database.vault.of(partyId).sealBytes(exhibitPlaceOf(sha256), key);
	const sealed = sealWhole(bytes, key, sealedKey, deps.randomBytes);
	return { sha256, stored_sha256: await storeExhibit(deps.exhibitFolder, sealed), crc32: crc32(bytes) };
}

/** @throws erased; Error where the store lost the file or it has changed on disk */
export async function openContent(deps: Deps, stored: StoredFile): Promise<StoredContent> {
	if (stored.stored_sha256 === null) throw fault("erased");
	const party = deps.database.vault.of(stored.party_id);
	const path = exhibitPlace(deps.exhibitFolder, stored.stored_sha256);
	const sealedKey = await readSealedKey(path, stored.size_bytes);
	if (sealedKey !== null) {
		const key = party.openBytes(exhibitPlaceOf(stored.sha256), sealedKey);
		return { file: { path, key, sizeBytes: stored.size_bytes } };
	}
	const sealed = await readExhibit(deps.exhibitFolder, stored.stored_sha256);
	return { bytes: party.openBytes(exhibitPlaceOf(stored.sha256), sealed) };
}

/** The content from `start` up to `end`, which is left out; in pieces, so that a large file does not stand in memory. */
export async function* contentBytes(
	deps: Deps,
	stored: StoredFile,
	start = 0,
	end = stored.size_bytes,
): AsyncGenerator<Buffer> {
	const content = await openContent(deps, stored);
	if ("file" in content) yield* readSealed(content.file, start, end);
	else yield content.bytes.subarray(start, end);
}

/** All of it, for files that are known to be small. */
export async function wholeContent(deps: Deps, stored: StoredFile, end = stored.size_bytes): Promise<Buffer> {
	const pieces: Buffer[] = [];
	for await (const piece of contentBytes(deps, stored, 0, end)) pieces.push(piece);
	return Buffer.concat(pieces);
}
