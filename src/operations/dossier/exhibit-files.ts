/**
 * The photos and files that sealed records name, by their number in the report. Read one at a time, while they are sent.
 * A dossier holds what others get: originals under `exhibits/`, copies without metadata or blacked out under `copies/`.
 * `copies.txt` has a line for each file whose original is not in the dossier: number, SHA-256 of the original, which a
 * statement names, what stands for it, SHA-256 of the copy or `-`, who has the original.
 */
import { crc32 } from "node:zlib";
import type { Deps } from "../deps.ts";
import type { FileHandOut } from "../pictures/hand-out.ts";
import { copyBytes, originalBytes } from "../pictures/picture-files.ts";
import type { NumberedExhibit } from "../report/numbered-exhibits.ts";
import { type DossierFile, fileOf } from "./dossier-file.ts";

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

/** What stands for the files that the report numbers: originals, copies, and the list of what is no original. */
export async function exhibitFiles(
	deps: Deps,
	exhibits: readonly NumberedExhibit[],
	handOuts: ReadonlyMap<string, FileHandOut>,
): Promise<DossierFile[]> {
	const files: DossierFile[] = [];
	const listed: string[] = [];
	for (const { number, sha256, mediaType } of exhibits) {
		const found = handOuts.get(sha256);
		// One that was erased is left out; the report still lists it.
		if (found === undefined || found.use.stored_sha256 === null) continue;
		const { use, others } = found;
		if (others.form === "original") {
			const path = `exhibits/${number}.${EXTENSIONS[mediaType] ?? "bin"}`;
			files.push(await storedFile(path, use.size_bytes, sha256, () => originalBytes(deps, use)));
			continue;
		}
		const copy = "copy" in others ? others.copy : null;
		listed.push([number, sha256, others.form, copy?.sha256 ?? "-", use.taker].join(" "));
		if (copy === null) continue;
		const path = `copies/${number}.jpg`;
		files.push(await storedFile(path, copy.size_bytes, copy.sha256, () => copyBytes(deps, copy)));
	}
	return [...files, fileOf("copies.txt", listed.map((line) => `${line}\n`).join(""))];
}

async function storedFile(
	path: string,
	sizeBytes: number,
	sha256: string,
	read: () => Promise<Uint8Array>,
): Promise<DossierFile> {
	return { path, sizeBytes, sha256, crc32: await crcOf(sha256, read), read };
}

async function crcOf(sha256: string, read: () => Promise<Uint8Array>): Promise<number> {
	const before = known.get(sha256);
	if (before !== undefined) return before;
	const made = crc32(await read());
	if (known.size >= MOST_KNOWN) known.clear();
	known.set(sha256, made);
	return made;
}
