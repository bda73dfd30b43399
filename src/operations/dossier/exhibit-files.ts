/**
 * The photos and files that sealed records name, by their number in the report. Read while they are sent.
 * A dossier holds what others get: originals under `exhibits/`, copies without metadata or blacked out under `copies/`.
 * `copies.txt` has a line for each file whose original is not in the dossier: number, SHA-256 of the original, which a
 * statement names, what stands for it, SHA-256 of the copy or `-`, who has the original.
 */
import { crc32 } from "node:zlib";
import type { DerivativeRow, PictureUse } from "../../database/pictures.ts";
import { noteCrc32 } from "../../database/records.ts";
import type { Deps } from "../deps.ts";
import { contentBytes } from "../exhibits/stored-content.ts";
import type { FileHandOut } from "../pictures/hand-out.ts";
import { copyBytes } from "../pictures/picture-files.ts";
import type { NumberedExhibit } from "../report/numbered-exhibits.ts";
import { type DossierFile, fileOf } from "./dossier-file.ts";

const EXTENSIONS: Readonly<Record<string, string>> = {
	"image/jpeg": "jpg",
	"image/png": "png",
	"image/webp": "webp",
	"image/heic": "heic",
	"image/heif": "heif",
	"video/mp4": "mp4",
	"video/quicktime": "mov",
	"video/webm": "webm",
	"application/pdf": "pdf",
	"text/plain": "txt",
};

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
			files.push(await originalFile(deps, path, use));
			continue;
		}
		const copy = "copy" in others ? others.copy : null;
		listed.push([number, sha256, others.form, copy?.sha256 ?? "-", use.taker].join(" "));
		if (copy === null) continue;
		const path = `copies/${number}.jpg`;
		files.push(copyFile(deps, path, copy));
	}
	return [...files, fileOf("copies.txt", listed.map((line) => `${line}\n`).join(""))];
}

async function originalFile(deps: Deps, path: string, use: PictureUse): Promise<DossierFile> {
	return {
		path,
		sizeBytes: use.size_bytes,
		sha256: use.sha256,
		crc32: use.crc32 ?? (await crcOf(deps, use)),
		read: (start, end) => contentBytes(deps, use, start, end),
	};
}

function copyFile(deps: Deps, path: string, copy: DerivativeRow): DossierFile {
	return {
		path,
		sizeBytes: copy.size_bytes,
		sha256: copy.sha256,
		crc32: copy.crc32,
		async *read(start, end) {
			yield (await copyBytes(deps, copy)).subarray(start, end);
		},
	};
}

/** Of a file that was stored before its CRC-32 was kept: read for it once. */
async function crcOf(deps: Deps, use: PictureUse): Promise<number> {
	let crc = 0;
	for await (const bytes of contentBytes(deps, use)) crc = crc32(bytes, crc);
	await noteCrc32(deps.database, use, crc);
	return crc;
}
