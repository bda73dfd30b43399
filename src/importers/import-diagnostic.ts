/** Reads a diagnostic output of any format that is read, found by its content or named. */
import { decodeText } from "./decode-text.ts";
import { type ImportCondition, ImportRefusal, type ImportResult } from "./import-result.ts";
import { importLspci, looksLikeLspci } from "./lspci.ts";
import { importNvidiaSmiXml, looksLikeNvidiaSmiXml } from "./nvidia-smi-xml.ts";

const FORMATS = {
	"nvidia-smi-xml": { name: "nvidia-smi -q -x", looksLike: looksLikeNvidiaSmiXml, read: importNvidiaSmiXml },
	lspci: { name: "lspci -vv", looksLike: looksLikeLspci, read: importLspci },
} as const;

export type ImportKind = keyof typeof FORMATS;
export const IMPORT_KINDS = Object.keys(FORMATS) as [ImportKind, ...ImportKind[]];

/**
 * The readings of a file. `kind` overrides what the content looks like.
 * @throws ImportRefusal with line and reason; nothing is guessed
 */
export function importDiagnostic(bytes: Uint8Array, kind: ImportKind | null, condition: ImportCondition): ImportResult {
	const text = decodeText(bytes);
	const found = kind ?? IMPORT_KINDS.find((candidate) => FORMATS[candidate].looksLike(text));
	if (found === undefined) {
		const read = IMPORT_KINDS.map((candidate) => FORMATS[candidate].name).join(", ");
		throw new ImportRefusal("format-not-read", null, { read });
	}
	return FORMATS[found].read(text, condition);
}
