/** Things of the stock as their forms give them. */
import type { StockKind } from "../../../contract/stock.ts";
import { say } from "../../../texts/say.ts";
import type { FieldErrors } from "../../components/form.tsx";
import type { Form } from "../../record-form/field.ts";
import { type FormReader, FROM_MILLIMETRES, formReader, given, readMoney } from "../../record-form/form-reader.ts";
import { readNumber } from "../../record-form/read-number.ts";
import { UNKNOWN_FOAM } from "./cushion-names.ts";
import { readBagLayer, readBox } from "./read-pack.ts";
import { BAG_LAYERS } from "./take-from-stock.ts";

/** Instead of a foam's id: points of its curve. */
export const BY_POINTS = "points";

export interface ReadStock {
	readonly id: unknown;
	readonly thing: unknown;
	readonly errors: FieldErrors;
	readonly fieldOf: Readonly<Record<string, string>>;
}

export function readStockThing(kind: StockKind, form: Form): ReadStock {
	const reader = formReader(form);
	const id = reader.text(`${kind}.id`, "");
	reader.fills(`${kind}.id`, "/id");
	const thing = given({ ...READERS[kind](reader), price: readMoney(reader, `${kind}.price`, "/price") });
	return { id, thing, errors: reader.errors, fieldOf: reader.fieldOf };
}

const READERS: Readonly<Record<StockKind, (reader: FormReader) => Record<string, unknown>>> = {
	boxes: (reader) => readBox(reader, "box", ""),
	foams: (reader) => ({
		foam: readFoam(reader),
		thicknessM: reader.number("foam.thicknessMm", "/thicknessM", FROM_MILLIMETRES),
	}),
	bags: (reader) => ({
		layers: BAG_LAYERS.filter((place) => reader.text(`bag.${place}.kind`) !== "").map((place, index) =>
			readBagLayer(reader, place, `/layers/${index}`),
		),
	}),
};

function readFoam(reader: FormReader): unknown {
	const chosen = reader.text("foam.foam", "/foam");
	reader.fills("foam.foam", "/foam/id");
	if (chosen === UNKNOWN_FOAM) return { unknown: true };
	return chosen === BY_POINTS ? { points: readPoints(reader) } : { id: chosen };
}

/** One point on a line: static stress in kPa, drop in m, thickness in mm, peak in gₙ, and which drop of a sequence. */
function readPoints(reader: FormReader): unknown[] {
	const lines = reader
		.text("foam.points", "/foam/points")
		.split("\n")
		.map((line) => line.trim())
		.filter((line) => line !== "");
	return lines.map((line, index) => {
		const cells = line.split(/[;\t ]+/).filter((cell) => cell !== "");
		const numbers = cells.map((cell) => readNumber(cell)?.value ?? Number.NaN);
		const [staticStressKPa, dropHeightM, thicknessMm = 0, peakGn, drop] = numbers;
		if (numbers.length < 4 || numbers.length > 5 || numbers.some(Number.isNaN))
			reader.wrong("foam.points", say("stock.line-wrong", { line: index + 1, typed: line.slice(0, 60) }));
		for (const member of ["staticStressKPa", "dropHeightM", "thicknessM", "peakGn", "drop"])
			reader.fills("foam.points", `/foam/points/${index}/${member}`);
		return given({
			staticStressKPa,
			dropHeightM,
			thicknessM: Number((thicknessMm * FROM_MILLIMETRES).toPrecision(12)),
			peakGn,
			drop,
		});
	});
}
