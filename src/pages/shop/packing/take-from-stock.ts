/** Fills a form with what was chosen from the stock: a box's sizes, a bag's layers, a sheet's thickness. */
import type { StockView } from "../../../contract/stock.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import type { Form } from "../../record-form/field.ts";
import { AROUND, FROM_STOCK, IN_GAP, prefixesOf } from "./cushion-names.ts";

/** Layers of the bag that the page offers, from inside out. */
export const BAG_LAYERS = ["1", "2", "3"] as const;

export function takeFromStock(form: Form, stock: StockView): Form {
	const taken: Record<string, string> = { ...form };
	for (const prefix of ["box", "inner"]) {
		const box = stock.boxes.find(({ id }) => id === form[`${prefix}.take`]);
		if (box !== undefined) Object.assign(taken, boxFields(prefix, box));
	}
	const bag = stock.bags.find(({ id }) => id === form["bag.take"]);
	if (bag !== undefined) Object.assign(taken, bagFields(bag));
	for (const prefix of [AROUND, IN_GAP].flatMap(prefixesOf)) {
		for (const [foam, thickness] of [
			["foam", "thicknessMm"],
			["secondFoam", "secondThicknessMm"],
		] as const) {
			const chosen = form[`${prefix}.${foam}`] ?? "";
			const sheet = stock.foams.find(({ id }) => chosen === FROM_STOCK + id);
			const field = `${prefix}.${thickness}`;
			if (sheet !== undefined && (form[field] ?? "").trim() === "") taken[field] = inMillimetres(sheet.thicknessM);
		}
	}
	return taken;
}

/** Fields of a box; `take` is empty again, so that sizes changed later count. */
export function boxFields(prefix: string, box: StockView["boxes"][number]): Record<string, string> {
	return {
		[`${prefix}.take`]: "",
		[`${prefix}.lengthMm`]: inMillimetres(box.innerLengthM),
		[`${prefix}.widthMm`]: inMillimetres(box.innerWidthM),
		[`${prefix}.heightMm`]: inMillimetres(box.innerHeightM),
		[`${prefix}.edgeCrushKNPerM`]: box.edgeCrushKNPerM === undefined ? "" : String(box.edgeCrushKNPerM),
		[`${prefix}.caliperMm`]: box.caliperM === undefined ? "" : inMillimetres(box.caliperM),
		[`${prefix}.reused`]: box.reused ? "yes" : "",
	};
}

/** Fields of a bag's layers; those that it has not are emptied. */
export function bagFields(bag: StockView["bags"][number]): Record<string, string> {
	const fields: Record<string, string> = { "bag.take": "" };
	for (const [index, place] of BAG_LAYERS.entries()) {
		const layer = bag.layers[index];
		fields[`bag.${place}.kind`] = layer?.kind ?? "";
		fields[`bag.${place}.evidence`] = layer?.evidence ?? "none";
		fields[`bag.${place}.shieldingNJ`] = layer?.shieldingNJ === undefined ? "" : String(layer.shieldingNJ);
		for (const said of ["closed", "intact", "stapled", "reused"] as const)
			fields[`bag.${place}.${said}`] = layer?.[said] === true ? "yes" : "";
	}
	return fields;
}
