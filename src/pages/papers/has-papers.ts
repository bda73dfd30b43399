/** Whether whoever asks may have an order's reports and dossiers: the shop, and links that are not for one record. */
import type { Caller } from "../../access/caller.ts";

export function hasPapers(caller: Caller): boolean {
	return caller.kind === "account" || (caller.kind === "link" && caller.scope !== "record");
}
