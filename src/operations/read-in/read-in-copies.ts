/**
 * Copies that a dossier holds in the place of originals: each under the SHA-256 of the original, which a statement names, with
 * who has it. The verifier has compared the list with the files and with what was sealed.
 */
import { crc32 } from "node:zlib";
import type { Queryable } from "../../database/connection.ts";
import { derivativePlaceOf, insertDerivative, insertHandOut } from "../../database/pictures.ts";
import { removeExhibit, storeExhibit } from "../../exhibits/store.ts";
import type { Bag } from "../../records/verify/dossier/read-bag.ts";
import { checkedBytes, type ReadInDeps } from "./checked-bytes.ts";
import type { NotedOrder } from "./dossier-content.ts";
import { ReadInRefusal } from "./read-in-refusal.ts";

export interface ReadInCopy {
	readonly original: string;
	readonly form: "without-metadata" | "blacked-out" | "nothing";
	/** Who has the original: `shop`, a party, or the record through whose link it came. */
	readonly taker: string;
	readonly file: {
		readonly sha256: string;
		readonly name: string;
		readonly sizeBytes: number;
		readonly crc32: number;
	} | null;
}

const LIST = "data/copies.txt";

/** Stores the copies of a verified bag under the key of the order's owner. */
export async function storedCopies(
	{ database, exhibitFolder }: ReadInDeps,
	bag: Bag,
	ownerId: string,
	undo: (() => Promise<void>)[],
): Promise<ReadInCopy[]> {
	if (!bag.files.has(LIST)) return [];
	const list = Buffer.from(await checkedBytes(bag, LIST)).toString("utf8");
	const owner = database.vault.of(ownerId);
	const copies: ReadInCopy[] = [];
	for (const line of list.split("\n").filter((one) => one !== "")) {
		const [number, original = "", form, sha256 = "-", taker = ""] = line.split(" ");
		const copy = { original, form: form as ReadInCopy["form"], taker };
		if (sha256 === "-") {
			copies.push({ ...copy, file: null });
			continue;
		}
		const path = `data/copies/${number}.jpg`;
		const bytes = await checkedBytes(bag, path);
		if (bag.files.get(path)?.sha256 !== sha256) throw new ReadInRefusal("copies", path);
		const name = await storeExhibit(exhibitFolder, owner.sealBytes(derivativePlaceOf(sha256), bytes));
		undo.push(() => removeExhibit(exhibitFolder, name));
		copies.push({ ...copy, file: { sha256, name, sizeBytes: bytes.length, crc32: crc32(bytes) } });
	}
	return copies;
}

/** After the rows of the originals. A copy with parts blacked out was its taker's choice, which stays. */
export async function insertCopies(
	transaction: Queryable,
	order: NotedOrder,
	copies: readonly ReadInCopy[],
): Promise<void> {
	for (const { original, form, taker, file } of copies) {
		if (file === null || form === "nothing") continue;
		await insertDerivative(transaction, order.id, {
			original_sha256: original,
			party_id: order.owner.id,
			kind: form,
			of_sha256: original,
			sha256: file.sha256,
			stored_sha256: file.name,
			size_bytes: file.sizeBytes,
			crc32: file.crc32,
		});
		if (form !== "blacked-out") continue;
		await insertHandOut(transaction, order.id, {
			sha256: original,
			taker,
			choice: form,
			copy_sha256: file.sha256,
			chosen_by: taker === "shop" ? order.repairer.id : taker,
		});
	}
}
