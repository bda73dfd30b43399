/**
 * German and French of what a report can say. The compiler holds that no key is missing or left over; here, that each
 * translation names what the English names, leaves no English behind and pronounces as little.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { english } from "../../src/texts/english.ts";
import { french } from "../../src/texts/french.ts";
import { german } from "../../src/texts/german.ts";
import { LANGUAGES } from "../../src/texts/language.ts";
import { isReportKey, say } from "../../src/texts/say.ts";
import { speakerOf } from "../../src/texts/speaker.ts";
import { ENGLISH_WORDS } from "./english-words.ts";
import { PRONOUNCES_IN, TRANSPOSES_IN } from "./pronounces.ts";

const OTHERS = { de: german, fr: french } as const;
const source = english as Readonly<Record<string, string>>;
const withoutValues = (text: string) => text.replace(/\{\w+\}/g, "");
const namesIn = (text: string) => [...new Set(text.match(/\{\w+\}/g) ?? [])].sort();

describe.each(["de", "fr"] as const)("in %s", (language) => {
	const texts = Object.entries(OTHERS[language]);

	it("each sentence names exactly the values that the English names", () => {
		for (const [key, text] of texts) expect(namesIn(text), key).toEqual(namesIn(source[key] ?? ""));
	});
	it("none is empty, and no brace stands alone", () => {
		for (const [key, text] of texts) {
			expect(text.trim(), key).not.toBe("");
			expect(withoutValues(text), key).not.toMatch(/[{}]/);
		}
	});
	it("no English is left over", () => {
		expect(texts.filter(([, text]) => ENGLISH_WORDS.test(withoutValues(text)))).toEqual([]);
		const same = texts.filter(([key, text]) => text === source[key] && /[a-z]{4,}/.test(withoutValues(text)));
		expect(same.map(([, text]) => text).filter((text) => !ALIKE.includes(text))).toEqual([]);
	});
	it("numbers in a sentence are those of the English, with a decimal comma", () => {
		const numbers = (text: string) =>
			(text.match(/(?<![\w-])\d+([.,]\d+)?/g) ?? []).map((number) => number.replace(",", ".")).sort();
		for (const [key, text] of texts) {
			expect(numbers(text), key).toEqual(numbers(source[key] ?? ""));
			// The section of a law keeps its point.
			expect(text.replace("49 CFR 370.3", ""), key).not.toMatch(/\d\.\d/);
		}
	});
	it("nobody is called liable or at fault, and no probability is turned round", () => {
		expect(texts.filter(([, text]) => PRONOUNCES_IN[language].test(text))).toEqual([]);
		expect(texts.filter(([, text]) => TRANSPOSES_IN[language].test(text))).toEqual([]);
	});
	it("a key that only pages say is a fault, and never said in English", () => {
		expect(() => say("papers.title" as never, {}, language)).toThrow(`no text for key papers.title in ${language}`);
	});
});

/** Words that are the same in both languages. */
const ALIKE = [
	"Link",
	"Message",
	"Resonanz",
	"SHA-256",
	"Starts",
	"Temperatur",
	"Version",
	"points",
	"score",
	"Document",
	"Certain",
	"face",
];

describe("the patterns themselves", () => {
	it("see a sentence that pronounces", () => {
		for (const [language, bad] of [
			["de", "Der Frachtführer haftet für den Schaden."],
			["de", "Der Reparaturbetrieb ist schuld an dem Fehler."],
			["de", "Der Schaden wurde durch den Absender verursacht."],
			["fr", "Le transporteur est responsable du dommage."],
			["fr", "C’est par la faute du réparateur."],
			["fr", "Le dommage a été causé par l’expéditeur."],
		] as const) {
			expect(PRONOUNCES_IN[language].test(bad), bad).toBe(true);
		}
	});
	it("see one that turns a probability round", () => {
		for (const [language, bad] of [
			["de", "Wahrscheinlich ist die Karte heruntergefallen."],
			["de", "Die wahrscheinlichste Ursache ist ein Stoß."],
			["de", "Das beweist, dass der Frachtführer sie fallen ließ."],
			["fr", "La carte est probablement tombée."],
			["fr", "La cause la plus probable est un choc."],
			["fr", "Cela prouve que le transporteur l’a lâchée."],
		] as const) {
			expect(TRANSPOSES_IN[language].test(bad), bad).toBe(true);
		}
	});
});

describe("what calculations say in a report", () => {
	/** Rooms whose answers a report speaks. */
	const ROOMS = [
		"calculations/comparison",
		"calculations/link",
		"calculations/origin",
		"calculations/packaging",
		"catalogue/origins",
	];
	it("has words in every language", () => {
		const code = ROOMS.flatMap((room) => {
			const folder = new URL(`../../src/${room}/`, import.meta.url);
			return readdirSync(folder, { recursive: true, encoding: "utf8" })
				.filter((file) => file.endsWith(".ts"))
				.map((file) => readFileSync(new URL(file, folder), "utf8"));
		}).join("\n");
		const said = [
			...code.matchAll(/"((?:comparison|first-state|link|origin|packaging|static|drop|cushion)\.[a-z-]+)"/g),
		];
		const keys = [...new Set(said.map((match) => match[1] ?? ""))];
		expect(keys.length).toBeGreaterThan(150);
		expect(keys.filter((key) => !isReportKey(key))).toEqual([]);
	});
	it("what was ever sealed has words in every language", () => {
		const sealed = readFileSync(new URL("sealed-sentences.txt", import.meta.url), "utf8")
			.trim()
			.split("\n");
		expect(sealed.map((line) => line.split(" ")[0] ?? "").filter((key) => !isReportKey(key))).toEqual([]);
	});
	it("codes among its values are said in the language", () => {
		const said = (language: (typeof LANGUAGES)[number]) =>
			say("packaging.corner-first-drop", { where: "top-left", peakGn: 41.25 }, language);
		expect(said("en")).toContain("on top-left the first drop would peak at 41.25 gₙ");
		expect(said("de")).toContain("„oben-links“ hätte der erste Fall einen Spitzenwert von 41,25\u00a0gₙ");
		expect(said("fr")).toContain("«\u00a0supérieure-gauche\u00a0», la première chute aurait un pic de 41,25\u00a0gₙ");
	});
});

describe("a speaker", () => {
	const [inEnglish, inGerman, inFrench] = LANGUAGES.map(speakerOf) as [
		ReturnType<typeof speakerOf>,
		ReturnType<typeof speakerOf>,
		ReturnType<typeof speakerOf>,
	];
	it("writes numbers with the decimal sign of its language, digits as typed", () => {
		expect([inEnglish, inGerman, inFrench].map(({ writeNumber }) => writeNumber(1234.5))).toEqual([
			"1235",
			"1235",
			"1235",
		]);
		expect([inEnglish, inGerman, inFrench].map(({ writeNumber }) => writeNumber(0.000_012_3))).toEqual([
			"1.23e-5",
			"1,23e-5",
			"1,23e-5",
		]);
		expect([inEnglish, inGerman, inFrench].map(({ writeDigits }) => writeDigits("1,230"))).toEqual([
			"1.230",
			"1,230",
			"1,230",
		]);
		expect(inGerman.writeDigits("-0.50")).toBe("-0,50");
		expect(inGerman.writeDigits("12")).toBe("12");
		expect([inEnglish, inGerman, inFrench].map(({ tick }) => tick(0.125))).toEqual(["0.125", "0,125", "0,125"]);
	});
	it("writes times by day, name of the month, year", () => {
		const at = "2026-03-01T12:05:00Z";
		expect(inEnglish.showTime(at, "+01:00")).toBe("1 Mar 2026, 13:05 (UTC+01:00)");
		expect(inGerman.showTime(at, "+01:00")).toBe("1. März 2026, 13:05 (UTC+01:00)");
		expect(inFrench.showTime(at, "+01:00")).toBe("1er mars 2026, 13:05 (UTC+01:00)");
	});
	it("calls a numbered impact by one word, where it is judged and where it is shown", () => {
		const values = { recording: 1, impact: 2, peakGn: 103, limitGn: 30 };
		for (const { say } of [inEnglish, inGerman, inFrench]) {
			const [word = ""] = /[\p{L}]+ 2/u.exec(say("report.recording-greatest", { number: 2 })) ?? [];
			expect(say("origin.recorded-peak", values).toLowerCase()).toContain(word.toLowerCase());
		}
	});
	it("sets the spaces of French, and keeps a number with its unit", () => {
		expect(inFrench.say("report.custody-seen", { what: "A", state: "B" })).toBe("A\u00a0: B");
		expect(inFrench.say("pack.own-points", { count: 3 })).not.toContain("\u00a0");
		expect(inFrench.say("comparison.ratio-within", { low: 0.9, high: 1.1, percent: 20 })).toContain("20\u202f%");
		expect(inGerman.say("pack.design", { designM: 0.76 })).toBe("Die Bemessungsfallhöhe ist 0,76\u00a0m.");
	});
});
