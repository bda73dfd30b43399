/** The cushions of a form as a request's faces. */
import { FACES } from "../../../contract/packaging.ts";
import type { StockView } from "../../../contract/stock.ts";
import { say } from "../../../texts/say.ts";
import { type FormReader, FROM_MILLIMETRES, given } from "../../record-form/form-reader.ts";
import { type CushionPlace, FROM_STOCK, NO_CUSHION, OWN_FOAM, UNKNOWN_FOAM } from "./cushion-names.ts";

/** More pads than this on one face are a slip; the request's shape says so. */
const MOST_PADS = 50;

export function readCushions(reader: FormReader, place: CushionPlace, stock: StockView): Record<string, unknown> {
	return Object.fromEntries(
		FACES.map((face) => {
			const own = place.face(face);
			const prefix = reader.text(`${own}.foam`) === "" ? place.all : own;
			return [face, { layers: layersOf(reader, prefix, `${place.pointer}/${face}/layers`, stock) }];
		}),
	);
}

/** From the item outwards: a first foam, and a second one below it where one is chosen; both cut to the same pads. */
function layersOf(reader: FormReader, prefix: string, pointer: string, stock: StockView): unknown[] {
	if (reader.text(`${prefix}.foam`) === NO_CUSHION) return [];
	const bearing = (index: number) => bearingOf(reader, prefix, `${pointer}/${index}`);
	const first = given({
		foam: foamOf(reader, prefix, "foam", `${pointer}/0/foam`, stock),
		thicknessM: reader.number(`${prefix}.thicknessMm`, `${pointer}/0/thicknessM`, FROM_MILLIMETRES),
		...bearing(0),
	});
	if (reader.text(`${prefix}.secondFoam`) === "") return [first];
	const second = given({
		foam: foamOf(reader, prefix, "secondFoam", `${pointer}/1/foam`, stock),
		thicknessM: reader.number(`${prefix}.secondThicknessMm`, `${pointer}/1/thicknessM`, FROM_MILLIMETRES),
		...bearing(1),
	});
	return [first, second];
}

function foamOf(reader: FormReader, prefix: string, name: string, pointer: string, stock: StockView): unknown {
	const field = `${prefix}.${name}`;
	const chosen = reader.text(field, pointer);
	reader.fills(field, `${pointer}/id`);
	if (chosen === UNKNOWN_FOAM) return { unknown: true };
	if (chosen.startsWith(FROM_STOCK)) {
		const sheet = stock.foams.find(({ id }) => id === chosen.slice(FROM_STOCK.length));
		if (sheet === undefined) reader.wrong(field, say("pack.not-in-stock"));
		return sheet?.foam;
	}
	return chosen === OWN_FOAM ? ownFoam(reader, prefix, pointer) : { id: chosen };
}

function ownFoam(reader: FormReader, prefix: string, pointer: string): unknown {
	const own = {
		aKPa: reader.number(`${prefix}.aKPa`, `${pointer}/aKPa`),
		bPerKPa: reader.number(`${prefix}.bPerKPa`, `${pointer}/bPerKPa`),
	};
	for (const [member, value] of Object.entries(own)) {
		if (value === undefined) reader.wrong(`${prefix}.${member}`, say("pack.own-missing"));
		else if (!(value > 0)) reader.wrong(`${prefix}.${member}`, say("pack.own-not-positive"));
	}
	return { model: "stress-energy", ...given(own) };
}

function bearingOf(reader: FormReader, prefix: string, pointer: string): Record<string, unknown> {
	const [countName, lengthName, widthName] = [`${prefix}.padCount`, `${prefix}.padLengthMm`, `${prefix}.padWidthMm`];
	if ([countName, lengthName, widthName].every((name) => reader.text(name) === "")) return { fullFace: true };
	reader.fills(countName, `${pointer}/pads`);
	const count = reader.number(countName, `${pointer}/pads`);
	const pads = Array.from({ length: MOST_PADS + 1 }, (_, index) =>
		given({
			lengthM: reader.number(lengthName, `${pointer}/pads/${index}/lengthM`, FROM_MILLIMETRES),
			widthM: reader.number(widthName, `${pointer}/pads/${index}/widthM`, FROM_MILLIMETRES),
		}),
	);
	if (count === undefined || !Number.isInteger(count) || count < 1) {
		reader.wrong(countName, say("pack.pad-count-wrong"));
		return { pads: pads.slice(0, 1) };
	}
	return { pads: pads.slice(0, count) };
}
