/** How long a proof takes from logs of 10, 10⁴ and 10⁶ entries. */
import { randomBytes, randomInt } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startEmbeddedServer } from "../../src/database/embedded/embedded-server.ts";
import { migrate } from "../../src/database/migrate.ts";
import { openPool } from "../../src/database/pool.ts";
import { openLog } from "../../src/operations/log/open-log.ts";
import { readConsistencyProof, readInclusionProof } from "../../src/operations/log/read-log.ts";
import { makeDeps, SILENT } from "../../src/start/deps.ts";

const SIZES = [10, 10_000, 1_000_000];
const REPEATS = 2000;
const MIGRATIONS = new URL("../migrations", import.meta.url).pathname;

export async function benchProofs(): Promise<void> {
	for (const size of SIZES) {
		const folder = await mkdtemp(join(tmpdir(), "handover-proofs-"));
		const server = await startEmbeddedServer(folder, randomBytes);
		const owner = openPool(server.ownerUrl);
		const database = openPool(server.serviceUrl);
		try {
			await migrate(owner, MIGRATIONS);
			await owner.query(
				`INSERT INTO sealed_entry (index, entry_bytes, leaf_sha256, sealed_at)
				 SELECT i, i::text::bytea, encode(sha256('\\x00'::bytea || i::text::bytea), 'hex'), now() FROM generate_series(0, $1::int - 1) AS i`,
				[size],
			);
			const keyFolder = join(folder, "keys");
			const deps = makeDeps({ database, log: SILENT, publicUrl: "", exhibitFolder: folder, keyFolder });
			const begun = performance.now();
			await openLog(deps);
			const adoptedS = (performance.now() - begun) / 1000;
			await owner.query("ANALYZE");
			const floorMs = await meanMs(() =>
				database.query("SELECT leaf_sha256 FROM sealed_entry WHERE index = $1", [randomInt(size)]),
			);
			const inclusionMs = await meanMs(() => readInclusionProof(deps, randomInt(size)));
			const consistencyMs = await meanMs(() => readConsistencyProof(deps, 1 + randomInt(size)));
			const ratio = (ms: number) => `${ms.toFixed(2)} ms (${(ms / floorMs).toFixed(1)} of the floor)`;
			console.log(
				`${size} entries: inclusion ${ratio(inclusionMs)}, consistency ${ratio(consistencyMs)}; floor, one row by its key: ${floorMs.toFixed(2)} ms; tree made anew in ${adoptedS.toFixed(1)} s`,
			);
		} finally {
			await owner.close();
			await database.close();
			await server.stop();
			await rm(folder, { recursive: true, force: true });
		}
	}
}

async function meanMs(act: () => Promise<unknown>): Promise<number> {
	for (let count = 0; count < 100; count += 1) await act();
	const begun = performance.now();
	for (let count = 0; count < REPEATS; count += 1) await act();
	return (performance.now() - begun) / REPEATS;
}
