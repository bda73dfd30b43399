/** Files of the key folder: whole and on disk, or not there. */
import { open, rename } from "node:fs/promises";
import { dirname } from "node:path";

/** On disk before it is named: whatever is done with a key is done with one that the next start finds. */
export async function writeDurably(path: string, content: string | Uint8Array): Promise<void> {
	const file = await open(`${path}.incoming`, "wx", 0o600);
	try {
		await file.writeFile(content);
		await file.sync();
	} finally {
		await file.close();
	}
	await rename(`${path}.incoming`, path);
	await syncFolder(dirname(path));
}

export async function syncFolder(path: string): Promise<void> {
	const folder = await open(path, "r");
	try {
		await folder.sync();
	} finally {
		await folder.close();
	}
}
