/** Gives the log a new key. Old records stay verifiable: their checkpoints name the key that signed them. */
import { signingKey } from "../../database/tree.ts";
import type { LogKey } from "../../records/log/checkpoint.ts";
import { keyStatementBytes } from "../../records/log/key-statement.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "./append-to-log.ts";

/** Makes the key, seals its public half in the log, and signs with it from then on. `byId` is the account that asked. */
export async function changeLogKey(deps: Pick<Deps, "database" | "logKeys">, byId: string): Promise<LogKey> {
	const before = await signingKey(deps.database);
	if (before === null) throw new Error("the log has no key: it was not opened");
	const newKey = await deps.logKeys.make(before.origin);
	await deps.database.transaction((transaction) =>
		appendToLog(deps, transaction, {
			kind: "log-key-added",
			subject: newKey.id,
			byId,
			statementBytes: keyStatementBytes(newKey),
			newKey,
		}),
	);
	return newKey;
}
