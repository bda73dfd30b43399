/** The name of an account of the shop, for the shop alone. */
import type { Caller } from "../../access/caller.ts";
import { accountName } from "../../database/access.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";

/** Null where the id is none of an account here: a link's, or an account's of another service. */
export async function readAccountName(deps: Deps, caller: Caller, id: string): Promise<string | null> {
	mustBeShop(caller);
	return accountName(deps.database, id);
}
