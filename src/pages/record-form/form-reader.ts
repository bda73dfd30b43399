/** Reads a form towards a request: numbers as people type them, and which field fills which member. */
import { say } from "../../texts/say.ts";
import type { Form } from "./field.ts";
import { readNumber } from "./read-number.ts";

export interface FormReader {
	/** What stands in a field, without blanks around it. */
	text(field: string, pointer?: string): string;
	ticked(field: string): boolean;
	/** The number times `factor`; undefined where the field is empty, and where it holds none, which is noted. */
	number(field: string, pointer: string, factor?: number): number | undefined;
	/** Notes what is wrong with a field; the first thing said of it stays. */
	wrong(field: string, message: string): void;
	/** Says that faults at a member belong to a field. */
	fills(field: string, pointer: string): void;
	readonly errors: Readonly<Record<string, string>>;
	/** The field that filled the member at a JSON Pointer. */
	readonly fieldOf: Readonly<Record<string, string>>;
}

export const FROM_MILLIMETRES = 1e-3;

export function formReader(form: Form): FormReader {
	const errors: Record<string, string> = {};
	const fieldOf: Record<string, string> = {};
	const text = (field: string, pointer?: string) => {
		if (pointer !== undefined) fieldOf[pointer] = field;
		return (form[field] ?? "").trim();
	};
	const wrong = (field: string, message: string) => {
		errors[field] ??= message;
	};
	return {
		errors,
		fieldOf,
		text,
		wrong,
		ticked: (field) => text(field) === "yes",
		fills: (field, pointer) => {
			fieldOf[pointer] = field;
		},
		number: (field, pointer, factor = 1) => {
			const typed = text(field, pointer);
			if (typed === "") return undefined;
			const read = readNumber(typed);
			if (read === null) wrong(field, say("pack.not-a-number", { typed: typed.slice(0, 40) }));
			return read === null ? undefined : Number((read.value * factor).toPrecision(12));
		},
	};
}

/** Without the members that are undefined: a request leaves them out. */
export function given<Members extends Readonly<Record<string, unknown>>>(members: Members): Record<string, unknown> {
	return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
}

/** An amount and its currency; undefined where neither is given. */
export function readMoney(reader: FormReader, prefix: string, pointer: string): Record<string, unknown> | undefined {
	const amount = reader.number(`${prefix}Amount`, `${pointer}/amount`);
	const currency = reader.text(`${prefix}Currency`, `${pointer}/currency`).toUpperCase();
	// A currency alone says nothing: it stands in the field from the start.
	return amount === undefined ? undefined : given({ amount, currency: currency === "" ? undefined : currency });
}
