/** Computes the plan anew when a number was changed, so that what moves is seen. Without script the button does it. */
const form = document.querySelector<HTMLFormElement>("#plan-form");
let asked = new AbortController();

async function computeAnew(changed: HTMLFormElement): Promise<void> {
	asked.abort();
	asked = new AbortController();
	const body = new URLSearchParams();
	for (const [name, value] of new FormData(changed)) if (typeof value === "string") body.append(name, value);
	body.set("act", "plan");
	const answer = await fetch(changed.action, { method: "POST", body, signal: asked.signal });
	const page = new DOMParser().parseFromString(await answer.text(), "text/html");
	// While a number is missing nothing new can be shown; what was shown stays, and so does what was typed.
	document.querySelector("#not-anew")?.toggleAttribute("hidden", answer.ok);
	if (!answer.ok) return;
	for (const part of ["#outcome", "#as-planned"]) {
		const [now, next] = [document.querySelector(part), page.querySelector(part)];
		if (now !== null && next !== null) now.replaceWith(document.adoptNode(next));
	}
	takeOver(changed, page);
}

/** What the service filled in: the sizes of a box that was chosen from the stock. */
function takeOver(shown: HTMLFormElement, page: Document): void {
	for (const field of shown.elements) {
		if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement) || field.name === "") continue;
		if (field === document.activeElement && field instanceof HTMLInputElement) continue;
		const next = page.querySelector(`#plan-form [name="${CSS.escape(field.name)}"]`);
		if (field instanceof HTMLInputElement && field.type === "checkbox" && next instanceof HTMLInputElement)
			field.checked = next.checked;
		else if (field.type !== "hidden" && next !== null && "value" in next) field.value = String(next.value);
	}
}

form?.addEventListener("change", () => {
	computeAnew(form).catch((error: unknown) => {
		// A newer change took its place, or the network is away: the button still asks.
		if (!(error instanceof DOMException) && !(error instanceof TypeError)) throw error;
	});
});
