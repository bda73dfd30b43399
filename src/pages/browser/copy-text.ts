/** Buttons that copy a text on their page. They are shown only here, since without script they do nothing. */

for (const button of document.querySelectorAll<HTMLButtonElement>("button[data-copies]")) {
	const id = button.dataset.copies ?? "";
	const text = document.getElementById(id);
	const told = document.querySelector(`[data-copied="${id}"]`);
	if (!(text instanceof HTMLTextAreaElement) || told === null) continue;
	button.hidden = false;
	button.addEventListener("click", async () => {
		text.select();
		// Without HTTPS a page has no clipboard; the text is marked then, and the keys copy it.
		if (navigator.clipboard === undefined) return;
		await navigator.clipboard.writeText(text.value);
		told.textContent = button.dataset.done ?? "";
	});
}
