/** The form of a series of drops, towards what is judged. */
import type { ToldDrop } from "../../operations/drop-series/drops-of-recording.ts";
import { say } from "../../texts/say.ts";
import type { Form } from "../record-form/field.ts";
import { FROM_MILLIMETRES, formReader } from "../record-form/form-reader.ts";
import { readNumber } from "../record-form/read-number.ts";

export interface ReadDrops {
	readonly series: {
		readonly thicknessM: number;
		readonly bearingAreaM2: number;
		readonly temperatureDegC: number;
		readonly fullScaleGn: number;
	};
	readonly told: readonly ToldDrop[];
	readonly errors: Readonly<Record<string, string>>;
}

export function readDropsForm(form: Form): ReadDrops {
	const reader = formReader(form);
	const above = (field: string, factor = 1, least = 0) => {
		const value = reader.number(field, `/${field}`, factor);
		if (value === undefined) reader.wrong(field, say("bad.missing"));
		else if (!(value > least)) reader.wrong(field, say("drops.not-above", { least }));
		return value ?? Number.NaN;
	};
	const series = {
		thicknessM: above("thicknessMm", FROM_MILLIMETRES),
		bearingAreaM2: above("lengthMm", FROM_MILLIMETRES) * above("widthMm", FROM_MILLIMETRES),
		temperatureDegC: above("temperatureDegC", 1, -100),
		fullScaleGn: above("fullScaleGn"),
	};
	const lines = reader
		.text("lines")
		.split(/\r?\n/)
		.filter((line) => line.trim() !== "");
	if (lines.length === 0) reader.wrong("lines", say("bad.missing"));
	const told = lines.map((line, index): ToldDrop => {
		const numbers = line.split(";").map((part) => readNumber(part)?.value ?? Number.NaN);
		const [massKg = Number.NaN, heightMm = Number.NaN, drop = Number.NaN] = numbers;
		const whole = massKg > 0 && heightMm > 0 && Number.isInteger(drop) && drop >= 1 && numbers.length === 3;
		if (!whole) reader.wrong("lines", say("drops.bad-line", { line: index + 1 }));
		return { massKg, dropHeightM: heightMm * FROM_MILLIMETRES, drop };
	});
	return { series, told, errors: reader.errors };
}
