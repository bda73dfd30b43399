/** Creation that may be asked twice: the same key with the same request gives what it made the first time. */
import type { Caller } from "../access/caller.ts";
import type { Queryable } from "../database/connection.ts";
import { findCreation, noteCreation } from "../database/idempotency.ts";
import { fault } from "../faults.ts";
import { canonicalBytes, sha256Hex } from "../records/canonical.ts";
import type { Deps } from "./deps.ts";
import { callerId } from "./may.ts";

/**
 * Runs `create` in a transaction and gives the id it made; with a key that was used before, gives that id instead.
 * @throws idempotency-conflict where the key came with another request.
 */
export async function createOnce(
	deps: Deps,
	caller: Caller,
	key: string | null,
	request: unknown,
	create: (transaction: Queryable) => Promise<string>,
): Promise<string> {
	if (key === null) return deps.database.transaction(create);
	const byId = callerId(caller);
	const requestSha256 = sha256Hex(canonicalBytes(JSON.parse(JSON.stringify(request))));
	const before = async () => {
		const creation = await findCreation(deps.database, byId, key);
		if (creation !== null && creation.requestSha256 !== requestSha256) throw fault("idempotency-conflict");
		return creation?.resourceId ?? null;
	};
	const known = await before();
	if (known !== null) return known;
	const made = await deps.database
		.transaction(async (transaction) => {
			const resourceId = await create(transaction);
			if (!(await noteCreation(transaction, byId, key, { requestSha256, resourceId }))) throw new KeyUsedMeanwhile();
			return resourceId;
		})
		.catch(async (error: unknown) => {
			if (error instanceof KeyUsedMeanwhile) return null;
			// Of two at once, what the first made may be why the second was refused.
			const first = await before();
			if (first === null) throw error;
			return first;
		});
	const id = made ?? (await before());
	if (id === null) throw fault("idempotency-conflict");
	return id;
}

/** Rolls the second of two simultaneous creations back; never leaves this file. */
class KeyUsedMeanwhile extends Error {}
