/** What a form sent, as answers in the content of a draft. What cannot be read stays out and is named. */
import { type RecordContentInput, recordContent } from "../../contract/records.ts";
import { answerAt, type Field, type Form, type Problem, withAnswer } from "./field.ts";
import { CLOCK } from "./fill-form.ts";
import { isCount, readNumber } from "./read-number.ts";

export interface ReadForm {
	readonly content: RecordContentInput;
	readonly problems: readonly Problem[];
}

/** A reader's answer for one control: what it says, nothing, or what is wrong. */
type Answer = { readonly says: unknown } | Omit<Problem, "name">;

const LOCAL_TIME = /^(\d{4}-\d\d-\d\dT\d\d:\d\d)(:\d\d(\.\d+)?)?$/;
const OFFSET = /^[+-]\d\d:\d\d$/;

/** The content with the answers of these fields in place of what it said there. */
export function readForm(fields: readonly Field[], form: Form, content: RecordContentInput): ReadForm {
	let next = content;
	const problems: Problem[] = [];
	for (const field of fields) {
		const answer = read(field, form);
		if ("says" in answer) {
			const candidate = withAnswer(next, field.name, answer.says);
			const refused = refusal(field, candidate);
			if (refused === null) next = candidate;
			else problems.push({ name: field.name, ...refused });
		} else problems.push({ name: field.name, ...answer });
	}
	return { content: next, problems };
}

/** What the contract's own shape says against the answer: characters that cannot be stored, years out of range. */
function refusal(field: Field, candidate: RecordContentInput): Omit<Problem, "name"> | null {
	if (answerAt(candidate, field.name) === undefined) return null;
	const checked = recordContent.safeParse(candidate);
	if (checked.success) return null;
	const members = field.name.split(".");
	const own = checked.error.issues.some((issue) => members.every((member, index) => issue.path[index] === member));
	if (!own) return null;
	if (field.kind === "time") return { code: "time" };
	return { code: field.kind === "text" || field.kind === "lines" ? "text" : "number" };
}

function read(field: Field, form: Form): Answer {
	const typed = (form[field.name] ?? "").trim();
	if (field.kind === "choices") {
		const chosen = field.codes.filter((code) => form[`${field.name}.${code}`] === "yes");
		return { says: chosen.length === 0 ? undefined : chosen };
	}
	if (typed === "") return { says: undefined };
	switch (field.kind) {
		case "text":
			return typed.length > field.maximum
				? { code: "too-long", facts: { maximum: field.maximum } }
				: { says: withLineFeeds(typed) };
		case "lines":
			return readLines(field.maximum, field.maximumEach, typed);
		case "yes-no":
			return typed === "yes" || typed === "no" ? { says: typed === "yes" } : { code: "choice" };
		case "choice":
			return field.codes.includes(typed) ? { says: typed } : { code: "choice" };
		case "quantity":
			return readQuantity(field, typed, form[`${field.name}.unit`] ?? field.units[0] ?? "");
		case "number":
			return readPlainNumber(field, typed);
		case "time":
			return readTime(typed, form[CLOCK] ?? "");
	}
}

/** Forms send lines ended by carriage return and line feed; one line feed is kept. */
function withLineFeeds(typed: string): string {
	return typed.replaceAll("\r\n", "\n");
}

function readLines(maximum: number, maximumEach: number, typed: string): Answer {
	const lines = withLineFeeds(typed)
		.split("\n")
		.map((line) => line.trim())
		.filter((line) => line !== "");
	if (lines.length > maximum) return { code: "too-many-lines", facts: { maximum } };
	if (lines.some((line) => line.length > maximumEach)) return { code: "too-long", facts: { maximum: maximumEach } };
	return { says: lines };
}

function readQuantity(field: Extract<Field, { kind: "quantity" }>, typed: string, unit: string): Answer {
	if (!field.units.includes(unit)) return { code: "choice" };
	const number = readNumber(typed);
	if (number === null) return { code: "number" };
	return bounded(number.value, field.minimum ?? -Infinity, field.mostByUnit?.[unit] ?? field.maximum ?? Infinity, {
		...number,
		unit,
	});
}

function readPlainNumber(field: Extract<Field, { kind: "number" }>, typed: string): Answer {
	const number = readNumber(typed);
	if (number === null) return { code: "number" };
	if (field.whole === true && !isCount(number.value)) return { code: "whole" };
	return bounded(number.value, field.minimum, field.maximum, number.value);
}

function bounded(value: number, minimum: number, maximum: number, says: unknown): Answer {
	if (!(value >= minimum)) return { code: "too-small", facts: { minimum } };
	if (!(value <= maximum)) return { code: "too-large", facts: { maximum } };
	return { says };
}

function readTime(typed: string, offset: string): Answer {
	const local = LOCAL_TIME.exec(typed)?.[1];
	if (local === undefined) return { code: "time" };
	if (!OFFSET.test(offset)) return { code: "clock" };
	return { says: `${local}:00${offset}` };
}
