/** What is said of a file beside what was taken: every reason for a missing value that an importer gives has words. */
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { importWords } from "../../src/pages/record-form/import-words.ts";
import { isTextKey } from "../../src/texts/say.ts";

const FOLDER = new URL("../../src/importers/", import.meta.url);
const sources = readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
	.filter((file) => file.endsWith(".ts"))
	.map((file) => readFileSync(new URL(file, FOLDER), "utf8"));

it("has words for every reason", () => {
	const reasons = sources.flatMap((text) =>
		[...text.matchAll(/(?:nullReason: |nullReason = .*? [?:] |none\()"([a-z-]+)"/g)].map(([, reason = ""]) => reason),
	);
	expect(new Set(reasons).size).toBeGreaterThan(8);
	expect(reasons.filter((reason) => !isTextKey(`import.null.${reason}`))).toEqual([]);
});

it("names what was left, what is missing, and people and networks", () => {
	const reading = (check: string, value: number | null, nullReason?: string) => ({
		check,
		subject: "x",
		condition: "load" as const,
		value,
		unit: "one",
		raw: "",
		...(nullReason === undefined ? {} : { nullReason }),
	});
	const words = importWords(
		{
			readings: [
				reading("temperature-core", 60),
				reading("aer-replay-counter", 3),
				reading("fan-speed", null, "not-given"),
			],
			personal: [{ kind: "host-name", text: "werkbank", line: 1 }],
		} as never,
		["temperature-core"],
	);
	expect(words).toEqual([
		"Read, and not taken into the record: aer-replay-counter.",
		"No value in the file: Fan speed under load (not given).",
		"The file also names a computer (werkbank). It is kept with the record, encrypted, and goes when the order's owner is erased.",
	]);
});
