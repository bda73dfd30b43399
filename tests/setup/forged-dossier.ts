/** A dossier made over by someone who knows its form: one file is other, and all hashes and sums of the bag and archive fit again. */
import { bagOf } from "../../src/operations/dossier/bag.ts";
import { fileOf } from "../../src/operations/dossier/dossier-file.ts";
import { storedZip, zipBytes } from "../../src/operations/dossier/stored-zip.ts";
import { sourceOf } from "../../src/records/verify/dossier/byte-source.ts";
import { readBag } from "../../src/records/verify/dossier/read-bag.ts";

const DATA = "data/";

/** @param change gives a file's new bytes; null leaves the file out */
export async function forgedDossier(
	zip: Uint8Array,
	path: string,
	change: (bytes: Buffer) => Buffer | null,
): Promise<Buffer> {
	const bag = await readBag(sourceOf(zip), () => {});
	const payload = await Promise.all(
		[...bag.files.keys()]
			.filter((name) => name.startsWith(DATA))
			.map(async (name) => {
				const bytes = Buffer.from(await bag.bytesOf(name));
				const made = name === path ? change(bytes) : bytes;
				return made === null ? [] : [fileOf(name.slice(DATA.length), made)];
			}),
	);
	const info = Buffer.from(await bag.bytesOf("bag-info.txt"))
		.toString("utf8")
		.trimEnd()
		.split("\n")
		.map((line) => line.split(": ") as [string, string])
		.filter(([name]) => name !== "Payload-Oxum");
	const tags = [fileOf("VERIFY.txt", await bag.bytesOf("VERIFY.txt"))];
	const made = storedZip(bagOf("dossier-forged", payload.flat(), tags, info), new Date("2026-03-02T10:00:00Z"));
	const parts: Uint8Array[] = [];
	for await (const part of zipBytes(made, 0, made.sizeBytes)) parts.push(part);
	return Buffer.concat(parts);
}
