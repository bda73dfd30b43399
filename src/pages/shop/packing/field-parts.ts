/** What the fields of the planner share. */
import { say, type TextKey } from "../../../texts/say.ts";
import type { FieldErrors, FormValues } from "../../components/form.tsx";

export interface Fields {
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

/** Codes of a closed list as choices, their words under `key.code`. */
export function choices(key: string, codes: readonly string[]): { value: string; label: string }[] {
	return codes.map((value) => ({ value, label: say(`${key}.${value}` as TextKey) }));
}

/** Whether something was typed or is wrong under names that begin so: it must be in sight. */
export function touched({ values, errors }: Fields, ...starts: readonly string[]): boolean {
	const named = (entries: FormValues) =>
		Object.entries(entries).some(
			([name, value]) => starts.some((start) => name.startsWith(start)) && value !== undefined && value !== "",
		);
	return named(values) || named(errors);
}
