/** Takes bytes of an upload: encrypted as they come, on disk before they are acknowledged. */
import { advanceUpload, type UploadRow, uploadSecrets } from "../../database/exhibit-uploads.ts";
import { type IncomingFile, openIncoming } from "../../exhibits/incoming.ts";
import { fullOr } from "../../exhibits/store.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";

/** After so many bytes of one request what came is put on disk and noted, so that a crash costs no more. Source: our choice. */
const NOTED_EVERY_BYTES = 64 * 1024 * 1024;

/**
 * Takes what comes until it ends or breaks off; what came before a break is kept. The caller holds the upload's lock.
 * @returns how far the upload is now
 */
export async function receiveUpload(deps: Deps, row: UploadRow, pieces: AsyncIterable<Uint8Array>): Promise<number> {
	const { key, tail } = await uploadSecrets(deps.database, row);
	const file = await openIncoming(
		deps.exhibitFolder,
		row.id,
		{ key: Buffer.from(key, "base64"), sizeBytes: row.size_bytes },
		{ offsetBytes: row.offset_bytes, tail },
		deps.randomBytes,
	).catch((error: NodeJS.ErrnoException) => {
		throw error.code === "ENOENT" ? fault("upload-gone") : fullOr(error);
	});
	let noted = row.offset_bytes;
	try {
		let [broken, isBroken, since]: [unknown, boolean, number] = [undefined, false, 0];
		try {
			for await (const bytes of pieces) {
				await file.take(bytes);
				since += bytes.length;
				if (since < NOTED_EVERY_BYTES) continue;
				noted = await note(deps, row, noted, file);
				since = 0;
			}
		} catch (error) {
			[broken, isBroken] = [error, true];
		}
		noted = await note(deps, row, noted, file);
		if (isBroken) throw broken;
		return noted;
	} finally {
		await file.close();
	}
}

async function note(deps: Deps, row: UploadRow, from: number, file: IncomingFile): Promise<number> {
	const to = await file.sync();
	if (to.offsetBytes === from) return from;
	// Another wrote meanwhile: its lock was lost with the database's connection.
	if (!(await advanceUpload(deps.database, { ...row, offset_bytes: from }, to))) throw fault("offset-differs");
	return to.offsetBytes;
}
