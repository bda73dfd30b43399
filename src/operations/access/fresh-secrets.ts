/**
 * A new address or code in the place of one that nobody used: only hashes are kept, so a secret that is to be told later is
 * made when it is told. The one before opens nothing from then on.
 */
import { hashSecret, makeCode, makeToken, tokenHash } from "../../access/secrets.ts";
import type { Queryable } from "../../database/connection.ts";
import { replaceLinkCode, replaceLinkToken } from "../../database/mail.ts";
import type { Deps } from "../deps.ts";

/** The address; null where the link was used, withdrawn or is over. */
export async function freshLinkUrl(deps: Deps, transaction: Queryable, linkId: string): Promise<string | null> {
	const token = makeToken(deps.randomBytes);
	const isReplaced = await replaceLinkToken(transaction, linkId, tokenHash(token), deps.now());
	return isReplaced ? `${deps.publicUrl}/l/${token}` : null;
}

/** The code; null where the link was used, withdrawn or is over. */
export async function freshLinkCode(deps: Deps, transaction: Queryable, linkId: string): Promise<string | null> {
	const code = makeCode();
	const codeHash = await hashSecret(code, deps.randomBytes(16), deps.secretCost);
	return (await replaceLinkCode(transaction, linkId, codeHash, deps.now())) ? code : null;
}
