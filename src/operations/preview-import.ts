/** Reads a diagnostic output without keeping it. */
import type { ImportPreview, ImportQuery } from "../contract/imports.ts";
import { fault } from "../faults.ts";
import { IMPORT_KINDS, type ImportKind, importDiagnostic } from "../importers/import-diagnostic.ts";
import { ImportRefusal } from "../importers/import-result.ts";
import { sha256Hex } from "../records/canonical.ts";
import { say, speak, type TextKey } from "../texts/say.ts";

/** What was understood of a file, and what was not. @throws import-refused with line and reason */
export function previewImport(bytes: Uint8Array, query: ImportQuery): ImportPreview {
	const kind = query.kind ?? null;
	if (kind !== null && !IMPORT_KINDS.includes(kind as ImportKind)) {
		throw refused(0, say("import.format-not-read", { read: IMPORT_KINDS.join(", ") }));
	}
	try {
		const result = importDiagnostic(bytes, kind as ImportKind | null, query.load ?? "unknown");
		return speak({ ...result, sha256: sha256Hex(bytes) }) as ImportPreview;
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
