/** The photos and files that sealed records name, numbered in the order of the records. */
import type { SealedRecord } from "../records/record-views.ts";

export interface NumberedExhibit {
	/** `E1`, `E2` …: one number for one file, wherever it is named. */
	readonly number: string;
	readonly sha256: string;
	readonly sizeBytes: number;
	readonly mediaType: string;
	/** As the first record that names it says. */
	readonly view: string;
	/** Null once erased. */
	readonly fileName: string | null;
	/** What each record that names the file says of it; records may tell one file by several words. */
	readonly namings: readonly Naming[];
}

export interface Naming {
	readonly view: string;
	readonly note: string | null;
	readonly record: SealedRecord;
}

export function numberedExhibits(records: readonly SealedRecord[]): NumberedExhibit[] {
	const found = new Map<string, NumberedExhibit & { readonly namings: Naming[] }>();
	for (const record of records) {
		for (const { sha256, sizeBytes, mediaType, view, fileName, note } of record.statement.exhibits) {
			const naming = { view, note: note ?? null, record };
			const known = found.get(sha256);
			if (known !== undefined) {
				known.namings.push(naming);
				continue;
			}
			const number = `E${found.size + 1}`;
			found.set(sha256, { number, sha256, sizeBytes, mediaType, view, fileName, namings: [naming] });
		}
	}
	return [...found.values()];
}

/** The numbers under which a record's exhibits are quoted. */
export function numbersOf(record: SealedRecord, exhibits: readonly NumberedExhibit[]): string {
	const named = new Set(record.statement.exhibits.map(({ sha256 }) => sha256));
	return exhibits
		.filter(({ sha256 }) => named.has(sha256))
		.map(({ number }) => `[${number}]`)
		.join(" ");
}
