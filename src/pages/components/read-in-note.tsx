/** Stands above an order that was read in from a dossier: whose seals these are. */
import type { OrderView } from "../../contract/orders.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";

/** Letters of a key that are shown; all of them stand in every receipt. */
const KEY_SHOWN = 16;

export function ReadInNote({ of }: { readonly of: OrderView }) {
	if (of.readIn === undefined) return null;
	const { origin, keys, readInAt } = of.readIn;
	const key = (keys.at(-1) ?? "").slice(0, KEY_SHOWN);
	return <p class="note">{say("read-in.note", { origin, key, time: showTime(readInAt) })}</p>;
}
