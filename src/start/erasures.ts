/** The list of erasures, `erasures.jsonl` in the key folder: one line per party, added and never taken away. */
import { mkdir, open, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Erasure, Erasures } from "../operations/deps.ts";
import { syncFolder } from "./key-files.ts";

export const ERASURES_FILE = "erasures.jsonl";

export function makeErasures(folder: string): Erasures {
	const path = join(folder, ERASURES_FILE);
	return {
		async note({ partyId, byId }) {
			await mkdir(folder, { recursive: true, mode: 0o700 });
			const file = await open(path, "a", 0o600);
			try {
				await file.appendFile(`${JSON.stringify({ partyId, byId })}\n`);
				await file.sync();
			} finally {
				await file.close();
			}
			await syncFolder(folder);
		},
		async list() {
			const text = await readFile(path, "utf8").catch((error: NodeJS.ErrnoException) => {
				if (error.code === "ENOENT") return "";
				throw error;
			});
			const lines = text.split("\n").filter((line) => line !== "");
			return lines.map((line) => JSON.parse(line) as Erasure);
		},
	};
}
