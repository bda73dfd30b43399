/**
 * Whether the layers around an item protect it from static on its way, outside a protected area: low charging, dissipative
 * contact, discharge shielding (ANSI/ESD S541, clause 6.2, as quoted). The split by board, module and card is our choice.
 */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { cite } from "../sources.ts";

export const LAYER_KINDS = [
	"shielding-metal-in",
	"shielding-metal-out",
	"moisture-barrier",
	"dissipative",
	"low-charging-film",
	"conductive-film",
	"plain-film",
	"bubble-plain",
	"bubble-low-charging",
	"none",
	"kitchen-foil",
] as const;
export type LayerKind = (typeof LAYER_KINDS)[number];

export interface StaticLayer {
	readonly kind: LayerKind;
	readonly closed: boolean;
	readonly intact: boolean;
	readonly stapled?: boolean | undefined;
	readonly reused?: boolean | undefined;
	readonly evidence: "measured" | "data-sheet" | "looks-like" | "none";
	/** Energy let through in the bag test, nJ, and the edition whose limit it is held against. */
	readonly shieldingNJ?: number | undefined;
	readonly edition?: string | undefined;
	readonly surfaceResistanceOhm?: number | undefined;
}

export interface StaticProtectionInput {
	readonly item: "board" | "module" | "populated-card";
	/** From inside out. */
	readonly layers: readonly StaticLayer[];
	readonly makerDeclaresNotSensitive?: boolean | undefined;
	readonly connectorsCapped?: boolean | undefined;
	readonly edgesPadded?: boolean | undefined;
	readonly cell: "none" | "coin" | "lithium-ion" | "supercapacitor";
}

export type TestOutcome = "pass" | "fail" | "unproven";

export interface StaticProtection {
	readonly verdict: "acceptable" | "conditional" | "not-acceptable";
	readonly tests: {
		readonly lowCharging: TestOutcome;
		readonly dissipativeContact: TestOutcome;
		readonly dischargeShielding: TestOutcome;
	};
	/** What the request leaves open, or what stands against it. */
	readonly conditions: readonly Sentence[];
	readonly evidence: "verified" | "declared" | "assumed" | "unknown";
}

/** Surface resistance, Ω: below is conductive, from here on insulative. Source: published, ANSI/ESD S541 table 3, as quoted. */
const CONDUCTIVE_BELOW_OHM = 1e4;
const INSULATIVE_FROM_OHM = 1e11;
/** Energy let through, nJ, by edition. Source: published, ANSI/ESD S541-2018 and IEC 61340-5-3:2022: 20; earlier: 50; as quoted. */
const SHIELDING_LIMIT_NJ = 20;
const EARLIER_LIMIT_NJ = 50;
const FIRST_STRICT_YEAR = 2018;

const SHIELDS: readonly LayerKind[] = ["shielding-metal-in", "shielding-metal-out", "moisture-barrier"];
const S541 = cite("ansi-esd-s541", "clause 6.2 and table 1: outside a protected area; table 3: limits", "published");
const SPLIT = cite("our-choice", "decision by board, module and populated card", "our-choice");

export function staticProtection(input: StaticProtectionInput): Judged<StaticProtection> {
	const contact = input.layers.find((layer) => layer.kind !== "none");
	const shield =
		input.layers.find((layer) => shieldingOf(layer) === "pass") ??
		input.layers.find((layer) => shieldingOf(layer) === "unproven");
	const tests = {
		lowCharging: contact === undefined ? ("fail" as const) : lowChargingOf(contact),
		dissipativeContact: contact === undefined ? ("fail" as const) : contactOf(contact),
		dischargeShielding: shield === undefined ? ("fail" as const) : shieldingOf(shield),
	};
	const against = againstOf(input, contact, tests);
	const open = openOf(input, contact, shield, tests);
	const evidence = evidenceOf(shield ?? contact);
	return assessed<StaticProtection>(
		{
			verdict: against.length > 0 ? "not-acceptable" : open.length > 0 ? "conditional" : "acceptable",
			tests,
			conditions: [...against, ...open],
			evidence,
		},
		{ cautions: [sentence("static.caution-bench")], sources: [S541, SPLIT] },
	);
}

/** What rules the packing out, whatever else is true: each of the three tests that fails, and what harms by itself. */
function againstOf(
	input: StaticProtectionInput,
	contact: StaticLayer | undefined,
	tests: StaticProtection["tests"],
): Sentence[] {
	const against: Sentence[] = [];
	const sensitive = !declaredInsensitive(input);
	if (tests.dischargeShielding === "fail" && sensitive) against.push(sentence("static.no-shielding"));
	if (contact?.kind === "kitchen-foil") against.push(sentence("static.kitchen-foil"));
	if (contact !== undefined && isConductive(contact) && input.cell !== "none")
		against.push(sentence("static.shorts-cell"));
	if (contact !== undefined && contact.kind !== "kitchen-foil" && sensitive) {
		if (tests.lowCharging === "fail") against.push(sentence("static.charging-contact"));
		else if (tests.dissipativeContact === "fail") against.push(sentence("static.insulating-contact"));
	}
	return against;
}

/** A closed module that its maker declares not sensitive, connectors capped, needs no shield. */
function declaredInsensitive(input: StaticProtectionInput): boolean {
	return input.item === "module" && input.makerDeclaresNotSensitive === true;
}

/** Conditions that the request leaves open. */
function openOf(
	input: StaticProtectionInput,
	contact: StaticLayer | undefined,
	shield: StaticLayer | undefined,
	tests: StaticProtection["tests"],
): Sentence[] {
	const open: Sentence[] = [];
	if (declaredInsensitive(input) && tests.dischargeShielding !== "pass") {
		open.push(sentence(input.connectorsCapped === true ? "static.declared" : "static.cap-connectors"));
		return open;
	}
	if (tests.dischargeShielding === "unproven") open.push(sentence("static.shield-unproven"));
	if (tests.lowCharging === "unproven" || tests.dissipativeContact === "unproven") {
		// An inner wrap of low-charging film inside a proven shield is what the table asks for.
		if (!(contact !== undefined && shield !== undefined && contact !== shield && tests.dischargeShielding === "pass")) {
			open.push(sentence("static.contact-unproven"));
		}
	}
	if (input.item === "populated-card" && shield !== undefined && input.edgesPadded !== true)
		open.push(sentence("static.pad-edges"));
	if (shield?.reused === true) open.push(sentence("static.reused"));
	return open;
}

function lowChargingOf(layer: StaticLayer): TestOutcome {
	if (["plain-film", "bubble-plain", "none"].includes(layer.kind)) return "fail";
	return ["low-charging-film", "bubble-low-charging"].includes(layer.kind) &&
		layer.evidence !== "measured" &&
		layer.evidence !== "data-sheet"
		? "unproven"
		: "pass";
}

/** Whether a charge can flow away through the layer that touches the item. */
export function contactOf(layer: StaticLayer): TestOutcome {
	const resistance = layer.surfaceResistanceOhm;
	if (resistance !== undefined) return resistance < INSULATIVE_FROM_OHM ? "pass" : "fail";
	if (["plain-film", "bubble-plain", "none"].includes(layer.kind)) return "fail";
	if (layer.kind === "kitchen-foil") return "fail";
	return ["low-charging-film", "bubble-low-charging"].includes(layer.kind) ? "unproven" : "pass";
}

/** A hole, an open mouth or a staple lets a discharge through; without a data sheet or a measurement the shield is a claim. */
function shieldingOf(layer: StaticLayer): TestOutcome {
	const claims = SHIELDS.includes(layer.kind) || (layer.kind === "conductive-film" && layer.shieldingNJ !== undefined);
	if (!claims || !layer.closed || !layer.intact || layer.stapled === true) return "fail";
	if (layer.shieldingNJ !== undefined && !(layer.shieldingNJ < limitOf(layer.edition))) return "fail";
	return layer.evidence === "data-sheet" || layer.evidence === "measured" ? "pass" : "unproven";
}

function limitOf(edition: string | undefined): number {
	const year = Number(/(19|20)\d\d/.exec(edition ?? "")?.[0] ?? FIRST_STRICT_YEAR);
	return year >= FIRST_STRICT_YEAR ? SHIELDING_LIMIT_NJ : EARLIER_LIMIT_NJ;
}

/** Whether a layer would short what touches it. */
export function isConductive(layer: StaticLayer): boolean {
	if (layer.surfaceResistanceOhm !== undefined) return layer.surfaceResistanceOhm < CONDUCTIVE_BELOW_OHM;
	return layer.kind === "conductive-film" || layer.kind === "kitchen-foil";
}

function evidenceOf(layer: StaticLayer | undefined): StaticProtection["evidence"] {
	if (layer === undefined) return "unknown";
	if (layer.reused === true) return "assumed";
	return ({ measured: "verified", "data-sheet": "declared", "looks-like": "assumed", none: "unknown" } as const)[
		layer.evidence
	];
}
