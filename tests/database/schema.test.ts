/**
 * What all migrations together make, as PostgreSQL's own catalogue has it, beside `schema.txt`, so that a change shows as
 * a whole. A regression value of our own: after a new migration, look at the difference and `npm run vitest -- -u`.
 */
import { expect, it } from "vitest";
import { testDatabase } from "../setup/test-database.ts";

it("the schema is the one that schema.txt shows", async () => {
	const test = await testDatabase();
	try {
		const rows = await test.database.query<{ line: string }>(
			`WITH t AS (SELECT c.oid, c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
				WHERE n.nspname = 'public' AND c.relkind = 'r'),
			lines AS (
				SELECT relname, 1 AS part, lpad(attnum::text, 3) AS place, format('  %s %s%s%s', attname, format_type(atttypid, atttypmod),
					CASE WHEN attnotnull THEN ' NOT NULL' END, ' DEFAULT ' || pg_get_expr(adbin, adrelid)) AS line
				FROM t JOIN pg_attribute ON attrelid = t.oid AND attnum > 0 AND NOT attisdropped
				LEFT JOIN pg_attrdef ON adrelid = attrelid AND adnum = attnum
				UNION ALL
				SELECT relname, 2, conname, format('  %s %s', conname, pg_get_constraintdef(c.oid))
				FROM t JOIN pg_constraint c ON conrelid = t.oid AND contype <> 'n'
				UNION ALL
				SELECT t.relname, 3, i.relname, '  ' || pg_get_indexdef(indexrelid)
				FROM t JOIN pg_index ON indrelid = t.oid JOIN pg_class i ON i.oid = indexrelid
				WHERE NOT EXISTS (SELECT FROM pg_constraint WHERE conindid = indexrelid)
				UNION ALL
				SELECT relname, 4, tgname, format('  %s, enabled %s', pg_get_triggerdef(g.oid), tgenabled)
				FROM t JOIN pg_trigger g ON tgrelid = t.oid AND NOT tgisinternal
				UNION ALL
				SELECT relname, 5, '', '  handover_service may ' || string_agg(privilege, ', ')
				FROM t, unnest(ARRAY['SELECT', 'INSERT', 'UPDATE', 'DELETE', 'TRUNCATE', 'REFERENCES', 'TRIGGER']) privilege
				WHERE has_table_privilege('handover_service', t.oid, privilege) GROUP BY relname
				UNION ALL
				SELECT relname, 0, '', relname FROM t
			)
			SELECT line FROM lines ORDER BY relname COLLATE "C", part, place COLLATE "C"`,
		);
		const schema = `${rows.map((row) => row.line).join("\n")}\n`;
		await expect(schema).toMatchFileSnapshot("schema.txt");
	} finally {
		await test.close();
	}
});
