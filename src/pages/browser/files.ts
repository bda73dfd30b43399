/**
 * Lets a file be dropped onto the field that takes it, or be pasted while that field has the focus; a text that is pasted becomes a
 * file. The control stays as it is, for keyboards and for everyone without script.
 */
for (const field of document.querySelectorAll<HTMLElement>(".takes-files")) {
	const input = field.querySelector<HTMLInputElement>('input[type="file"]');
	if (input !== null) takeFiles(field, input);
}

// A file that misses a field would take the place of the page, with everything that was typed on it.
for (const kind of ["dragover", "drop"] as const)
	window.addEventListener(kind, (event) => {
		if (holdsFiles(event)) event.preventDefault();
	});

function takeFiles(field: HTMLElement, input: HTMLInputElement): void {
	const hint = field.querySelector<HTMLElement>(".drop-hint");
	hint?.removeAttribute("hidden");
	const said = field.querySelector<HTMLElement>(".drop-said");

	function choose(files: readonly File[]): void {
		const [first] = files;
		if (first === undefined || input.disabled) return;
		const chosen = new DataTransfer();
		const before = input.multiple ? [...(input.files ?? [])] : [];
		for (const file of input.multiple ? [...before, ...files] : [first]) chosen.items.add(file);
		input.files = chosen.files;
		input.dispatchEvent(new Event("change", { bubbles: true }));
		if (said !== null)
			said.textContent = `${said.dataset.chosen ?? ""} ${[...chosen.files].map(({ name }) => name).join(", ")}`;
	}

	field.addEventListener("dragover", (event) => {
		if (!holdsFiles(event)) return;
		event.preventDefault();
		field.classList.add("drop-over");
	});
	field.addEventListener("dragleave", (event) => {
		if (!field.contains(event.relatedTarget as Node | null)) field.classList.remove("drop-over");
	});
	field.addEventListener("drop", (event) => {
		field.classList.remove("drop-over");
		if (!holdsFiles(event)) return;
		event.preventDefault();
		choose([...(event.dataTransfer?.files ?? [])]);
	});
	document.addEventListener("paste", (event) => {
		if (document.activeElement !== input) return;
		const files = [...(event.clipboardData?.files ?? [])];
		const text = event.clipboardData?.getData("text/plain") ?? "";
		const takesText = input.accept === "" || input.accept.includes("text");
		const whole = text.endsWith("\n") ? text : `${text}\n`;
		const pasted = files.length > 0 || text === "" || !takesText ? files : [new File([whole], "pasted.txt")];
		if (pasted.length === 0) return;
		event.preventDefault();
		choose(pasted);
	});
}

function holdsFiles(event: DragEvent): boolean {
	return event.dataTransfer?.types.includes("Files") === true;
}
