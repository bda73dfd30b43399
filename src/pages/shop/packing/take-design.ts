/** A pack that a search found, as fields of the planner: taken by a button that carries them. */
import { z } from "zod";
import type { PackagingSearchAnswer } from "../../../contract/packaging-search.ts";
import type { StockView } from "../../../contract/stock.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import type { Form } from "../../record-form/field.ts";
import { AROUND, type CushionPlace, FROM_STOCK, IN_GAP, NO_CUSHION } from "./cushion-names.ts";
import { bagFields, boxFields } from "./take-from-stock.ts";

type Found = Extract<PackagingSearchAnswer, { status: "assessed" }>["result"];
export type Design = Found["designs"][number];
type Cushion = Design["axes"]["length"]["around"];

/** What a design replaces, by the beginnings of names; item and trip stay as they were typed. */
const REPLACED = ["box.", "inner.", "bag.", "cushion.", "face.", "gap.", "gapFace.", "drop."];
const carried = z.record(z.string().max(60), z.string().max(200));

/** The form with the design that it carries in `take`; the form itself where it carries none. */
export function takeDesign(form: Form): Form {
	const { take, ...rest } = form;
	if (take === undefined) return form;
	const fields = carried.safeParse(jsonOf(take));
	if (!fields.success) return rest;
	const kept = Object.entries(rest).filter(([name]) => !isReplaced(name));
	return {
		...Object.fromEntries(kept),
		...Object.fromEntries(Object.entries(fields.data).filter(([name]) => isReplaced(name))),
	};
}

function isReplaced(name: string): boolean {
	return REPLACED.some((start) => name.startsWith(start));
}

function jsonOf(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return null;
	}
}

/** The fields that describe a design. */
export function fieldsOfDesign({ boxId, innerBoxId, bagId, axes }: Design, stock: StockView): Record<string, string> {
	const box = stock.boxes.find(({ id }) => id === boxId);
	const inner = stock.boxes.find(({ id }) => id === innerBoxId);
	const bag = stock.bags.find(({ id }) => id === bagId);
	const cushions = (place: CushionPlace, pick: (axis: Design["axes"]["length"]) => Cushion) => ({
		...cushionFields(place.all, pick(axes.height), stock),
		...Object.fromEntries(
			(["left", "right"] as const).flatMap((face) =>
				Object.entries(cushionFields(place.face(face), pick(axes.length), stock)),
			),
		),
		...Object.fromEntries(
			(["front", "back"] as const).flatMap((face) =>
				Object.entries(cushionFields(place.face(face), pick(axes.width), stock)),
			),
		),
	});
	const fields = {
		...(box === undefined ? {} : boxFields("box", box)),
		...(inner === undefined ? {} : boxFields("inner", inner)),
		...(bag === undefined ? {} : bagFields(bag)),
		...cushions(AROUND, (axis) => axis.around),
		...(inner === undefined ? {} : cushions(IN_GAP, (axis) => axis.gap)),
	};
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== ""));
}

function cushionFields(prefix: string, cushion: Cushion, stock: StockView): Record<string, string> {
	if (cushion === null) return { [`${prefix}.foam`]: NO_CUSHION };
	const [first, second] = cushion.sheets.map(({ id, count }) => ({
		foam: FROM_STOCK + id,
		thicknessMm: inMillimetres(count * (stock.foams.find((sheet) => sheet.id === id)?.thicknessM ?? 0)),
	}));
	const pad = cushion.pads?.[0];
	return {
		[`${prefix}.foam`]: first?.foam ?? NO_CUSHION,
		[`${prefix}.thicknessMm`]: first?.thicknessMm ?? "",
		...(second === undefined
			? {}
			: { [`${prefix}.secondFoam`]: second.foam, [`${prefix}.secondThicknessMm`]: second.thicknessMm }),
		...(pad === undefined
			? {}
			: {
					[`${prefix}.padCount`]: String(cushion.pads?.length ?? 0),
					[`${prefix}.padLengthMm`]: inMillimetres(pad.lengthM),
					[`${prefix}.padWidthMm`]: inMillimetres(pad.widthM),
				}),
	};
}
