/** Takes away uploads whose time is over, and files of uploads that no row knows. */
import { expiredUploads, unfinishedAmong } from "../../database/exhibit-uploads.ts";
import { listIncoming, removeIncoming } from "../../exhibits/incoming.ts";
import type { Deps } from "../deps.ts";
import { dropUpload } from "./finish-upload.ts";
import { uploadLockName } from "./upload-lock.ts";

/** At a start and from time to time; one that a request works on is left to the next time. */
export async function cleanUploads(deps: Deps): Promise<void> {
	for (const row of await expiredUploads(deps.database, deps.now())) {
		const letGo = await deps.database.hold(uploadLockName(row.id), () => {});
		if (letGo === null) continue;
		try {
			await dropUpload(deps, row);
		} finally {
			await letGo();
		}
	}
	// Listed before the rows are asked for: a row is there before its file is.
	const files = await listIncoming(deps.exhibitFolder);
	const known = new Set(await unfinishedAmong(deps.database, files));
	for (const id of files) {
		if (known.has(id)) continue;
		// A dossier that is read in has no rows yet, but holds the lock of each file that it writes.
		const letGo = await deps.database.hold(uploadLockName(id), () => {});
		if (letGo === null) continue;
		await removeIncoming(deps.exhibitFolder, id).finally(letGo);
	}
}
