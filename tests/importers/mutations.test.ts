/** Damaged files: whatever is changed, an importer answers with readings or a refusal, and a value comes from characters. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import { ImportRefusal } from "../../src/importers/import-result.ts";

const files = ["lspci-width-reduced.txt", "accelerator-idle.xml"].map((name) =>
	readFileSync(new URL(`fixtures/${name}`, import.meta.url)),
);

function tryImport(bytes: Uint8Array): void {
	try {
		for (const reading of importDiagnostic(bytes, null, "load").readings) {
			if (reading.value !== null && !Number.isFinite(reading.value)) throw new Error("a value that is not finite");
		}
	} catch (error) {
		if (!(error instanceof ImportRefusal)) throw error;
	}
}

describe("damaged files", () => {
	it("are read or refused after 2,000 random changes", () => {
		const change = fc.record({
			file: fc.constantFrom(...files),
			edits: fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 })), { minLength: 1, maxLength: 8 }),
		});
		fc.assert(
			fc.property(change, ({ file, edits }) => {
				const bytes = Buffer.from(file);
				for (const [place, value] of edits) bytes[place % bytes.length] = value;
				tryImport(bytes);
			}),
			{ numRuns: 2000 },
		);
	});

	it("are read or refused when cut at every byte of a small file", () => {
		const [small] = files;
		if (small === undefined) throw new Error("no file");
		for (let length = 0; length <= small.length; length += 1) tryImport(small.subarray(0, length));
		expect(small.length).toBeGreaterThan(1000);
	});
});
