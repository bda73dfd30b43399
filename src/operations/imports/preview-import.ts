/** Reads a diagnostic output without keeping it. */
import type { ImportPreview, ImportQuery } from "../../contract/imports.ts";
import { fault } from "../../faults.ts";
import { IMPORT_KINDS, type ImportKind } from "../../importers/import-diagnostic.ts";
import { ImportRefusal, type ImportResult } from "../../importers/import-result.ts";
import { sha256Hex } from "../../records/canonical.ts";
import { say, speak, type TextKey } from "../../texts/say.ts";
import { readDiagnostic } from "./read-diagnostic.ts";

/** What was understood of a file, and what was not. @throws import-refused with line and reason */
export async function previewImport(
	bytes: Uint8Array,
	query: ImportQuery,
): Promise<{ readonly preview: ImportPreview; readonly result: ImportResult }> {
	const kind = query.kind ?? null;
	if (kind !== null && !IMPORT_KINDS.includes(kind as ImportKind)) {
		throw refused(0, say("import.format-not-read", { read: IMPORT_KINDS.join(", ") }));
	}
	try {
		const result = await readDiagnostic({
			bytes,
			kind: kind as ImportKind | null,
			condition: query.load ?? "unknown",
		});
		return { preview: speak({ ...result, sha256: sha256Hex(bytes) }) as ImportPreview, result };
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
		throw refused(error.line ?? 0, say(error.reason.sentence as TextKey, error.reason.values));
	}
}

function refused(line: number, why: string) {
	return fault("bad-input", {
		members: [{ path: "", code: line > 0 ? "import-refused-at" : "import-refused", facts: { line, why } }],
	});
}
