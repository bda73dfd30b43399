/** Reads an invented output the way the service does. */
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import type { ImportCondition, ImportResult } from "../../src/importers/import-result.ts";

export function readOutput(text: string, condition: ImportCondition = "unknown"): ImportResult {
	return importDiagnostic(Buffer.from(text), null, condition);
}

/** Value or null's reason by check and, where it is more than the device, by subject. */
export function valuesOf(result: ImportResult): Record<string, number | string | undefined> {
	return Object.fromEntries(
		result.readings.map((reading) => [`${reading.check} @ ${reading.subject}`, reading.value ?? reading.nullReason]),
	);
}

export const warningsOf = (result: ImportResult) => result.warnings.map(({ code }) => code);
