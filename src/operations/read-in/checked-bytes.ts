/** A file of a dossier that was verified, read once more. */
import { sha256Hex } from "../../records/canonical.ts";
import type { Bag } from "../../records/verify/dossier/read-bag.ts";
import type { Deps } from "../deps.ts";
import { ReadInRefusal } from "./read-in-refusal.ts";

export type ReadInDeps = Pick<Deps, "database" | "partyKeys" | "erasures" | "exhibitFolder" | "newId" | "randomBytes">;

/** A file's bytes, which must be those that were hashed: the file may have changed since. */
export async function checkedBytes(
	bag: Bag,
	path: string,
	check: (bytes: Uint8Array) => void = () => {},
): Promise<Uint8Array> {
	const file = bag.files.get(path);
	if (file === undefined) throw new ReadInRefusal("order-file", path);
	const bytes = await bag.bytesOf(path);
	if (sha256Hex(bytes) !== file.sha256) throw new ReadInRefusal("bag", path);
	check(bytes);
	return bytes;
}
