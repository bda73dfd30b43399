/** The kinds of questions that the guided record asks. A field says where in the record's content its answer stands. */
import type { RecordContentInput } from "../../contract/records.ts";
import type { TextKey } from "../../texts/say.ts";

/** Name of a form control and place in the content at once: members joined by points, such as `parcel.mass`. */
export type FieldName = string;

interface Question {
	readonly name: FieldName;
	readonly label: TextKey;
	readonly hint?: TextKey;
	/** Sealing asks for it. */
	readonly needed?: boolean;
}

export interface TextField extends Question {
	readonly kind: "text";
	readonly maximum: number;
	/** More than one line. */
	readonly long?: boolean;
}

/** A list, one entry per line. */
export interface LinesField extends Question {
	readonly kind: "lines";
	readonly maximum: number;
	readonly maximumEach: number;
}

export interface YesNoField extends Question {
	readonly kind: "yes-no";
}

/** One code of a list; the text of each is at `options` plus a point and the code. */
export interface ChoiceField extends Question {
	readonly kind: "choice";
	readonly codes: readonly string[];
	readonly options: string;
}

/** Any number of codes of a list. */
export interface ChoicesField extends Question {
	readonly kind: "choices";
	readonly codes: readonly string[];
	readonly options: string;
}

/** A number with the unit it is typed in; the digits are kept as typed. */
export interface QuantityField extends Question {
	readonly kind: "quantity";
	readonly units: readonly string[];
	readonly minimum?: number;
	readonly maximum?: number;
	/** Where the units differ in size: the most in each, in place of `maximum`. */
	readonly mostByUnit?: Readonly<Record<string, number>>;
}

export interface NumberField extends Question {
	readonly kind: "number";
	readonly minimum: number;
	readonly maximum: number;
	readonly whole?: boolean;
}

/** A claimed time: local date and time, with the clock's difference from UTC that the page asks for once. */
export interface TimeField extends Question {
	readonly kind: "time";
}

export type Field =
	| TextField
	| LinesField
	| YesNoField
	| ChoiceField
	| ChoicesField
	| QuantityField
	| NumberField
	| TimeField;

/** What a form sent: control name → value, the last one where a name came twice. */
export type Form = Readonly<Record<string, string>>;

/** Something wrong with one control; the words stand at `arrival.bad.<code>`. */
export interface Problem {
	readonly name: FieldName;
	readonly code: string;
	readonly facts?: Readonly<Record<string, string | number>>;
}

/** The answer at a name, undefined where there is none. */
export function answerAt(content: RecordContentInput, name: FieldName): unknown {
	return name
		.split(".")
		.reduce<unknown>(
			(place, member) =>
				place !== null && typeof place === "object" && Object.hasOwn(place, member)
					? (place as Record<string, unknown>)[member]
					: undefined,
			content,
		);
}

/** The content with another answer at a name; undefined takes the answer out, and what it leaves empty. */
export function withAnswer(content: RecordContentInput, name: FieldName, answer: unknown): RecordContentInput {
	return placed(content as Record<string, unknown>, name.split("."), answer) as RecordContentInput;
}

function placed(place: Record<string, unknown>, members: readonly string[], answer: unknown): Record<string, unknown> {
	const [member, ...rest] = members;
	if (member === undefined) return place;
	const { [member]: before, ...others } = place;
	if (rest.length === 0) return answer === undefined ? others : { ...others, [member]: answer };
	const inner = placed((before as Record<string, unknown> | undefined) ?? {}, rest, answer);
	return Object.keys(inner).length === 0 ? others : { ...others, [member]: inner };
}
