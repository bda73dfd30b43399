/** The lock under which one request at a time works on an upload, in all instances of the service. */
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";

/** For how long another request is waited for. Source: our choice, above what it takes to put on disk what came. */
const WAITS_MS = 10_000;
const ASKS_EVERY_MS = 50;

export function uploadLockName(id: string): string {
	return `upload/${id}`;
}

/**
 * @param wanted told when another request of this instance asks for the lock: one whose network is gone should end
 * @returns what lets go of it @throws upload-busy where another request keeps it
 */
export async function lockUpload(deps: Deps, id: string, wanted: () => void): Promise<() => Promise<void>> {
	for (let waited = 0; waited <= WAITS_MS; waited += ASKS_EVERY_MS) {
		const letGo = await deps.database.hold(uploadLockName(id), wanted);
		if (letGo !== null) return letGo;
		await new Promise((resolve) => setTimeout(resolve, ASKS_EVERY_MS));
	}
	throw fault("upload-busy", { retryAfterS: 5 });
}
