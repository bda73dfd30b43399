/** Large outputs are read on a thread of their own: the same answer and the same refusal as in the service. Needs the build. */
import { expect, it } from "vitest";
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";
import { readDiagnostic } from "../../src/operations/imports/read-diagnostic.ts";

const header = "Time,GPU Temperature [°C]\n";
const large = Buffer.from(`${header}${"10:00,61.5\n".repeat(20_000)}`);

it("answers as in the service", async () => {
	const task = { bytes: large, kind: null, condition: "load" } as const;
	expect(large.length).toBeGreaterThan(100_000);
	expect(await readDiagnostic(task)).toEqual(importDiagnostic(large, null, "load"));
});

it("refuses with code, line and reason", async () => {
	const broken = Buffer.concat([large, Buffer.from("10:00\n")]);
	await expect(readDiagnostic({ bytes: broken, kind: null, condition: "load" })).rejects.toMatchObject({
		name: "ImportRefusal",
		code: "csv-row",
		line: 20_002,
		reason: { sentence: "import.csv-row" },
	});
});

it("lets the service go on while it reads", async () => {
	let turns = 0;
	const timer = setInterval(() => {
		turns += 1;
	}, 5);
	const many = Buffer.from(`${header}${"10:00,61.5\n".repeat(300_000)}`);
	await readDiagnostic({ bytes: many, kind: null, condition: "load" });
	clearInterval(timer);
	expect(turns).toBeGreaterThan(20);
});
