/**
 * What the service asks of its database before it starts: a role that may add to sealed tables and do nothing else to
 * them, and writes that last.
 */
import type { Queryable } from "./connection.ts";

/** Tables that migrations guarded (`guard_sealed_table`). */
const SEALED_TABLES = `SELECT c.oid, c.relname, c.relowner, n.nspowner
	FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
	WHERE c.relkind = 'r' AND EXISTS (SELECT FROM pg_trigger t WHERE t.tgrelid = c.oid AND t.tgname = 'sealed_rows')`;

/**
 * @throws Error when the current role owns a sealed table or its schema, is a superuser, or may change one, even in one
 * column; and when a guard does not fire always
 */
export async function refuseMightyRole(database: Queryable): Promise<void> {
	const rows = await database.query<{ relname: string; mighty: boolean; guarded: boolean }>(
		`SELECT s.relname,
			pg_has_role(current_user, s.relowner, 'MEMBER') OR pg_has_role(current_user, s.nspowner, 'MEMBER')
			OR has_any_column_privilege(s.oid, 'UPDATE') OR has_table_privilege(s.oid, 'DELETE')
			OR has_table_privilege(s.oid, 'TRUNCATE') OR has_table_privilege(s.oid, 'TRIGGER') AS mighty,
			(SELECT count(*) = 2 FROM pg_trigger t
			 WHERE t.tgrelid = s.oid AND t.tgname IN ('sealed_rows', 'sealed_table') AND t.tgenabled = 'A') AS guarded
		 FROM (${SEALED_TABLES}) s`,
	);
	if (rows.length === 0) throw new Error("the database has no sealed table: it was not migrated");
	const mighty = rows.filter((row) => row.mighty !== false);
	if (mighty.length > 0) {
		throw new Error(
			`the role of DATABASE_URL may change ${mighty.map((row) => row.relname).join(", ")}: use the serving role handover_service, which owns nothing`,
		);
	}
	const open = rows.filter((row) => row.guarded !== true);
	if (open.length > 0) {
		throw new Error(
			`the guards of ${open.map((row) => row.relname).join(", ")} are switched off: as their owner, ALTER TABLE … ENABLE ALWAYS TRIGGER sealed_rows, and sealed_table`,
		);
	}
}

/** @throws Error when the database may forget what it has acknowledged: a receipt is given only for what is on disk */
export async function refuseForgetfulDatabase(database: Queryable): Promise<void> {
	for (const [setting, wrong] of [
		["fsync", "off"],
		["synchronous_commit", "off"],
	] as const) {
		const [row] = await database.query<{ value: string }>("SELECT current_setting($1) AS value", [setting]);
		if (row?.value === wrong) {
			throw new Error(`the database runs with ${setting} = ${wrong} and may lose what it acknowledged: set it to on`);
		}
	}
}
