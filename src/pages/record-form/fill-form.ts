/** The content of a draft as the values of form controls: what a page shows when it is opened again. */
import type { RecordContentInput } from "../../contract/records.ts";
import { answerAt, type Field, type Form } from "./field.ts";

/** Name of the control that says how far the person's clock is from UTC. */
export const CLOCK = "clock";

/** Values of the controls of these fields. */
export function fillForm(fields: readonly Field[], content: RecordContentInput): Form {
	const form: Record<string, string> = {};
	for (const field of fields) Object.assign(form, controlsOf(field, answerAt(content, field.name)));
	const offset = offsetIn(content);
	return offset === null ? form : { ...form, [CLOCK]: offset };
}

function controlsOf(field: Field, answer: unknown): Form {
	if (answer === undefined) return {};
	switch (field.kind) {
		case "yes-no":
			return { [field.name]: answer === true ? "yes" : "no" };
		case "lines":
			return { [field.name]: (answer as readonly string[]).join("\n") };
		case "choices":
			return Object.fromEntries((answer as readonly string[]).map((code) => [`${field.name}.${code}`, "yes"]));
		case "quantity": {
			const { value, unit, typed } = answer as { value: number; unit: string; typed?: string };
			return { [field.name]: typed ?? String(value), [`${field.name}.unit`]: unit };
		}
		case "time":
			return { [field.name]: String(answer).slice(0, 16) };
		default:
			return { [field.name]: String(answer) };
	}
}

/** The difference from UTC in the times that were given before, such as `+01:00`; null where none was. */
export function offsetIn(content: RecordContentInput): string | null {
	const times = [content.observedAt, content.parcel?.inHandAt, content.parcel?.deliveredAt];
	for (const time of times) {
		const offset = /[+-]\d\d:\d\d$/.exec(time ?? "");
		if (offset !== null) return offset[0];
	}
	return times.some((time) => time?.endsWith("Z")) ? "+00:00" : null;
}
