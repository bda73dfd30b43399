/** Parts of forms. Each field has its label, hint and error; what was typed stays when something is wrong. */
import { type ComponentChildren, createContext } from "preact";
import { useContext } from "preact/hooks";
import { say } from "../../texts/say.ts";

/** What was typed, by field name. */
export type FormValues = Readonly<Record<string, string | undefined>>;
/** What is wrong, by field name: message and mend in one sentence or two. */
export type FieldErrors = Readonly<Record<string, string | undefined>>;

/** A form that posts, with the token that shows it comes from our own page. */
export function Form(props: {
	readonly action: string;
	readonly formToken: string;
	/** For photos and files. */
	readonly upload?: boolean;
	readonly id?: string;
	readonly children: ComponentChildren;
}) {
	return (
		<form
			method="post"
			id={props.id}
			action={props.action}
			enctype={props.upload === true ? "multipart/form-data" : undefined}
			noValidate
		>
			<input type="hidden" name="formToken" value={props.formToken} />
			{props.children}
			{props.upload === true && <script type="module" src="/assets/files.js" />}
		</form>
	);
}

/** What each field of a page is called, as the fields say it while they are rendered. */
export const FieldLabels = createContext(new Map<string, string>());

/** What a group of fields is about, where their own labels do not say it: `Owner` before `Name`. */
export const FieldGroup = createContext("");

/** All errors at the top, in the order of the fields, each with the name of its field and leading to it. */
export function ErrorSummary({ errors }: { readonly errors: FieldErrors }) {
	const labels = useContext(FieldLabels);
	const order = [...labels.keys()];
	const entries = Object.entries(errors)
		.filter(([, message]) => message !== undefined)
		.sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
	if (entries.length === 0) return null;
	return (
		<div class="error-summary" role="alert" tabIndex={-1}>
			<h2>{say("form.errors")}</h2>
			<ul>
				{entries.map(([name, message]) => (
					<li key={name}>
						<a href={`#${name}`}>{headed(labels.get(name) ?? "", message ?? "")}</a>
					</li>
				))}
			</ul>
		</div>
	);
}

/** What a field is called, then what is said of it; a question ends by itself. */
export function headed(label: string, words: string): string {
	return [label, words].filter(Boolean).join(label.endsWith("?") ? " " : ": ");
}

interface FieldProps {
	readonly name: string;
	readonly label: string;
	readonly hint?: string | undefined;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

function describedBy(props: FieldProps): string | undefined {
	const ids = [
		props.hint === undefined ? null : `${props.name}-hint`,
		props.errors[props.name] === undefined ? null : `${props.name}-error`,
	].filter((id) => id !== null);
	return ids.length === 0 ? undefined : ids.join(" ");
}

function Notes(props: FieldProps) {
	const group = useContext(FieldGroup);
	useContext(FieldLabels).set(props.name, ["", props.label].includes(group) ? props.label : `${group}, ${props.label}`);
	return (
		<>
			{props.hint === undefined ? null : (
				<p class="hint" id={`${props.name}-hint`}>
					{props.hint}
				</p>
			)}
			{props.errors[props.name] === undefined ? null : (
				<p class="error" id={`${props.name}-error`}>
					{props.errors[props.name]}
				</p>
			)}
		</>
	);
}

/** One line of text. */
export function TextField(
	props: FieldProps & {
		readonly type?: "text" | "password" | "email" | "datetime-local" | "date" | "tel";
		/** `decimal` brings up a phone's number keys and still lets a comma pass. */
		readonly inputMode?: "decimal" | "numeric" | "text";
		readonly autoComplete?: string;
		readonly unit?: string;
		readonly width?: "short" | "long";
	},
) {
	return (
		<div class="field">
			<label for={props.name}>{props.label}</label>
			<Notes {...props} />
			<span class="with-unit">
				<input
					id={props.name}
					name={props.name}
					// The types of preact tell input kinds apart by their role; all of these take the same attributes.
					type={(props.type ?? "text") as "text"}
					class={props.width ?? "long"}
					inputMode={props.inputMode ?? "text"}
					autoComplete={props.autoComplete ?? "off"}
					value={props.values[props.name] ?? ""}
					aria-describedby={describedBy(props)}
					aria-invalid={props.errors[props.name] === undefined ? undefined : true}
				/>
				{props.unit === undefined ? null : <span class="unit">{props.unit}</span>}
			</span>
		</div>
	);
}

/** Several lines of text. */
export function TextArea(props: FieldProps & { readonly rows?: number }) {
	return (
		<div class="field">
			<label for={props.name}>{props.label}</label>
			<Notes {...props} />
			<textarea
				id={props.name}
				name={props.name}
				rows={props.rows ?? 4}
				aria-describedby={describedBy(props)}
				aria-invalid={props.errors[props.name] === undefined ? undefined : true}
			>
				{props.values[props.name] ?? ""}
			</textarea>
		</div>
	);
}

export interface Choice {
	readonly value: string;
	readonly label: string;
}

/** One of a list. */
export function SelectField(props: FieldProps & { readonly choices: readonly Choice[]; readonly empty?: string }) {
	return (
		<div class="field">
			<label for={props.name}>{props.label}</label>
			<Notes {...props} />
			<select
				id={props.name}
				name={props.name}
				aria-describedby={describedBy(props)}
				aria-invalid={props.errors[props.name] === undefined ? undefined : true}
			>
				{props.empty === undefined ? null : <option value="">{props.empty}</option>}
				{props.choices.map((choice) => (
					<option key={choice.value} value={choice.value} selected={props.values[props.name] === choice.value}>
						{choice.label}
					</option>
				))}
			</select>
		</div>
	);
}

/** One of a few, all in sight. */
export function ChoiceField(props: FieldProps & { readonly choices: readonly Choice[] }) {
	return (
		<fieldset class="field choices" id={props.name} aria-describedby={describedBy(props)}>
			<legend>{props.label}</legend>
			<Notes {...props} />
			{props.choices.map((choice) => (
				<label key={choice.value} class="choice">
					<input
						type="radio"
						name={props.name}
						value={choice.value}
						checked={props.values[props.name] === choice.value}
					/>{" "}
					{choice.label}
				</label>
			))}
		</fieldset>
	);
}

/** Yes or not ticked. */
export function CheckField(props: FieldProps & { readonly value?: string }) {
	return (
		<div class="field">
			<label class="choice">
				<input
					type="checkbox"
					id={props.name}
					name={props.name}
					value={props.value ?? "yes"}
					checked={props.values[props.name] !== undefined && props.values[props.name] !== ""}
					aria-describedby={describedBy(props)}
				/>{" "}
				{props.label}
			</label>
			<Notes {...props} />
		</div>
	);
}

/** A photo or file; several where `multiple`. A phone offers its camera. */
export function FileField(props: FieldProps & { readonly accept?: string; readonly multiple?: boolean }) {
	return (
		<div class="field takes-files">
			<label for={props.name}>{props.label}</label>
			<Notes {...props} />
			<input
				id={props.name}
				name={props.name}
				type="file"
				accept={props.accept}
				multiple={props.multiple}
				aria-describedby={describedBy(props)}
				aria-invalid={props.errors[props.name] === undefined ? undefined : true}
			/>
			<p class="hint drop-hint" hidden>
				{say("form.drop")}
			</p>
			<p class="unseen drop-said" role="status" data-chosen={say("form.dropped")} />
		</div>
	);
}

/** The act of a form. `quiet` for the lesser of two. */
export function Submit(props: {
	readonly label: string;
	readonly name?: string;
	readonly value?: string;
	readonly kind?: "main" | "quiet";
}) {
	return (
		<button type="submit" class={props.kind ?? "main"} name={props.name} value={props.value}>
			{props.label}
		</button>
	);
}

/** A caution, where the act is. */
export function Caution({ children }: { readonly children: ComponentChildren }) {
	return (
		<div class="caution" role="note">
			<strong>{say("form.caution")}</strong> {children}
		</div>
	);
}
