/** A pack on the page as the calculation's request. Lengths are typed in millimetres. What is missing is left out, so that the request's shape names it. */
import type { StockView } from "../../../contract/stock.ts";
import type { FieldErrors } from "../../components/form.tsx";
import type { Form } from "../../record-form/field.ts";
import { type FormReader, FROM_MILLIMETRES, formReader, given, readMoney } from "../../record-form/form-reader.ts";
import { AROUND, IN_GAP } from "./cushion-names.ts";
import { readCushions } from "./read-cushions.ts";
import { readItem } from "./read-item.ts";
import { BAG_LAYERS, takeFromStock } from "./take-from-stock.ts";

/** Rows of the form for drops of the shop's own, and for what lies inside the barrier. */
export const CORNER_DROPS = ["1", "2", "3"] as const;
export const DUNNAGE = ["1", "2"] as const;

export interface ReadPack {
	/** The form with what was taken from the stock. */
	readonly form: Form;
	/** In the request's shape as far as it could be read. */
	readonly request: { readonly item: unknown; readonly pack: unknown; readonly route: unknown };
	/** Fields that hold no number where one is needed. */
	readonly errors: FieldErrors;
	/** The form's field that filled the member at a JSON Pointer, where the names differ. */
	readonly fieldOf: Readonly<Record<string, string>>;
}

export function readPack(sent: Form, itemClass: string, stock: StockView): ReadPack {
	const form = takeFromStock(sent, stock);
	const reader = formReader(form);
	const request = {
		item: readItem(reader, itemClass),
		pack: given({
			box: readBox(reader, "box", "/pack/box"),
			faces: readCushions(reader, AROUND, stock),
			innerBox: hasInnerBox(form)
				? { ...readBox(reader, "inner", "/pack/innerBox"), faces: readCushions(reader, IN_GAP, stock) }
				: undefined,
			bagLayers: BAG_LAYERS.filter((place) => reader.text(`bag.${place}.kind`) !== "").map((place, index) =>
				readBagLayer(reader, place, `/pack/bagLayers/${index}`),
			),
			desiccantUnits: reader.number("pack.desiccantUnits", "/pack/desiccantUnits"),
			dunnage: readDunnage(reader),
			grossMassKg: reader.number("pack.grossMassKg", "/pack/grossMassKg"),
			closedHow: reader.text("pack.closedHow", "/pack/closedHow") || undefined,
			cornerDrops: readCornerDrops(reader),
		}),
		route: readRoute(reader),
	};
	return { form, request, errors: reader.errors, fieldOf: reader.fieldOf };
}

/** A box in the box: said by its sizes, since a cushion stands in the gap's fields from the start. */
function hasInnerBox(form: Form): boolean {
	return ["lengthMm", "widthMm", "heightMm"].some((side) => (form[`inner.${side}`] ?? "").trim() !== "");
}

export function readBox(reader: FormReader, prefix: string, pointer: string): Record<string, unknown> {
	return given({
		innerLengthM: reader.number(`${prefix}.lengthMm`, `${pointer}/innerLengthM`, FROM_MILLIMETRES),
		innerWidthM: reader.number(`${prefix}.widthMm`, `${pointer}/innerWidthM`, FROM_MILLIMETRES),
		innerHeightM: reader.number(`${prefix}.heightMm`, `${pointer}/innerHeightM`, FROM_MILLIMETRES),
		edgeCrushKNPerM: reader.number(`${prefix}.edgeCrushKNPerM`, `${pointer}/edgeCrushKNPerM`),
		caliperM: reader.number(`${prefix}.caliperMm`, `${pointer}/caliperM`, FROM_MILLIMETRES),
		reused: reader.ticked(`${prefix}.reused`),
	});
}

export function readBagLayer(reader: FormReader, place: string, pointer: string): Record<string, unknown> {
	const prefix = `bag.${place}`;
	return given({
		kind: reader.text(`${prefix}.kind`, `${pointer}/kind`),
		closed: reader.ticked(`${prefix}.closed`),
		intact: reader.ticked(`${prefix}.intact`),
		stapled: reader.ticked(`${prefix}.stapled`),
		reused: reader.ticked(`${prefix}.reused`),
		evidence: reader.text(`${prefix}.evidence`, `${pointer}/evidence`) || "none",
		shieldingNJ: reader.number(`${prefix}.shieldingNJ`, `${pointer}/shieldingNJ`),
	});
}

function readDunnage(reader: FormReader): unknown[] | undefined {
	const rows = DUNNAGE.filter((row) => reader.text(`dunnage.${row}.massG`) !== "");
	if (rows.length === 0) return undefined;
	return rows.map((row, index) =>
		given({
			kind: reader.text(`dunnage.${row}.kind`, `/pack/dunnage/${index}/kind`),
			massKg: reader.number(`dunnage.${row}.massG`, `/pack/dunnage/${index}/massKg`, 1e-3),
		}),
	);
}

function readCornerDrops(reader: FormReader): unknown[] | undefined {
	const members = ["dropHeightM", "peakGn", "sampleRateHz", "massKg"] as const;
	const rows = CORNER_DROPS.filter((row) => members.some((member) => reader.text(`drop.${row}.${member}`) !== ""));
	if (rows.length === 0) return undefined;
	return rows.map((row, index) => {
		const pointer = `/pack/cornerDrops/${index}`;
		return given({
			orientation: reader.text(`drop.${row}.orientation`, `${pointer}/orientation`) || "corner",
			...Object.fromEntries(
				members.map((member) => [member, reader.number(`drop.${row}.${member}`, `${pointer}/${member}`)]),
			),
		});
	});
}

function readRoute(reader: FormReader): Record<string, unknown> {
	return given({
		dropBasis: reader.text("route.dropBasis", "/route/dropBasis"),
		mode: reader.text("route.mode", "/route/mode"),
		transitDays: reader.number("route.transitDays", "/route/transitDays"),
		temperatureLowDegC: reader.number("route.temperatureLowDegC", "/route/temperatureLowDegC"),
		temperatureHighDegC: reader.number("route.temperatureHighDegC", "/route/temperatureHighDegC"),
		humidityPercent: reader.number("route.humidityPercent", "/route/humidityPercent"),
		vibrationProfileId: reader.text("route.vibrationProfileId", "/route/vibrationProfileId") || undefined,
		carrierCap: readMoney(reader, "route.cap", "/route/carrierCap"),
	});
}
