/** The files that a dossier holds for standard programs, as the receipt in it says they must be: path → SHA-256. */
import { hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { sha256Of } from "../hashes.ts";
import type { ReadEntry } from "../read-entry.ts";
import type { LogProof } from "../read-receipt.ts";

export function receiptFiles(entries: readonly ReadEntry[], log: LogProof): Map<string, string> {
	const { note, text, root, size, signatures } = log.checkpoint;
	const files = new Map<string, string>([
		["data/log/checkpoint-note.txt", sha256Of(utf8ToBytes(note))],
		["data/log/checkpoint.txt", sha256Of(utf8ToBytes(text))],
		["data/log/checkpoint.sig", sha256Of(signatures.at(-1)?.signature ?? new Uint8Array())],
		["data/log/root.bin", sha256Of(hexToBytes(root))],
	]);
	for (const stamp of log.timeStamps) {
		const name = `data/log/time-stamps/${stamp.note.size}`;
		files.set(`${name}.note.txt`, sha256Of(utf8ToBytes(stamp.note.note)));
		files.set(`${name}.token.der`, sha256Of(stamp.token));
	}
	for (const entry of entries) {
		const { index, statement, proof } = entry;
		if (statement !== null) {
			files.set(`data/statements/${index}.json`, sha256Of(statement.bytes));
			files.set(`data/openings/${index}.json`, sha256Of(openingsBytes(entry)));
		}
		const sides = sidesOf(index, size);
		for (const [step, sibling] of (proof ?? []).entries()) {
			const name = `${String(step + 1).padStart(2, "0")}-${sides[step] ?? "none"}.bin`;
			files.set(`data/proofs/${index}/${name}`, sha256Of(hexToBytes(sibling)));
		}
	}
	return files;
}

/** On which side each sibling stands, from the leaf upwards: PATH of RFC 9162 section 2.1.3.1. */
function sidesOf(index: number, size: number): ("left" | "right")[] {
	if (size <= 1) return [];
	let half = 1;
	while (half * 2 < size) half *= 2;
	return index < half ? [...sidesOf(index, half), "right"] : [...sidesOf(index - half, size - half), "left"];
}

/** The openings' canonical bytes, as they stand in the receipt. */
function openingsBytes({ openings }: ReadEntry): Uint8Array {
	const text = new TextDecoder();
	const items = openings.map(
		({ commitment, salt, valueBytes }) =>
			`{"commitment":"${commitment}","salt":"${salt}","value":${text.decode(valueBytes)}}`,
	);
	return utf8ToBytes(`[${items.join(",")}]`);
}
