/** The photos and files that sealed records name, by their number in the report. Read one at a time, while they are sent. */
import { crc32 } from "node:zlib";
import { exhibitPlaceOf, usesOfExhibit } from "../../database/records.ts";
import { readExhibit } from "../../exhibits/store.ts";
import type { Deps } from "../deps.ts";
import type { NumberedExhibit } from "../report/numbered-exhibits.ts";
import type { DossierFile } from "./dossier-file.ts";

const EXTENSIONS: Readonly<Record<string, string>> = {
	"image/jpeg": "jpg",
	"image/png": "png",
	"image/webp": "webp",
	"image/heic": "heic",
	"video/mp4": "mp4",
	"application/pdf": "pdf",
	"text/plain": "txt",
};

/** CRC-32 by SHA-256: neither ever changes, and a range is asked for again and again. */
const known = new Map<string, number>();
const MOST_KNOWN = 10_000;

/** One that was erased is left out; the report still lists it. */
export async function exhibitFiles(
	deps: Deps,
	orderId: string,
	exhibits: readonly NumberedExhibit[],
): Promise<DossierFile[]> {
	const files: DossierFile[] = [];
	for (const { number, sha256, mediaType } of exhibits) {
		const uses = await usesOfExhibit(deps.database, sha256);
		const use = uses.find((one) => one.order_id === orderId && one.stored_sha256 !== null);
		if (use === undefined || use.stored_sha256 === null) continue;
		const { stored_sha256, party_id, size_bytes } = use;
		const read = async () => {
			const stored = await readExhibit(deps.exhibitFolder, stored_sha256);
			return deps.database.vault.of(party_id).openBytes(exhibitPlaceOf(sha256), stored);
		};
		files.push({
			path: `exhibits/${number}.${EXTENSIONS[mediaType] ?? "bin"}`,
			sizeBytes: size_bytes,
			sha256,
			crc32: await crcOf(sha256, read),
			read,
		});
	}
	return files;
}

async function crcOf(sha256: string, read: () => Promise<Uint8Array>): Promise<number> {
	const before = known.get(sha256);
	if (before !== undefined) return before;
	const made = crc32(await read());
	if (known.size >= MOST_KNOWN) known.clear();
	known.set(sha256, made);
	return made;
}
