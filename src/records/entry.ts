/**
 * Log entries. Every act on a record is an entry of one gap-free log. An entry is canonical JSON:
 *
 *   { "$format": "handover-risk/entry/1", "by": account or link id, "index": 0, 1, 2, …, "kind": see ENTRY_KINDS,
 *     "statementSha256": SHA-256 of the exact sealed bytes (absent where there is no statement),
 *     "subject": id of the record, assessment or link, "time": the database's, UTC with milliseconds, after the lock }
 *
 * Its exact bytes are a leaf's data: leaf = SHA-256(0x00 ‖ entry bytes), as in RFC 9162. The fingerprint on slips is
 * `statementSha256`. A later form has another `$format` and is read beside this one for good.
 */

import type { EntryKind } from "../catalogue/codes.ts";
import { canonicalBytes, sha256Hex } from "./canonical.ts";

export const ENTRY_FORMAT = "handover-risk/entry/1";

export interface EntryFacts {
	readonly index: number;
	readonly kind: EntryKind;
	readonly subject: string;
	readonly byId: string;
	readonly time: Date;
	readonly statementBytes: Buffer | null;
}

export interface MadeEntry {
	readonly entryBytes: Buffer;
	readonly leafSha256: string;
	readonly statementSha256: string | null;
}

const LEAF_PREFIX = Uint8Array.of(0x00);

/** The exact bytes of an entry, its leaf hash, and its statement's hash. */
export function makeEntry(facts: EntryFacts): MadeEntry {
	const statementSha256 = facts.statementBytes === null ? null : sha256Hex(facts.statementBytes);
	const entryBytes = canonicalBytes({
		$format: ENTRY_FORMAT,
		by: facts.byId,
		index: facts.index,
		kind: facts.kind,
		...(statementSha256 === null ? {} : { statementSha256 }),
		subject: facts.subject,
		time: facts.time.toISOString(),
	});
	return { entryBytes, leafSha256: sha256Hex(LEAF_PREFIX, entryBytes), statementSha256 };
}
