/** Files chosen on a page are sent piece by piece, each with its progress, and go on after a lost network. */
import { forgetOldUploads } from "./uploads/send-file.ts";
import { watchInput } from "./uploads/watch-input.ts";

forgetOldUploads();
for (const place of document.querySelectorAll<HTMLElement>("[data-upload-for]")) {
	const input = document.getElementById(place.dataset.uploadFor ?? "");
	if (input instanceof HTMLInputElement) watchInput(input, place);
}
