/** Fields for numbers: one line each, a phone's number keys, the unit beside it. */
import type { VNode } from "preact";
import { say, type TextKey } from "../../texts/say.ts";
import { type FieldErrors, type FormValues, TextField } from "./form.tsx";

type NumberField = (name: string, label: TextKey, unit?: string, hint?: TextKey) => VNode;

/** Makes such fields for a form; their names begin with `prefix`. */
export function numberFields(
	{ values, errors }: { readonly values: FormValues; readonly errors: FieldErrors },
	{ prefix = "", width = "long" }: { readonly prefix?: string; readonly width?: "short" | "long" } = {},
): NumberField {
	return (name, label, unit, hint) => (
		<TextField
			values={values}
			errors={errors}
			name={prefix + name}
			label={say(label)}
			hint={hint === undefined ? undefined : say(hint)}
			inputMode="decimal"
			width={width}
			{...(unit === undefined ? {} : { unit })}
		/>
	);
}
