/** What a link did in the log, and what the device that used it has signed of it. */
import type { Queryable } from "./connection.ts";

/** How long after an act it may be signed. Our choice: time for the next page, and for a second try. */
const SIGNED_WITHIN_MINUTES = 10;

export interface LinkAct {
	readonly leafSha256: string;
	/** Whether it was done just now, by the log's clock, and not before the device entered. */
	readonly isFresh: boolean;
}

/** What was done through a link and may be signed, in log order: its first use, and whatever was sealed through it. */
export async function actsOfLink(database: Queryable, linkId: string, enteredAt: Date): Promise<LinkAct[]> {
	return database.query<LinkAct>(
		`SELECT leaf_sha256 AS "leafSha256",
			-- The log's times are whole milliseconds.
			sealed_at >= date_trunc('milliseconds', $2::timestamptz)
				AND sealed_at >= clock_timestamp() - make_interval(mins => $3) AS "isFresh"
		 FROM sealed_entry JOIN entry_projection p USING (index)
		 WHERE p.by_id = $1 AND (p.kind IN ('record-sealed', 'position-sealed', 'settlement-sealed')
			OR index = (SELECT min(index) FROM entry_projection WHERE subject = $1 AND kind = 'link-used'))
		 ORDER BY index`,
		[linkId, enteredAt, SIGNED_WITHIN_MINUTES],
	);
}

/** The sealed statements of a link's signatures, in log order. */
export async function signaturesOfLink(database: Queryable, linkId: string): Promise<Buffer[]> {
	const rows = await database.query<{ statement_bytes: Buffer }>(
		`SELECT statement_bytes FROM sealed_entry JOIN entry_projection p USING (index)
		 WHERE p.subject = $1 AND p.kind = 'party-signed' ORDER BY index`,
		[linkId],
	);
	return rows.map((row) => row.statement_bytes);
}
