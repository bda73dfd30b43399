/** Stands above what is left of an order whose owner was erased. */
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";

export function ErasedNote({ at }: { readonly at: string }) {
	return <p class="note">{say("erasure.note", { time: showTime(at) })}</p>;
}
