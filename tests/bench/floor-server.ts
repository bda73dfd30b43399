/** The floor of `npm run bench -- seal`: a bare fastify route that inserts one row of a given size and answers with its number. */
import { randomBytes } from "node:crypto";
import fastify from "fastify";
import pg from "pg";

const [databaseUrl = "", bytes = ""] = process.argv.slice(2);
const pool = new pg.Pool({ connectionString: databaseUrl, max: 10 });
const row = randomBytes(Number(bytes));
const app = fastify();
app.post("/", async () => {
	const { rows } = await pool.query("INSERT INTO floor_row (bytes) VALUES ($1) RETURNING id", [row]);
	return rows[0];
});
console.log(await app.listen({ host: "127.0.0.1", port: 0 }));
