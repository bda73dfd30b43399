/** One question of the guided record as form controls. */
import { badMemberWords } from "../../texts/fault-words.ts";
import { isTextKey, say, type TextKey } from "../../texts/say.ts";
import { minutesOf, offsetOf, showTime } from "../../texts/shown-time.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import {
	CheckField,
	ChoiceField,
	type FieldErrors,
	type FormValues,
	SelectField,
	TextArea,
	TextField,
} from "../components/form.tsx";
import type { Field, Problem } from "./field.ts";
import { CLOCK } from "./fill-form.ts";

/** The controls of a field, filled. `hintValues` are what the hint names. */
export function FieldControl({
	field,
	values,
	errors,
	hintValues = {},
}: {
	readonly field: Field;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly hintValues?: Readonly<Record<string, string | number>>;
}) {
	const common = {
		name: field.name,
		label: say(field.label),
		hint: field.hint === undefined ? undefined : say(field.hint, hintValues),
		values: { ...values, [field.name]: values[field.name] ?? "" },
		errors,
	};
	const optionsOf = (from: Extract<Field, { kind: "choice" | "choices" }>) =>
		from.codes.map((code) => ({ value: code, label: say(`${from.options}.${code}` as TextKey) }));
	const noAnswer = { value: "", label: say("arrival.no-answer") };
	switch (field.kind) {
		case "yes-no":
			return (
				<ChoiceField
					{...common}
					choices={[{ value: "yes", label: say("arrival.yes") }, { value: "no", label: say("arrival.no") }, noAnswer]}
				/>
			);
		case "choice":
			return <ChoiceField {...common} choices={[...optionsOf(field), noAnswer]} />;
		case "choices":
			return (
				<fieldset class="field choices" id={field.name}>
					<legend>{common.label}</legend>
					{common.hint && <p class="hint">{common.hint}</p>}
					{optionsOf(field).map(({ value, label }) => (
						<CheckField key={value} name={`${field.name}.${value}`} label={label} values={values} errors={errors} />
					))}
				</fieldset>
			);
		case "lines":
			return <TextArea {...common} />;
		case "text":
			return field.long === true ? <TextArea {...common} /> : <TextField {...common} />;
		case "time":
			return <TextField {...common} type="datetime-local" />;
		case "number":
			return <TextField {...common} inputMode="decimal" width="short" />;
		case "quantity":
			return <Quantity {...common} units={field.units} />;
	}
}

/** A number with its unit: a list of units, or the symbol alone where there is one. */
export function Quantity({
	units,
	...field
}: {
	readonly name: string;
	readonly label: string;
	readonly hint?: string | undefined;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly units: readonly string[];
}) {
	const [only = ""] = units;
	if (units.length <= 1) {
		return (
			<>
				<TextField {...field} inputMode="decimal" width="short" unit={unitSymbol(only)} />
				<input type="hidden" name={`${field.name}.unit`} value={only} />
			</>
		);
	}
	return (
		<div class="row">
			<TextField {...field} inputMode="decimal" />
			<SelectField
				name={`${field.name}.unit`}
				label={say("arrival.unit")}
				values={field.values}
				errors={field.errors}
				choices={units.map((unit) => ({ value: unit, label: unitSymbol(unit) }))}
			/>
		</div>
	);
}

/** How far the clock is from UTC: asked as what the clock shows, so that nobody needs to know the difference. */
export function ClockControl({
	values,
	errors,
	now,
}: {
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly now: Date;
}) {
	const chosen = values[CLOCK] ?? "";
	const offsets = chosen === "" || OFFSETS.includes(chosen) ? OFFSETS : [...OFFSETS, chosen];
	return (
		<SelectField
			name={CLOCK}
			label={say("arrival.clock")}
			hint={say("arrival.clock-hint")}
			values={values}
			errors={errors}
			empty={say("arrival.clock-choose")}
			choices={offsets.map((offset) => ({ value: offset, label: showTime(now, offset) }))}
		/>
	);
}

/** Whole hours from UTC−12 to UTC+14, and the half and quarter hours that clocks keep somewhere. Source: from-memory. */
export const OFFSETS: readonly string[] = [
	...Array.from({ length: 27 }, (_, index) => (index - 12) * 60),
	...["-09:30", "-03:30", "-02:30", "+03:30", "+04:30", "+05:30", "+05:45", "+06:30", "+08:45", "+09:30", "+10:30"].map(
		minutesOf,
	),
	...["+12:45", "+13:45"].map(minutesOf),
]
	.sort((a, b) => a - b)
	.map(offsetOf);

/** Problems by control name, in words, as the shared parts of forms take them. */
export function errorsOf(problems: readonly Problem[]): FieldErrors {
	return Object.fromEntries(problems.map((problem) => [problem.name, problemWords(problem)]));
}

/** The words for a problem, of the form or of what sealing refuses; a code without words of its own is named. */
function problemWords({ code, facts }: Problem): string {
	if (code === "number") return `${say("arrival.bad.number")} ${say("form.bad.thousands")}`;
	const key = `arrival.bad.${code}`;
	if (isTextKey(key)) return say(key, facts);
	if (!isTextKey(`bad.${code}`)) return say("arrival.bad.other", { code });
	const { message, mend } = badMemberWords(code, facts);
	return `${message} ${mend}`;
}
