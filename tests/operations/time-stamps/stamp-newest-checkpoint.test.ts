/**
 * The queue of time stamps on PostgreSQL, against an authority on this machine (`openssl ts`). What is stored must satisfy
 * `openssl ts -verify` with the note's bytes as data. Pauses are our own choice, tested as such.
 */
import { randomBytes } from "node:crypto";
import { setTimeout as sleep } from "node:timers/promises";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { timeStampsFor } from "../../../src/database/time-stamps.ts";
import type { Deps } from "../../../src/operations/deps.ts";
import { type Authority, stampNewestCheckpoint } from "../../../src/operations/time-stamps/stamp-newest-checkpoint.ts";
import { trustAnchors } from "../../../src/operations/time-stamps/trust-anchors.ts";
import { SILENT } from "../../../src/start/deps.ts";
import { startTimeStamping } from "../../../src/start/time-stamping.ts";
import { type TestDatabase, testDatabase } from "../../setup/test-database.ts";
import {
	type AuthorityServer,
	makeTestAuthority,
	serveAuthority,
	type TestAuthority,
} from "../../setup/time-authority.ts";

const KEY = { id: "0a1b2c3d", origin: "handover-risk/0123456789abcdefghjk", publicKey: "00".repeat(32) };

let authority: TestAuthority;
let server: AuthorityServer;
let db: TestDatabase;
let deps: Deps;
let asked: Authority;
const never = new AbortController().signal;

beforeAll(() => {
	authority = makeTestAuthority();
});
afterAll(() => authority.remove());
beforeEach(async () => {
	server = await serveAuthority(authority);
	db = await testDatabase();
	deps = { database: db.database, randomBytes, log: SILENT } as Partial<Deps> as Deps;
	asked = { url: server.url, anchors: trustAnchors(authority.caPem), everyMin: 60 };
	await db.database.query("INSERT INTO log_key (id, origin, public_key, from_size) VALUES ($1, $2, $3, 0)", [
		KEY.id,
		KEY.origin,
		KEY.publicKey,
	]);
});
afterEach(async () => {
	await server.close();
	await db.close();
});

const noteOf = (size: number) => `${KEY.origin}\n${size}\nAAAA\n\n— ${KEY.origin} BBBB\n`;
const grow = (size: number) =>
	db.database.query("INSERT INTO checkpoint VALUES ($1, $2, $3)", [size, noteOf(size), KEY.id]);
const look = (over: Partial<Authority> = {}, stop = never) => stampNewestCheckpoint(deps, { ...asked, ...over }, stop);
const makeDue = () => db.database.query("UPDATE time_stamp SET next_try_at = clock_timestamp() WHERE token IS NULL");
interface Row {
	size: number;
	token: Buffer | null;
	attempts: number;
	last_error: string | null;
	pause_s: number;
}
const rows = () =>
	db.database.query<Row>(
		`SELECT size, token, attempts, last_error, round(extract(epoch FROM next_try_at - clock_timestamp()))::int AS pause_s
		 FROM time_stamp ORDER BY size`,
	);

describe("the newest checkpoint", () => {
	it("is stamped, and OpenSSL accepts what was stored over the note's bytes", async () => {
		expect(await look()).toBe("nothing-due");
		await grow(1);
		await grow(2);
		expect(await look()).toBe("stamped");
		const [stamp] = await timeStampsFor(db.database, 2, [0]);
		expect(stamp).toMatchObject({ size: 2, note: noteOf(2) });
		expect(authority.opensslVerify(stamp?.token ?? Buffer.alloc(0), Buffer.from(noteOf(2)))).toContain("OK");
		expect(await rows()).toMatchObject([{ size: 2, attempts: 1, last_error: null }]);
	});

	it("is not stamped twice, nor before the interval has passed, nor when nothing was logged since", async () => {
		await grow(1);
		await look();
		expect(await look()).toBe("nothing-due");
		await grow(2);
		expect(await look()).toBe("nothing-due");
		await db.database.query("UPDATE time_stamp SET verified_at = clock_timestamp() - interval '59 minutes'");
		expect(await look()).toBe("nothing-due");
		await db.database.query("UPDATE time_stamp SET verified_at = clock_timestamp() - interval '61 minutes'");
		expect(await look()).toBe("stamped");
		await db.database.query("UPDATE time_stamp SET verified_at = clock_timestamp() - interval '61 minutes'");
		expect(await look()).toBe("nothing-due");
		expect(server.asked).toHaveLength(2);
	});

	it("is asked for once although four instances look at the same moment", async () => {
		await grow(1);
		const outcomes = await Promise.all([look(), look(), look(), look()]);
		expect(outcomes.sort()).toEqual(["nothing-due", "nothing-due", "nothing-due", "stamped"]);
		expect(server.asked).toHaveLength(1);
	});
});

describe("a failure", () => {
	it("is noted with its code and tried again after pauses that double up to an hour", async () => {
		server.answer((_question, response) => response.writeHead(503).end());
		await grow(1);
		const pauses: number[] = [];
		for (let attempt = 1; attempt <= 8; attempt += 1) {
			expect(await look()).toBe("failed");
			expect(await look()).toBe("nothing-due");
			const [row] = await rows();
			expect(row).toMatchObject({ token: null, attempts: attempt, last_error: "http-503" });
			pauses.push(row?.pause_s ?? 0);
			await makeDue();
		}
		for (const [place, expected] of [60, 120, 240, 480, 960, 1920, 3600, 3600].entries()) {
			expect(Math.abs((pauses[place] ?? 0) - expected)).toBeLessThanOrEqual(2);
		}
	});

	it("keeps nothing of an answer that does not hold", async () => {
		await grow(1);
		const other = Buffer.from(randomBytes(32));
		for (const [code, how] of [
			["malformed", () => Buffer.from("<html>try later</html>")],
			["rejected", (question: Buffer) => authority.reply(question, { digests: "sha512" })],
			[
				"wrong-imprint",
				(question: Buffer) => authority.reply(Buffer.concat([question.subarray(0, 24), other, question.subarray(56)])),
			],
		] as const) {
			server.answer((question, response) => response.end(how(question)));
			expect(await look()).toBe("failed");
			expect(await rows()).toMatchObject([{ token: null, last_error: code }]);
			await makeDue();
		}
		expect(await timeStampsFor(db.database, 1, [0])).toEqual([]);
	});

	it("gives its place to a newer checkpoint, which then covers both", async () => {
		server.answer((_question, response) => response.destroy());
		await grow(1);
		await look();
		await grow(2);
		expect(await look()).toBe("nothing-due");
		expect(await rows()).toMatchObject([{ size: 1, last_error: "unreachable" }]);
		await makeDue();
		server.answer((question, response) => response.end(authority.reply(question)));
		expect(await look()).toBe("stamped");
		expect(await rows()).toMatchObject([{ size: 2, attempts: 2, last_error: null }]);
	});
});

describe("while the service runs", () => {
	it("an authority that hangs delays no writer, and a stop breaks the try off; the next start makes it again", async () => {
		server.answer(() => {});
		await grow(1);
		const stop = startTimeStamping(deps, asked, 0.05);
		while (server.asked.length === 0) await sleep(10);
		const begun = performance.now();
		for (let size = 2; size <= 50; size += 1) await grow(size);
		// Who waited for the try would wait for 30 s, however fast the machine is.
		expect(performance.now() - begun).toBeLessThan(20_000);
		const stopping = performance.now();
		await stop();
		expect(performance.now() - stopping).toBeLessThan(10_000);
		expect(await rows()).toMatchObject([{ size: 1, token: null, attempts: 1 }]);
		await makeDue();
		server.answer((question, response) => response.end(authority.reply(question)));
		const stopAgain = startTimeStamping(deps, asked, 0.05);
		while ((await rows())[0]?.token === null) await sleep(20);
		await stopAgain();
		expect(await rows()).toMatchObject([{ size: 50, attempts: 2 }]);
	}, 60_000);

	it("a database that fails does not end the looking", async () => {
		let calls = 0;
		const broken = {
			...deps,
			database: { ...db.database, transaction: () => Promise.reject(new Error(`${++calls}`)) },
		};
		const stop = startTimeStamping(broken, asked, 0.01);
		while (calls < 3) await sleep(10);
		await stop();
	});
});

it("a receipt is given the first stamp after each of its entries, newest first, and none beyond its checkpoint", async () => {
	for (const size of [3, 5, 9, 12]) {
		await grow(size);
		await look({ everyMin: 0 });
	}
	const sizes = async (size: number, indexes: number[]) =>
		(await timeStampsFor(db.database, size, indexes)).map((stamp) => stamp.size);
	expect(await sizes(12, [0, 2, 3, 4, 8])).toEqual([9, 5, 3]);
	expect(await sizes(12, [9, 11])).toEqual([12]);
	expect(await sizes(11, [4, 9])).toEqual([5]);
	expect(await sizes(12, [12])).toEqual([]);
	expect(await sizes(12, [])).toEqual([]);
});
