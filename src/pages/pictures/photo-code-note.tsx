/** The code to write beside the board, where photos are added. */
import type { PhotoCodeView } from "../../contract/pictures.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";

/** `7K3M Q2RX`: in two halves, so that it is copied without a slip. */
export function shownPhotoCode(code: string): string {
	return `${code.slice(0, 4)} ${code.slice(4)}`;
}

export function PhotoCodeNote({ code }: { readonly code: PhotoCodeView | null }) {
	if (code === null) return null;
	return (
		<p class="photo-code">
			{say("photo-code.write")} <strong>{shownPhotoCode(code.code)}</strong>{" "}
			<span class="hint">{say("photo-code.why", { time: showTime(code.notBefore) })}</span>
		</p>
	);
}
