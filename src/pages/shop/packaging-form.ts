/** A pack on the page as the calculation's request, both ways. Lengths are typed in millimetres. */
import type { ItemView } from "../../contract/orders.ts";
import { FACES } from "../../contract/packaging.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors } from "../components/form.tsx";
import type { Form } from "../record-form/field.ts";
import { readNumber } from "../record-form/read-number.ts";

/** Layers of the bag that the page offers, from inside out. */
export const BAG_LAYERS = ["1", "2", "3"] as const;
/** Instead of a foam's id: a set of the user's own, or a foam of which nothing is known. */
export const OWN_FOAM = "own";
export const UNKNOWN_FOAM = "unknown";
/** A single face without any cushion. */
export const NO_CUSHION = "no-cushion";
/** More pads than this on one face are a slip; the request's shape says so. */
const MOST_PADS = 50;

/** What the page shows first: the item as the order knows it, one foam on all faces, a bag of which nothing is said. */
export function firstPackForm(item: ItemView): Form {
	const known: Readonly<Record<string, unknown>> = {
		"item.massKg": item.massKg,
		"item.lengthMm": inMillimetres(item.lengthM),
		"item.widthMm": inMillimetres(item.widthM),
		"item.heightMm": inMillimetres(item.heightM),
		"item.cell": item.cell ?? "none",
		"item.gn": item.fragilityGn,
		"item.basis": item.fragilityBasis,
	};
	return {
		...Object.fromEntries(
			Object.entries(known).flatMap(([name, value]) => (value === undefined ? [] : [[name, String(value)]])),
		),
		"route.dropBasis": "din-55439",
		"route.mode": "road",
		"route.transitDays": "2",
		"cushion.foam": "pe-plank-23c",
		"bag.1.kind": "shielding-metal-in",
		"bag.1.evidence": "none",
	};
}

export interface ReadPack {
	/** In the request's shape as far as it could be read. */
	readonly request: unknown;
	/** Fields that hold no number where one is needed. */
	readonly errors: FieldErrors;
	/** The form's field that filled the member at a JSON Pointer, where the names differ. */
	readonly fieldOf: Readonly<Record<string, string>>;
}

/** Reads the form. What is missing is left out, so that the request's shape names it. */
export function readPack(form: Form, itemClass: string): ReadPack {
	const errors: Record<string, string> = {};
	const text = (name: string) => (form[name] ?? "").trim();
	const ticked = (name: string) => text(name) === "yes";
	const number = (name: string, factor = 1) => {
		const typed = text(name);
		if (typed === "") return undefined;
		const read = readNumber(typed);
		if (read === null) errors[name] = say("pack.not-a-number", { typed: typed.slice(0, 40) });
		return read === null ? undefined : Number((read.value * factor).toPrecision(12));
	};
	const millimetres = (name: string) => number(name, 1e-3);

	const foam = (prefix: string) => {
		const chosen = text(`${prefix}.foam`);
		if (chosen === UNKNOWN_FOAM) return { unknown: true };
		if (chosen !== OWN_FOAM) return { id: chosen };
		const own = { aKPa: number(`${prefix}.aKPa`), bPerKPa: number(`${prefix}.bPerKPa`) };
		for (const [member, value] of Object.entries(own)) {
			const field = `${prefix}.${member}`;
			if (value === undefined) errors[field] ??= say("pack.own-missing");
			else if (!(value > 0)) errors[field] ??= say("pack.own-not-positive");
		}
		return { model: "stress-energy", ...given(own) };
	};
	const bearing = (prefix: string) => {
		const names = ["padCount", "padLengthMm", "padWidthMm"].map((name) => `${prefix}.${name}`);
		if (names.every((name) => text(name) === "")) return { fullFace: true };
		const [countName = "", lengthName = "", widthName = ""] = names;
		const count = number(countName);
		const pad = given({ lengthM: millimetres(lengthName), widthM: millimetres(widthName) });
		if (count === undefined || !Number.isInteger(count) || count < 1) {
			errors[countName] ??= say("pack.pad-count-wrong");
			return { pads: [pad] };
		}
		return { pads: Array.from({ length: Math.min(count, MOST_PADS + 1) }, () => pad) };
	};
	const prefixOf = (face: string) => (text(`face.${face}.foam`) === "" ? "cushion" : `face.${face}`);
	const layers = (prefix: string) =>
		text(`${prefix}.foam`) === NO_CUSHION
			? []
			: [given({ foam: foam(prefix), thicknessM: millimetres(`${prefix}.thicknessMm`), ...bearing(prefix) })];
	const gn = number("item.gn");

	const request = {
		item: given({
			class: itemClass,
			massKg: number("item.massKg"),
			lengthM: millimetres("item.lengthMm"),
			widthM: millimetres("item.widthMm"),
			heightM: millimetres("item.heightMm"),
			fragility: gn === undefined ? undefined : { gn, basis: text("item.basis") || "our-choice" },
			cell: text("item.cell") || "none",
			edgesPadded: ticked("item.edgesPadded"),
			connectorsCapped: ticked("item.connectorsCapped"),
			makerDeclaresNotSensitive: ticked("item.makerDeclaresNotSensitive"),
		}),
		pack: given({
			box: given({
				innerLengthM: millimetres("box.lengthMm"),
				innerWidthM: millimetres("box.widthMm"),
				innerHeightM: millimetres("box.heightMm"),
				reused: ticked("box.reused"),
			}),
			faces: Object.fromEntries(FACES.map((face) => [face, { layers: layers(prefixOf(face)) }])),
			bagLayers: BAG_LAYERS.filter((place) => text(`bag.${place}.kind`) !== "").map((place) => ({
				kind: text(`bag.${place}.kind`),
				closed: ticked(`bag.${place}.closed`),
				intact: ticked(`bag.${place}.intact`),
				stapled: ticked(`bag.${place}.stapled`),
				reused: ticked(`bag.${place}.reused`),
				evidence: text(`bag.${place}.evidence`) || "none",
			})),
			grossMassKg: number("pack.grossMassKg"),
			closedHow: text("pack.closedHow") || undefined,
		}),
		route: given({
			dropBasis: text("route.dropBasis"),
			mode: text("route.mode"),
			transitDays: number("route.transitDays"),
		}),
	};
	return { request, errors, fieldOf: { ...PLAIN_FIELDS, ...faceFields(prefixOf) } };
}

const PLAIN_FIELDS: Readonly<Record<string, string>> = {
	"/item/lengthM": "item.lengthMm",
	"/item/widthM": "item.widthMm",
	"/item/heightM": "item.heightMm",
	"/item/fragility/gn": "item.gn",
	"/item/fragility/basis": "item.basis",
	"/pack/box/innerLengthM": "box.lengthMm",
	"/pack/box/innerWidthM": "box.widthMm",
	"/pack/box/innerHeightM": "box.heightMm",
};

function faceFields(prefixOf: (face: string) => string): Record<string, string> {
	return Object.fromEntries(
		FACES.flatMap((face) => {
			const [member, field] = [`/pack/faces/${face}/layers/0`, prefixOf(face)];
			const pads = Array.from({ length: MOST_PADS + 1 }, (_, index) => `${member}/pads/${index}`);
			return [
				[`${member}/thicknessM`, `${field}.thicknessMm`],
				[`${member}/pads`, `${field}.padCount`],
				...pads.flatMap((pad) => [
					[`${pad}/lengthM`, `${field}.padLengthMm`],
					[`${pad}/widthM`, `${field}.padWidthMm`],
				]),
				[`${member}/foam`, `${field}.foam`],
				[`${member}/foam/id`, `${field}.foam`],
				[`${member}/foam/aKPa`, `${field}.aKPa`],
				[`${member}/foam/bPerKPa`, `${field}.bPerKPa`],
			];
		}),
	);
}

function given(members: Readonly<Record<string, unknown>>): Record<string, unknown> {
	return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
}

function inMillimetres(metres: number | undefined): number | undefined {
	return metres === undefined ? undefined : Number((metres * 1000).toPrecision(12));
}
