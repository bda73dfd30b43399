/**
 * A receipt: what a party takes away, enough without the server. Canonical JSON (RFC 8785), `handover-risk/receipt/2`:
 *
 *   { "$format",
 *     "about": id of the record it was asked for,
 *     "checkpoint": the newest signed note (records/log/checkpoint.ts),
 *     "earlier": [ { "checkpoint": an older signed note, "proof": [ hex … ] } ],
 *     "entries": [ { "entry": base64 of the exact entry bytes,
 *                    "openings": [ { "commitment", "salt", "value" } ],
 *                    "proof": [ hex … ],
 *                    "statement": base64 of the exact sealed bytes, absent where the entry has none } ],
 *     "keys": [ { "origin", "publicKey": 32 bytes, hex } ],
 *     "timeStamps": [ { "checkpoint": a signed note, "proof": [ hex … ], "token": base64 of an RFC 3161 token } ] }
 *
 * `entries` are those about the order, in log order: drafts opened and discarded too, so that nobody can keep three and
 * seal the best unseen. `proof` of an entry is its inclusion proof in the checkpoint's tree; `proof` of an older note is
 * the consistency proof from it to the checkpoint (RFC 9162). Nothing stands twice: index, kind, subject, time, who
 * acted and the statement's hash are in the entry's bytes alone. Openings of what was erased are not there.
 *
 * `handover-risk/receipt/1`, given out before the log was signed, held the statements without proofs; verification reads
 * it for good (records/verify/).
 */
import { canonicalBytes, type JsonValue } from "./canonical.ts";
import type { Opening } from "./commitment.ts";

export const RECEIPT_FORMAT = "handover-risk/receipt/2";

/** An entry as the log keeps it. */
export interface LoggedEntry {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly byId: string;
	readonly time: Date;
	readonly entryBytes: Uint8Array;
	readonly leafSha256: string;
	/** Null where the act sealed nothing. */
	readonly statementBytes: Uint8Array | null;
	readonly statementSha256: string | null;
	readonly openings: readonly Opening[];
}

/** An entry that seals a statement. */
export interface SealedEntry extends LoggedEntry {
	readonly statementBytes: Uint8Array;
	readonly statementSha256: string;
}

export interface ReceiptEntry {
	readonly entry: string;
	readonly openings: readonly Opening[];
	readonly proof: readonly string[];
	readonly statement?: string;
}

/** An older signed note, and the proof that the checkpoint's tree begins with its tree. */
export interface EarlierCheckpoint {
	readonly checkpoint: string;
	readonly proof: readonly string[];
}

/** A time stamp over a signed note's exact bytes. */
export interface ReceiptTimeStamp extends EarlierCheckpoint {
	readonly token: string;
}

export interface Receipt {
	readonly $format: typeof RECEIPT_FORMAT;
	readonly about: string;
	readonly checkpoint: string;
	readonly earlier: readonly EarlierCheckpoint[];
	readonly entries: readonly ReceiptEntry[];
	readonly keys: readonly { readonly origin: string; readonly publicKey: string }[];
	readonly timeStamps: readonly ReceiptTimeStamp[];
}

/** The receipt about one record, with every entry of its order and its proof. */
export function makeReceipt(
	facts: Pick<Receipt, "about" | "checkpoint" | "earlier" | "keys" | "timeStamps">,
	shown: readonly { readonly entry: LoggedEntry; readonly proof: readonly string[] }[],
): Receipt {
	return {
		$format: RECEIPT_FORMAT,
		...facts,
		entries: shown.map(({ entry, proof }) => ({
			entry: Buffer.from(entry.entryBytes).toString("base64"),
			openings: [...entry.openings].sort((a, b) => (a.commitment < b.commitment ? -1 : 1)),
			proof,
			...(entry.statementBytes === null ? {} : { statement: Buffer.from(entry.statementBytes).toString("base64") }),
		})),
	};
}

/** The receipt's bytes; they re-serialise to themselves. */
export function receiptBytes(receipt: Receipt): Buffer {
	return canonicalBytes(receipt as unknown as JsonValue);
}
