/** One file that several records name, or several people brought, is told as such. Own expectations. */
import { expect, it } from "vitest";
import type { SealedRecord } from "../../../src/operations/records/record-views.ts";
import { numberedExhibits } from "../../../src/operations/report/numbered-exhibits.ts";
import type { ReportFacts } from "../../../src/operations/report/report-facts.ts";
import { exhibits, holderOf } from "../../../src/operations/report/sections/proofs.ts";
import { ENGLISH } from "../../../src/texts/speaker.ts";

const SHARED = "a".repeat(64);
const OWN = "b".repeat(64);
const file = (sha256: string, view: string) => ({
	sha256,
	view,
	sizeBytes: 900,
	mediaType: "image/png",
	fileName: "x",
});
const record = (id: string, stage: string, holderId: string, files: readonly object[]) =>
	({
		view: { id, stage, holderId, provenance: "recorded-by-holder" },
		statement: { exhibits: files },
	}) as unknown as SealedRecord;
const records = [
	record("rec_1", "departure", "pty_o", [file(SHARED, "item-front"), file(OWN, "item-back")]),
	record("rec_2", "arrival", "pty_s", [file(SHARED, "item-front")]),
	record("rec_3", "departure", "pty_s", [file(SHARED, "pack-open")]),
];
const order = { owner: { id: "pty_o", name: "Ada" }, repairer: { id: "pty_s", name: "Nord" } };

function cells(takers: readonly string[]): string[][] {
	const others = { form: "nothing" } as const;
	const handOuts = new Map([[SHARED, { use: { stored_sha256: SHARED }, takers, others }]]);
	const facts = { exhibits: numberedExhibits(records), handOuts, order, speaker: ENGLISH } as unknown as ReportFacts;
	const table = exhibits(facts).blocks.find(({ kind }) => kind === "table");
	return (table as unknown as { rows: string[][] }).rows;
}

it("every record that names a file is told with its own words, and that it is one file", () => {
	const [shared, own] = cells(["shop"]);
	expect(shared?.[1]).toContain("Departure from Ada; Arrival at Nord");
	expect(shared?.[1]).toMatch(/\n.*Departure from Nord\nThe same file, byte for byte, is in 3 records\.$/);
	expect(own?.[1]).toContain("Departure from Ada");
	expect(own?.[1]).not.toContain("same file");
});

it("the original is with everyone who brought it", () => {
	expect([["shop"], ["pty_o"], ["shop", "pty_o"]].map(holderOf)).toEqual(["shop", "party", "several"]);
	expect(cells(["shop", "pty_o"])[0]?.[3]).toContain("with each of those who brought it");
	expect(cells(["pty_o"])[0]?.[3]).toContain("with the party who recorded it");
});
