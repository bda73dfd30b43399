/**
 * What the entry `log-key-added` seals, `handover-risk/log-key/1`: the key that signs from the next checkpoint on. As it
 * stands in the log, which the old key has signed, whoever trusts the old key learns the new one from it.
 */
import { canonicalBytes } from "../canonical.ts";
import type { LogKey } from "./checkpoint.ts";

export function keyStatementBytes({ id, origin, publicKey }: LogKey): Buffer {
	return canonicalBytes({ $format: "handover-risk/log-key/1", keyId: id, origin, publicKey });
}
