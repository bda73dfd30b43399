/** The first account: a link that is valid once, printed where the service is started. */
import { hashSecret, makeToken, tokenHash } from "../../access/secrets.ts";
import type { SetUpInput } from "../../contract/access.ts";
import { countAccounts, insertAccount, isSetUpLink, replaceSetUpLink, useSetUpLink } from "../../database/access.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { type OpenedSession, openSession } from "./sessions.ts";

/** Least length of a passphrase, characters. Source: our choice. */
export const PASSPHRASE_LEAST = 12;

/** A new set-up link while there is no account; null once there is one. An older link stops working. */
export async function makeSetUpLink(deps: Deps): Promise<string | null> {
	if ((await countAccounts(deps.database)) > 0) return null;
	const token = makeToken(deps.randomBytes);
	await deps.database.transaction((transaction) => replaceSetUpLink(transaction, tokenHash(token)));
	return `${deps.publicUrl}/set-up/${token}`;
}

/** Whether a set-up link still works. */
export async function setUpLinkWorks(deps: Deps, token: string): Promise<boolean> {
	return isSetUpLink(deps.database, tokenHash(token));
}

/** Makes the first account and signs it in. */
export async function setUpShop(deps: Deps, input: SetUpInput): Promise<OpenedSession> {
	if ([...input.passphrase].length < PASSPHRASE_LEAST)
		throw invalid([{ path: "/passphrase", code: "passphrase-short" }]);
	const passphraseHash = await hashSecret(input.passphrase, deps.randomBytes(16), deps.secretCost);
	const accountId = deps.newId("acc");
	await deps.database.transaction(async (transaction) => {
		if (!(await useSetUpLink(transaction, tokenHash(input.token)))) throw fault("set-up-used");
		if (!(await insertAccount(transaction, { id: accountId, name: input.name, passphraseHash }))) {
			throw fault("already-there");
		}
	});
	return openSession(deps, accountId, input.name);
}
