/** One question of the guided record as form controls. */
import type { ComponentChildren } from "preact";
import { say, type TextKey } from "../../texts/say.ts";
import type { Field, Form, Problem } from "./field.ts";
import { CLOCK } from "./fill-form.ts";
import { minutesOf, offsetOf, showTime } from "./shown-time.ts";
import { unitSymbol } from "./unit-symbol.ts";

interface ControlProps {
	readonly field: Field;
	readonly form: Form;
	readonly problems: readonly Problem[];
	/** Values that the hint names. */
	readonly hintValues?: Readonly<Record<string, string | number>>;
}

/** The controls of a field, filled, with hint and problem tied to them for screen readers. */
export function FieldControl({ field, form, problems, hintValues = {} }: ControlProps) {
	const problem = problems.find((candidate) => candidate.name === field.name);
	const id = controlId(field.name);
	const ties = {
		"aria-describedby": [field.hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(" ") || undefined,
		"aria-invalid": problem === undefined ? undefined : ("true" as const),
	};
	const notes = (
		<>
			{field.hint && (
				<p class="hint" id={`${id}-hint`}>
					{say(field.hint, hintValues)}
				</p>
			)}
			{problem && <ProblemText problem={problem} />}
		</>
	);
	const label = say(field.label);
	switch (field.kind) {
		case "yes-no":
			return (
				<Group legend={label} notes={notes} id={id}>
					<Radio name={field.name} value="" form={form} label={say("arrival.no-answer")} />
					<Radio name={field.name} value="yes" form={form} label={say("arrival.yes")} />
					<Radio name={field.name} value="no" form={form} label={say("arrival.no")} />
				</Group>
			);
		case "choice":
			return (
				<Group legend={label} notes={notes} id={id}>
					<Radio name={field.name} value="" form={form} label={say("arrival.no-answer")} />
					{field.codes.map((code) => (
						<Radio
							key={code}
							name={field.name}
							value={code}
							form={form}
							label={say(`${field.options}.${code}` as TextKey)}
						/>
					))}
				</Group>
			);
		case "choices":
			return (
				<Group legend={label} notes={notes} id={id}>
					{field.codes.map((code) => (
						<label class="choice" key={code}>
							<input
								type="checkbox"
								name={`${field.name}.${code}`}
								value="yes"
								checked={form[`${field.name}.${code}`] === "yes"}
							/>
							<span>{say(`${field.options}.${code}` as TextKey)}</span>
						</label>
					))}
				</Group>
			);
		default:
			return (
				<div class="field" id={id}>
					<label for={`${id}-control`}>{label}</label>
					{notes}
					<Input field={field} form={form} id={`${id}-control`} ties={ties} />
				</div>
			);
	}
}

/** What is wrong with a control. */
export function ProblemText({ problem }: { readonly problem: Problem }) {
	return (
		<p class="problem" id={`${controlId(problem.name)}-problem`}>
			{problemWords(problem)}
		</p>
	);
}

/** The words for a problem; a code without words of its own is named. */
export function problemWords(problem: Problem): string {
	const key = `arrival.bad.${problem.code}`;
	try {
		return say(key as TextKey, problem.facts);
	} catch {
		return say("arrival.bad.other", { code: problem.code });
	}
}

/** The id of a control's block, for links from the list of problems. */
export function controlId(name: string): string {
	return `q-${name.replaceAll(".", "-")}`;
}

/** How far the clock is from UTC: asked as what the clock shows, so that nobody needs to know the difference. */
export function ClockControl({ form, now }: { readonly form: Form; readonly now: Date }) {
	const chosen = form[CLOCK] ?? "";
	return (
		<div class="field" id={controlId(CLOCK)}>
			<label for="q-clock-control">{say("arrival.clock")}</label>
			<p class="hint" id="q-clock-hint">
				{say("arrival.clock-hint")}
			</p>
			<select id="q-clock-control" name={CLOCK} aria-describedby="q-clock-hint">
				<option value="" selected={chosen === ""}>
					{say("arrival.clock-choose")}
				</option>
				{OFFSETS.map((offset) => (
					<option key={offset} value={offset} selected={chosen === offset}>
						{showTime(now, offset)}
					</option>
				))}
				{chosen !== "" && !OFFSETS.includes(chosen) && (
					<option value={chosen} selected>
						{showTime(now, chosen)}
					</option>
				)}
			</select>
		</div>
	);
}

/** Whole hours from UTC−12 to UTC+14, and the half and quarter hours that clocks keep somewhere. Source: from-memory. */
const OFFSETS: readonly string[] = [
	...Array.from({ length: 27 }, (_, index) => (index - 12) * 60),
	...["-09:30", "-03:30", "-02:30", "+03:30", "+04:30", "+05:30", "+05:45", "+06:30", "+08:45", "+09:30", "+10:30"].map(
		minutesOf,
	),
	...["+12:45", "+13:45"].map(minutesOf),
]
	.sort((a, b) => a - b)
	.map(offsetOf);

function Group({
	legend,
	notes,
	id,
	children,
}: {
	readonly legend: string;
	readonly notes: ComponentChildren;
	readonly id: string;
	readonly children: ComponentChildren;
}) {
	return (
		<fieldset class="field" id={id}>
			<legend>{legend}</legend>
			{notes}
			{children}
		</fieldset>
	);
}

function Radio({
	name,
	value,
	form,
	label,
}: {
	readonly name: string;
	readonly value: string;
	readonly form: Form;
	readonly label: string;
}) {
	return (
		<label class="choice">
			<input type="radio" name={name} value={value} checked={(form[name] ?? "") === value} />
			<span>{label}</span>
		</label>
	);
}

function Input({
	field,
	form,
	id,
	ties,
}: {
	readonly field: Exclude<Field, { kind: "yes-no" | "choice" | "choices" }>;
	readonly form: Form;
	readonly id: string;
	readonly ties: object;
}) {
	const value = form[field.name] ?? "";
	switch (field.kind) {
		case "lines":
			return (
				<textarea id={id} name={field.name} rows={4} {...ties}>
					{value}
				</textarea>
			);
		case "text":
			return field.long === true ? (
				<textarea id={id} name={field.name} rows={5} {...ties}>
					{value}
				</textarea>
			) : (
				<input id={id} name={field.name} type="text" value={value} autocomplete="off" {...ties} />
			);
		case "time":
			return <input id={id} name={field.name} type="datetime-local" value={value} {...ties} />;
		case "number":
			return <input id={id} name={field.name} type="text" inputmode="decimal" value={value} {...ties} />;
		case "quantity":
			return (
				<span class="quantity">
					<input id={id} name={field.name} type="text" inputmode="decimal" value={value} {...ties} />
					<UnitControl name={`${field.name}.unit`} units={field.units} form={form} />
				</span>
			);
	}
}

/** The unit of a number: a list, or the symbol alone where there is one unit. */
export function UnitControl({
	name,
	units,
	form,
}: {
	readonly name: string;
	readonly units: readonly string[];
	readonly form: Form;
}) {
	const [only] = units;
	if (only === undefined) return null;
	if (units.length === 1) {
		return (
			<>
				<input type="hidden" name={name} value={only} />
				<span>{unitSymbol(only)}</span>
			</>
		);
	}
	return (
		<select name={name} aria-label={say("arrival.unit")}>
			{units.map((unit) => (
				<option key={unit} value={unit} selected={form[name] === unit}>
					{unitSymbol(unit)}
				</option>
			))}
		</select>
	);
}
