/** What a link did in the log, and what the device that used it has signed of it. */
import type { Queryable } from "./connection.ts";

/** Leaves that a device signs for a link, in log order: the link's first use, and whatever was sealed through it. */
export async function leavesOfLink(database: Queryable, linkId: string): Promise<string[]> {
	const rows = await database.query<{ leaf_sha256: string }>(
		`SELECT leaf_sha256 FROM sealed_entry JOIN entry_projection p USING (index)
		 WHERE p.by_id = $1 AND (p.kind IN ('record-sealed', 'position-sealed', 'settlement-sealed')
			OR index = (SELECT min(index) FROM entry_projection WHERE subject = $1 AND kind = 'link-used'))
		 ORDER BY index`,
		[linkId],
	);
	return rows.map((row) => row.leaf_sha256);
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
