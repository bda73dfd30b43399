/** Copies of pictures in the exhibit store, under the key of the order's owner. */
import { crc32 } from "node:zlib";
import {
	type DerivativeKind,
	type DerivativeRow,
	derivativePlaceOf,
	insertDerivative,
	type PictureUse,
} from "../../database/pictures.ts";
import { readExhibit, removeExhibit, storeExhibit } from "../../exhibits/store.ts";
import { fault } from "../../faults.ts";
import { sha256Hex } from "../../records/canonical.ts";
import type { Deps } from "../deps.ts";

/** @throws erased */
export async function copyBytes(
	deps: Deps,
	{ sha256, party_id, stored_sha256 }: Pick<DerivativeRow, "sha256" | "party_id" | "stored_sha256">,
): Promise<Buffer> {
	if (stored_sha256 === null) throw fault("erased");
	const stored = await readExhibit(deps.exhibitFolder, stored_sha256);
	return deps.database.vault.of(party_id).openBytes(derivativePlaceOf(sha256), stored);
}

/** Keeps a copy that was made of a file; gives its SHA-256. @throws erased */
export async function keepCopy(
	deps: Deps,
	{ sha256, party_id, order_id }: Pick<PictureUse, "sha256" | "party_id" | "order_id">,
	copy: { readonly kind: DerivativeKind; readonly ofSha256: string; readonly bytes: Uint8Array },
): Promise<string> {
	const own = sha256Hex(copy.bytes);
	const sealed = deps.database.vault.of(party_id).sealBytes(derivativePlaceOf(own), copy.bytes);
	const stored = await storeExhibit(deps.exhibitFolder, sealed);
	const isNew = await deps.database
		.transaction((transaction) =>
			insertDerivative(transaction, order_id, {
				original_sha256: sha256,
				party_id,
				kind: copy.kind,
				of_sha256: copy.ofSha256,
				sha256: own,
				stored_sha256: stored,
				size_bytes: copy.bytes.length,
				crc32: crc32(copy.bytes),
			}),
		)
		.catch(async (error) => {
			await removeExhibit(deps.exhibitFolder, stored);
			throw error;
		});
	// Sealed anew each time, so that the same copy made twice is two files.
	if (!isNew) await removeExhibit(deps.exhibitFolder, stored);
	return own;
}
