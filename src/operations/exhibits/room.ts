/** Whether there is room for another file: on the disk, and within what one order may take. */
import type { Queryable } from "../../database/connection.ts";
import { spaceOfOrder } from "../../database/exhibit-uploads.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";

/** Left free on the disk, for the database. Source: our choice. */
const LEFT_FREE_BYTES = 256 * 1024 * 1024;
/** Uploads of one order that may be open at once. Source: our choice, above the most files of a record. */
const MOST_OPEN = 200;
const GIB = 1024 ** 3;

/** @throws disk-full; quota-full; too-many uploads that nobody finished */
export async function needRoom(deps: Deps, transaction: Queryable, orderId: string, sizeBytes: number): Promise<void> {
	if (!(sizeBytes + LEFT_FREE_BYTES <= (await deps.freeBytes()))) throw fault("disk-full");
	const { bytes, unfinished } = await spaceOfOrder(transaction, orderId);
	if (!(bytes + sizeBytes <= deps.exhibitQuotaBytes))
		throw fault("quota-full", { facts: { mostGib: Math.round(deps.exhibitQuotaBytes / GIB) } });
	if (unfinished >= MOST_OPEN) throw fault("too-many", { retryAfterS: 600 });
}
