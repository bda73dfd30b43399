/** An order that was read in from a dossier is not gone on with here: its log ended elsewhere. */
import type { Queryable } from "../../database/connection.ts";
import { readInLogOf } from "../../database/read-in.ts";
import { fault } from "../../faults.ts";

/** @throws read-in */
export async function refuseReadIn(database: Queryable, orderId: string): Promise<void> {
	if ((await readInLogOf(database, orderId)) !== null) throw fault("read-in");
}
