/** The order of the questions, against the routing test of the reference page on claims (post, air, road, rail, law of the leg). */
import { describe, expect, it } from "vitest";
import { type CarriageFacts, suggestRegime } from "../../../src/calculations/claims/suggest-regime.ts";

const leg = (facts: Partial<CarriageFacts>): CarriageFacts => ({
	from: "AT",
	to: "DE",
	mode: "road",
	byPost: null,
	airLeg: null,
	...facts,
});
const regimeOf = (facts: Partial<CarriageFacts>) => suggestRegime(leg(facts)).regime;

describe("the regime suggested", () => {
	it.each([
		["post between states before anything else", { byPost: true, mode: "air" }, "upu"],
		["air between states", { mode: "air" }, "montreal"],
		["an air leg of a mixed way", { mode: "mixed", airLeg: true }, "montreal"],
		["a parcel on the road that flew", { airLeg: true }, "montreal"],
		["road between states", {}, "cmr"],
		["road in the United Kingdom's trade, ferry or not", { from: "GB" }, "cmr"],
		["rail between states", { mode: "rail" }, "cim"],
		["sea between states: nothing read", { mode: "sea" }, null],
		["Germany", { from: "DE" }, "de-hgb"],
		["Germany, by air", { from: "DE", mode: "air" }, "de-hgb"],
		["the Netherlands", { from: "NL", to: "NL" }, "nl-road"],
		["the Netherlands, by rail: nothing read", { from: "NL", to: "NL", mode: "rail" }, null],
		["France", { from: "FR", to: "FR" }, "fr-road"],
		["France, by post", { from: "FR", to: "FR", byPost: true }, "fr-post"],
		["Germany, by post: nothing read", { from: "DE", byPost: true }, null],
		["Switzerland", { from: "CH", to: "CH" }, "ch-or"],
		["the United Kingdom", { from: "GB", to: "GB" }, "uk-domestic"],
		["the United States", { from: "US", to: "US" }, "us-motor"],
		["a country without rules here", { from: "PL", to: "PL" }, null],
		["carried by hand", { mode: "carried-by-hand" }, null],
	] as const)("%s", (_, facts, expected) => {
		expect(regimeOf(facts)).toBe(expected);
	});

	it("asks up to the first yes, and says what is open", () => {
		expect(suggestRegime(leg({ mode: "mixed" })).steps).toEqual([
			{ question: "post", answer: "open" },
			{ question: "air", answer: "open" },
			{ question: "road", answer: "yes" },
		]);
		expect(suggestRegime(leg({ from: "DE", byPost: true })).steps.map(({ answer }) => answer)).toEqual([
			"no",
			"no",
			"no",
			"no",
			"yes",
		]);
	});
});
