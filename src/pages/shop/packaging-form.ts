/** A pack on the page as the calculation's request, both ways. Lengths are typed in millimetres. */

import type { ItemView } from "../../contract/orders.ts";
import { FACES } from "../../contract/packaging.ts";
import type { Form } from "../record-form/field.ts";
import { readNumber } from "../record-form/read-number.ts";

/** Layers of the bag that the page offers, from inside out. */
export const BAG_LAYERS = ["1", "2"] as const;

/** What the page shows first: the item as the order knows it, one foam on all faces, one shielding bag. */
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
		"bag.1.evidence": "data-sheet",
		"bag.1.closed": "yes",
		"bag.1.intact": "yes",
	};
}

/** The form as the request's shape; a number that cannot be read stays as typed, so that the shape names it. */
export function packRequest(form: Form, itemClass: string): unknown {
	const text = (name: string) => (form[name] ?? "").trim();
	const number = (name: string, factor = 1) => {
		const typed = text(name);
		if (typed === "") return undefined;
		const read = readNumber(typed);
		return read === null ? typed : Number((read.value * factor).toPrecision(12));
	};
	const millimetres = (name: string) => number(name, 1e-3);
	const layer = (prefix: string) => {
		const foam = text(`${prefix}.foam`);
		const count = number(`${prefix}.padCount`);
		const pad = { lengthM: millimetres(`${prefix}.padLengthMm`), widthM: millimetres(`${prefix}.padWidthMm`) };
		return {
			foam: foam === "unknown" ? { unknown: true } : { id: foam },
			thicknessM: millimetres(`${prefix}.thicknessMm`),
			...(typeof count === "number" && count > 0
				? { pads: Array.from({ length: Math.min(Math.trunc(count), 50) }, () => pad) }
				: { fullFace: true }),
		};
	};
	const faceOf = (face: string) => ({ layers: [layer(text(`face.${face}.foam`) === "" ? "cushion" : `face.${face}`)] });
	const gn = number("item.gn");
	const bag = BAG_LAYERS.filter((place) => text(`bag.${place}.kind`) !== "").map((place) => ({
		kind: text(`bag.${place}.kind`),
		closed: text(`bag.${place}.closed`) === "yes",
		intact: text(`bag.${place}.intact`) === "yes",
		evidence: text(`bag.${place}.evidence`) || "none",
	}));
	const only = (members: Readonly<Record<string, unknown>>) =>
		Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
	return {
		item: only({
			class: itemClass,
			massKg: number("item.massKg"),
			lengthM: millimetres("item.lengthMm"),
			widthM: millimetres("item.widthMm"),
			heightM: millimetres("item.heightMm"),
			fragility: gn === undefined ? undefined : { gn, basis: text("item.basis") || "our-choice" },
			cell: text("item.cell") || "none",
			edgesPadded: text("item.edgesPadded") === "yes",
		}),
		pack: only({
			box: {
				innerLengthM: millimetres("box.lengthMm"),
				innerWidthM: millimetres("box.widthMm"),
				innerHeightM: millimetres("box.heightMm"),
				reused: text("box.reused") === "yes",
			},
			faces: Object.fromEntries(FACES.map((face) => [face, faceOf(face)])),
			bagLayers: bag,
			grossMassKg: number("pack.grossMassKg"),
			closedHow: text("pack.closedHow") === "" ? undefined : text("pack.closedHow"),
		}),
		route: { dropBasis: text("route.dropBasis"), mode: text("route.mode"), transitDays: number("route.transitDays") },
	};
}

/** Names of fields by the JSON Pointer of the member that they fill. */
export const FIELD_OF_MEMBER: Readonly<Record<string, string>> = {
	"/item/lengthM": "item.lengthMm",
	"/item/widthM": "item.widthMm",
	"/item/heightM": "item.heightMm",
	"/item/fragility/gn": "item.gn",
	"/pack/box/innerLengthM": "box.lengthMm",
	"/pack/box/innerWidthM": "box.widthMm",
	"/pack/box/innerHeightM": "box.heightMm",
	...Object.fromEntries(
		FACES.flatMap((face) => [
			[`/pack/faces/${face}/layers/0/thicknessM`, "cushion.thicknessMm"],
			[`/pack/faces/${face}/layers/0/pads/0/lengthM`, "cushion.padLengthMm"],
			[`/pack/faces/${face}/layers/0/pads/0/widthM`, "cushion.padWidthMm"],
			[`/pack/faces/${face}/layers/0/foam/id`, "cushion.foam"],
		]),
	),
};

function inMillimetres(metres: number | undefined): number | undefined {
	return metres === undefined ? undefined : Number((metres * 1000).toPrecision(12));
}
