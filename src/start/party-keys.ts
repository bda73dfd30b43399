/**
 * The keys of parties: one file each, `<party id>.key`, 32 random bytes, in the key folder. They are files and not rows,
 * since a deleted row stays in the database's files for a while, and a key that can be found again erases nothing. Each is
 * read when it is needed and never kept, so that a key that another instance deletes is gone for this one too.
 */
import { readFileSync } from "node:fs";
import { mkdir, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import type { KeyOf } from "../database/vault.ts";
import type { PartyKeys } from "../operations/deps.ts";
import { syncFolder, writeDurably } from "./key-files.ts";

const KEY_BYTES = 32;

export function makePartyKeys(
	folder: string,
	randomBytes: (count: number) => Buffer,
): PartyKeys & { readonly keyOf: KeyOf } {
	const pathOf = (partyId: string) => {
		if (!/^pty_[0-9a-z]{20}$/.test(partyId)) throw new Error(`${partyId} is no id of a party`);
		return join(folder, `${partyId}.key`);
	};
	return {
		async make(partyId) {
			await mkdir(folder, { recursive: true, mode: 0o700 });
			await writeDurably(pathOf(partyId), randomBytes(KEY_BYTES));
		},
		async destroy(partyId) {
			await rm(pathOf(partyId), { force: true });
			await syncFolder(folder);
		},
		async requireAll(partyIds) {
			const there = new Set(await readdir(folder).catch(() => [] as string[]));
			const missing = partyIds.find((id) => !there.has(`${id}.key`));
			if (missing === undefined) return;
			throw new Error(
				`the key of a party is missing: put ${pathOf(missing)} back from your copy of the key folder, or set KEY_DIR to where it is`,
			);
		},
		keyOf(partyId) {
			try {
				return readFileSync(pathOf(partyId));
			} catch (error) {
				if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
				throw error;
			}
		},
	};
}
