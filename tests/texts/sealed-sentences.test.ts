/**
 * Sentences of the packaging side. A sealed assessment holds their keys and values, so that it can be read for good: a key
 * that was ever released stays, and its words name no value that a sealed sentence does not carry.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { retired } from "../../src/texts/english/retired.ts";
import { english } from "../../src/texts/english.ts";

const ROOT = new URL("../../", import.meta.url).pathname;
/** Rooms of calculations whose sentences an assessment seals, and those of its neighbours that answers carry. */
const ROOMS = ["packaging", "electrostatics", "handling", "cushioning", "moisture", "shock"];
const OWN = /^(packaging|static|drop|cushion|condensation|shock)\.[a-z-]+$/;
const SEALED = /^(packaging|static|drop|cushion)\./;
const texts = english as Readonly<Record<string, string>>;
const own = Object.keys(texts).filter((key) => OWN.test(key));
const isRetired = (key: string) => Object.hasOwn(retired, key);

const code = ROOMS.flatMap((room) =>
	readdirSync(`${ROOT}src/calculations/${room}`, { recursive: true, encoding: "utf8" })
		.filter((file) => file.endsWith(".ts"))
		.map((file) => readFileSync(`${ROOT}src/calculations/${room}/${file}`, "utf8")),
);
const more = ["src/catalogue/foams.ts", "src/catalogue/fillers.ts", "src/operations/calculations/foam-of.ts"].map(
	(file) => readFileSync(ROOT + file, "utf8"),
);
const source = [...code, ...more].join("\n");

describe("sentences of the packaging side", () => {
	it("every key that the code names has words, and no words lie unused", () => {
		const named = [...source.matchAll(/"([a-z]+\.[a-z-]+)"/g)]
			.map((match) => match[1] ?? "")
			.filter((key) => OWN.test(key));
		expect(named.filter((key) => texts[key] === undefined)).toEqual([]);
		const built = [...source.matchAll(/`([a-z]+\.[a-z-]*)\$\{/g)].map((match) => match[1] ?? "");
		const unused = own.filter(
			(key) => !named.includes(key) && !built.some((start) => key.startsWith(start)) && !isRetired(key),
		);
		expect(named.filter(isRetired), "these are said again: move them back").toEqual([]);
		expect(unused).toEqual([]);
	});

	it("what can stand in sealed bytes keeps its key and the values it names", () => {
		const now = own
			.filter((key) => SEALED.test(key))
			.map((key) =>
				[key, ...new Set([...(texts[key] ?? "").matchAll(/\{(\w+)\}/g)].map((match) => match[1]))].join(" "),
			)
			.sort();
		const released = readFileSync(new URL("sealed-sentences.txt", import.meta.url), "utf8")
			.trim()
			.split("\n");
		// A key may be added to the list, never taken from it; a value may leave the words, never join them.
		for (const line of released) {
			const [key = "", ...values] = line.split(" ");
			const words = now.find((entry) => entry.split(" ")[0] === key);
			expect(words, `${key} was released and is gone`).toBeDefined();
			for (const value of (words ?? "").split(" ").slice(1))
				expect(values, `${key} names a new value`).toContain(value);
		}
		const listed = released.map((line) => line.split(" ")[0]);
		expect(
			now.map((entry) => entry.split(" ")[0]).filter((key) => !listed.includes(key)),
			"add these to the list",
		).toEqual([]);
	});
});
