/** What a command is given by name: a file that may be larger than memory, a key. */
import { type FileHandle, readFile } from "node:fs/promises";
import type { ByteSource } from "../records/verify/dossier/byte-source.ts";
import { say } from "../texts/say.ts";

/** A dossier may be larger than memory, so it is read in places. */
export async function sourceOn(file: FileHandle): Promise<ByteSource> {
	return {
		size: (await file.stat()).size,
		read: async (start, length) => {
			const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, start);
			if (bytesRead !== length) throw new Error(say("verify.cut-meanwhile"));
			return buffer;
		},
	};
}

/** A key given in digits is itself; anything else names a file. */
export async function keyText(given: string): Promise<string> {
	return /^[0-9a-fA-F]{64}$/.test(given) ? given : readFile(given, "utf8");
}
