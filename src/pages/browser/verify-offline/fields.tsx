/** The controls of the offline page, and what was chosen with them. */
interface FieldProps {
	readonly name: string;
	readonly label: string;
	readonly hint: string;
}

export function FilesField({ name, label, hint, multiple }: FieldProps & { readonly multiple: boolean }) {
	return (
		<div class="field">
			<label for={name}>{label}</label>
			<p class="hint" id={`${name}-hint`}>
				{hint}
			</p>
			<input id={name} name={name} type="file" multiple={multiple} aria-describedby={`${name}-hint`} />
		</div>
	);
}

export function TextArea({ name, label, hint }: FieldProps) {
	return (
		<div class="field">
			<label for={name}>{label}</label>
			<p class="hint" id={`${name}-hint`}>
				{hint}
			</p>
			<textarea id={name} name={name} rows={3} aria-describedby={`${name}-hint`} />
		</div>
	);
}

export function TextField({ name, label, width }: Omit<FieldProps, "hint"> & { readonly width: "short" | "long" }) {
	return (
		<div class="field">
			<label for={name}>{label}</label>
			<input id={name} name={name} type="text" class={width} autocomplete="off" />
		</div>
	);
}

/** What was typed into a control, without the spaces around it. */
export function textIn(form: HTMLFormElement | null, name: string): string {
	const control = form?.elements.namedItem(name);
	const isText = control instanceof HTMLInputElement || control instanceof HTMLTextAreaElement;
	return isText ? control.value.trim() : "";
}

/** The files chosen with a control. */
export function filesIn(form: HTMLFormElement | null, name: string): File[] {
	const control = form?.elements.namedItem(name);
	return control instanceof HTMLInputElement ? [...(control.files ?? [])] : [];
}

/** Puts a file into a control, as if it had been chosen there. */
export function putFile(form: HTMLFormElement | null, name: string, file: File): void {
	const control = form?.elements.namedItem(name);
	if (!(control instanceof HTMLInputElement)) return;
	const files = new DataTransfer();
	files.items.add(file);
	control.files = files.files;
}
