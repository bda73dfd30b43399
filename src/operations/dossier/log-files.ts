/** The log's files of a dossier: the checkpoint as it is signed, its signature and key, stamps, and each entry with its proof. */
import { canonicalBytes, type JsonValue } from "../../records/canonical.ts";
import { publicKeyPem } from "../../records/log/checkpoint.ts";
import type { Receipt } from "../../records/receipt.ts";
import type { ReportFacts } from "../report/report-facts.ts";
import { type DossierFile, fileOf } from "./dossier-file.ts";
import { proofFiles } from "./proof-files.ts";

/** The key hash that stands before a signature in a note. */
const KEY_HASH_BYTES = 4;

export function logFiles({ checkpoint, root, keys, entries }: ReportFacts, receipt: Receipt): DossierFile[] {
	const [text = "", signatures = ""] = checkpoint.note.split("\n\n");
	// Where two keys signed, as at a change of key, the last line is that of the newer.
	const newest = Buffer.from(signatures.trim().split("\n").at(-1)?.split(" ").at(-1) ?? "", "base64");
	const keyId = newest.subarray(0, KEY_HASH_BYTES).toString("hex");
	const key = keys.find(({ id }) => id === keyId);
	if (key === undefined) throw new Error(`the log lacks the key ${keyId} that signed its checkpoint`);
	return [
		fileOf("log/checkpoint-note.txt", checkpoint.note),
		fileOf("log/checkpoint.txt", `${text}\n`),
		fileOf("log/checkpoint.sig", newest.subarray(KEY_HASH_BYTES)),
		fileOf("log/key.pem", publicKeyPem(key)),
		fileOf("log/root.bin", Buffer.from(root, "hex")),
		...receipt.timeStamps.flatMap(({ checkpoint: stamped, token }) => {
			const name = `log/time-stamps/${stamped.split("\n")[1]}`;
			return [fileOf(`${name}.note.txt`, stamped), fileOf(`${name}.token.der`, Buffer.from(token, "base64"))];
		}),
		...entries.flatMap((entry, place) => entryFiles(entry, receipt, place, checkpoint.size)),
	];
}

function entryFiles(
	{ index, entryBytes, statementBytes }: ReportFacts["entries"][number],
	receipt: Receipt,
	place: number,
	size: number,
): DossierFile[] {
	const shown = receipt.entries[place];
	if (shown === undefined) throw new Error(`the receipt lacks entry ${index}`);
	return [
		fileOf(`entries/${index}.json`, entryBytes),
		...(statementBytes === null
			? []
			: [
					fileOf(`statements/${index}.json`, statementBytes),
					fileOf(`openings/${index}.json`, canonicalBytes(shown.openings as unknown as JsonValue)),
				]),
		...proofFiles(index, size, shown.proof, `proofs/${index}`),
	];
}
