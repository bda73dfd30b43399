/** The photos and files that sealed records name, by their number in the report. Read while they are sent. */
import { crc32 } from "node:zlib";
import { type ExhibitRow, noteCrc32, usesOfExhibit } from "../../database/records.ts";
import type { Deps } from "../deps.ts";
import { contentBytes } from "../exhibits/stored-content.ts";
import type { NumberedExhibit } from "../report/numbered-exhibits.ts";
import type { DossierFile } from "./dossier-file.ts";

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
		if (use === undefined) continue;
		files.push({
			path: `exhibits/${number}.${EXTENSIONS[mediaType] ?? "bin"}`,
			sizeBytes: use.size_bytes,
			sha256,
			crc32: use.crc32 ?? (await crcOf(deps, use)),
			read: (start, end) => contentBytes(deps, use, start, end),
		});
	}
	return files;
}

/** Of a file that was stored before its CRC-32 was kept: read for it once. */
async function crcOf(deps: Deps, use: ExhibitRow): Promise<number> {
	let crc = 0;
	for await (const bytes of contentBytes(deps, use)) crc = crc32(bytes, crc);
	await noteCrc32(deps.database, use, crc);
	return crc;
}
