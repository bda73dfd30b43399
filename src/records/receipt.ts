/**
 * A receipt: what a party takes away, enough without the server. Canonical JSON, `handover-risk/receipt/1`:
 *
 *   { "$format", "about": id of the record it was asked for, "log": "not yet in a signed log",
 *     "statements": [ { "entry": base64 of the exact entry bytes, "index", "kind", "leafSha256",
 *       "openings": [ { "commitment", "salt", "value" } ], "sealedAt", "sealedBy": account or link id,
 *       "statement": base64 of the exact sealed bytes, "statementSha256", "subject" } ] }
 *
 * It holds every sealed statement of the order that had been shown to the party, in log order. A stranger checks it
 * with `base64 -d` and `sha256sum`: the decoded statement hashes to `statementSha256`, which stands in the entry; each
 * commitment inside is SHA-256(0x02 ‖ salt ‖ canonical value). Proof of the place in a signed log comes with a later
 * form; this one says that there is none yet. `sealedBy` never claims more than which account or link was used.
 */
import { canonicalBytes, type JsonValue } from "./canonical.ts";
import type { Opening } from "./commitment.ts";

export const RECEIPT_FORMAT = "handover-risk/receipt/1";
export const NOT_YET_SIGNED = "not yet in a signed log";

/** An entry with its statement, as the log keeps it. */
export interface SealedEntry {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly byId: string;
	readonly time: Date;
	readonly entryBytes: Uint8Array;
	readonly leafSha256: string;
	readonly statementBytes: Uint8Array;
	readonly statementSha256: string;
	readonly openings: readonly Opening[];
}

export interface ReceiptStatement {
	readonly entry: string;
	readonly index: number;
	readonly kind: string;
	readonly leafSha256: string;
	readonly openings: readonly Opening[];
	readonly sealedAt: string;
	readonly sealedBy: string;
	readonly statement: string;
	readonly statementSha256: string;
	readonly subject: string;
}

export interface Receipt {
	readonly $format: typeof RECEIPT_FORMAT;
	readonly about: string;
	readonly log: typeof NOT_YET_SIGNED;
	readonly statements: readonly ReceiptStatement[];
}

/** The receipt about one record, with every statement shown to the party that asks. */
export function makeReceipt(about: string, shown: readonly SealedEntry[]): Receipt {
	return {
		$format: RECEIPT_FORMAT,
		about,
		log: NOT_YET_SIGNED,
		statements: [...shown]
			.sort((a, b) => a.index - b.index)
			.map((entry) => ({
				entry: Buffer.from(entry.entryBytes).toString("base64"),
				index: entry.index,
				kind: entry.kind,
				leafSha256: entry.leafSha256,
				openings: [...entry.openings].sort((a, b) => (a.commitment < b.commitment ? -1 : 1)),
				sealedAt: entry.time.toISOString(),
				sealedBy: entry.byId,
				statement: Buffer.from(entry.statementBytes).toString("base64"),
				statementSha256: entry.statementSha256,
				subject: entry.subject,
			})),
	};
}

/** The receipt's bytes; they re-serialise to themselves. */
export function receiptBytes(receipt: Receipt): Buffer {
	return canonicalBytes(receipt as unknown as JsonValue);
}
