/** Refuses times that cannot be on the page where they are typed, by the rule that sealing goes by. */
import type { RecordContentInput } from "../../contract/records.ts";
import { type NotedTimes, timeShortcomings } from "../../records/claimed-times.ts";
import { answerAt, type Field, withAnswer } from "./field.ts";
import type { ReadForm } from "./read-form.ts";

/** The content without times of these fields that cannot be: what stood there before stays, and each is named. */
export function refuseTimes(
	{ content, problems }: ReadForm,
	fields: readonly Field[],
	before: RecordContentInput,
	noted: NotedTimes,
	now: Date,
): ReadForm {
	const asked = new Set(fields.map(({ name }) => name));
	const refused = timeShortcomings(content, noted, now)
		.map(({ path, code }) => ({ name: path.slice(1).replaceAll("/", "."), code }))
		.filter(({ name }) => asked.has(name));
	const kept = refused.reduce((next, { name }) => {
		const stood = answerAt(before, name);
		return withAnswer(next, name, stood === answerAt(content, name) ? undefined : stood);
	}, content);
	return { content: kept, problems: [...problems, ...refused] };
}
