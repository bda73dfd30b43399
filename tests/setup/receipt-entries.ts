/** A receipt's entries read as a stranger reads them: base64, JSON, SHA-256. */
import { createHash } from "node:crypto";

export interface ReadEntry {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	readonly by: string;
	readonly time: string;
	readonly statementSha256?: string;
	/** Exact sealed bytes; null where the entry has none. */
	readonly statement: Buffer | null;
	/** SHA-256 of the bytes above is what the entry says. */
	readonly fits: boolean;
	readonly openings: readonly { readonly commitment: string; readonly salt: string; readonly value: unknown }[];
}

interface ReceiptText {
	readonly entries: readonly { readonly entry: string; readonly statement?: string; readonly openings: never[] }[];
}

export function entriesIn(receipt: unknown): ReadEntry[] {
	return (receipt as ReceiptText).entries.map(({ entry, statement: text, openings }) => {
		const said = JSON.parse(Buffer.from(entry, "base64").toString("utf8"));
		const statement = text === undefined ? null : Buffer.from(text, "base64");
		const sha256 = statement === null ? undefined : createHash("sha256").update(statement).digest("hex");
		return { ...said, statement, openings, fits: sha256 === said.statementSha256 };
	});
}
