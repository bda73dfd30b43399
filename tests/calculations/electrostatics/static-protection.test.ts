/** Decision cases of the static page (clause 6.2 of ANSI/ESD S541 as quoted; the split by item is our choice) and the contract's examples. */
import { describe, expect, it } from "vitest";
import {
	type StaticLayer,
	type StaticProtectionInput,
	staticProtection,
} from "../../../src/calculations/electrostatics/static-protection.ts";

const layer = (kind: StaticLayer["kind"], more: Partial<StaticLayer> = {}): StaticLayer => ({
	kind,
	closed: true,
	intact: true,
	evidence: "data-sheet",
	...more,
});
const judge = (
	item: StaticProtectionInput["item"],
	layers: readonly StaticLayer[],
	more: Partial<StaticProtectionInput> = {},
) => staticProtection({ item, layers, cell: "none", ...more }).result?.verdict;
const pink = layer("low-charging-film", { evidence: "looks-like" });

describe("static protection outside a protected area", () => {
	it.each([
		["card, low-charging film alone", "populated-card", [pink], {}, "not-acceptable"],
		[
			"the same film inside a closed shield with a data sheet, edges padded",
			"populated-card",
			[pink, layer("shielding-metal-in")],
			{ edgesPadded: true },
			"acceptable",
		],
		["edges not padded", "populated-card", [layer("shielding-metal-in")], {}, "conditional"],
		["board, metal in, closed, intact", "board", [layer("shielding-metal-in")], {}, "acceptable"],
		["board, stapled", "board", [layer("shielding-metal-in", { stapled: true })], {}, "not-acceptable"],
		["board, open bag", "board", [layer("shielding-metal-in", { closed: false })], {}, "not-acceptable"],
		["board, bag with a hole", "board", [layer("shielding-metal-in", { intact: false })], {}, "not-acceptable"],
		[
			"board with a coin cell, black conductive in contact",
			"board",
			[layer("conductive-film"), layer("shielding-metal-in")],
			{ cell: "coin" },
			"not-acceptable",
		],
		[
			"module, plain film, maker declares it not sensitive",
			"module",
			[layer("plain-film")],
			{ makerDeclaresNotSensitive: true, connectorsCapped: true },
			"conditional",
		],
		[
			"board in plain bubble inside a shield",
			"board",
			[layer("bubble-plain"), layer("shielding-metal-in")],
			{},
			"not-acceptable",
		],
		["board in kitchen foil", "board", [layer("kitchen-foil")], {}, "not-acceptable"],
		["nothing at all", "board", [], {}, "not-acceptable"],
		[
			"shield that only looks like one",
			"board",
			[layer("shielding-metal-in", { evidence: "looks-like" })],
			{},
			"conditional",
		],
		["a bag that was used before", "board", [layer("shielding-metal-in", { reused: true })], {}, "conditional"],
		// Fail closed: what fails one of the three tests of clause 6.2 is never made good by the other two.
		[
			"module in plain film inside a shield, not declared",
			"module",
			[layer("plain-film"), layer("shielding-metal-in")],
			{},
			"not-acceptable",
		],
		[
			"board, contact layer measured at 1e11 Ω, where insulative begins",
			"board",
			[layer("dissipative", { surfaceResistanceOhm: 1e11 }), layer("shielding-metal-in")],
			{},
			"not-acceptable",
		],
		[
			"board, contact layer just below it",
			"board",
			[layer("dissipative", { surfaceResistanceOhm: 9.9e10 }), layer("shielding-metal-in")],
			{},
			"acceptable",
		],
		[
			"a shielding figure that nothing proves",
			"board",
			[layer("shielding-metal-in", { shieldingNJ: 5, evidence: "none" })],
			{},
			"conditional",
		],
		[
			"a proven shield outside an unproven one",
			"board",
			[layer("shielding-metal-in", { evidence: "looks-like" }), layer("shielding-metal-in")],
			{},
			"acceptable",
		],
	] as const)("%s: %s", (_, item, layers, more, verdict) => {
		expect(judge(item, layers, more)).toBe(verdict);
	});
	// RS: below 1e4 Ω conductive, from 1e4 to below 1e11 Ω dissipative, from 1e11 Ω insulative (table 3 as quoted).
	it.each([
		[9900, "not-acceptable"],
		[10_000, "acceptable"],
		[9.9e10, "acceptable"],
		[1e11, "not-acceptable"],
	])("RS: a contact layer of %d Ω on a board with a coin cell: %s", (surfaceResistanceOhm, verdict) => {
		const layers = [layer("dissipative", { surfaceResistanceOhm }), layer("shielding-metal-in")];
		expect(judge("board", layers, { cell: "coin" })).toBe(verdict);
	});
	it("EN: 35 nJ passes the limit of 2015 and not that of 2022", () => {
		expect(judge("board", [layer("shielding-metal-in", { shieldingNJ: 35, edition: "IEC 61340-5-3:2015" })])).toBe(
			"acceptable",
		);
		expect(judge("board", [layer("shielding-metal-in", { shieldingNJ: 35, edition: "IEC 61340-5-3:2022" })])).toBe(
			"not-acceptable",
		);
	});
});
