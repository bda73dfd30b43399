/** Independent time in the built service, with an authority on this machine: from the setting to a receipt that OpenSSL verifies. */
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import pg from "pg";
import { afterAll, beforeAll, expect, it } from "vitest";
import { findRunningServer } from "../../src/database/embedded/embedded-server.ts";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { startBuiltService } from "../setup/built-service.ts";
import {
	type AuthorityServer,
	makeTestAuthority,
	serveAuthority,
	type TestAuthority,
} from "../setup/time-authority.ts";
import { openOneOrder, seal, setUp } from "../trials/sealing-client.ts";

let folder: string;
let authority: TestAuthority;
let server: AuthorityServer;
beforeAll(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-stamps-"));
	authority = makeTestAuthority();
	server = await serveAuthority(authority);
});
afterAll(async () => {
	await server.close();
	authority.remove();
	await rm(folder, { recursive: true, force: true });
});

it("stamps a checkpoint while the service seals", async () => {
	const variables = { TIMESTAMP_URL: server.url, TIMESTAMP_CA: authority.caPath };
	const service = await startBuiltService(folder, { variables });
	try {
		const access = { url: service.url, token: await setUp(service.url, service.setUpLink ?? "") };
		const ids: string[] = [];
		for await (const draft of openOneOrder(access)) {
			await seal(access, draft);
			ids.push(draft.id);
		}
		const client = new pg.Client((await findRunningServer(folder))?.serviceUrl);
		await client.connect();
		const stamped = async () =>
			(
				await client.query<{ note: string; token: Buffer }>(
					"SELECT note, token FROM time_stamp JOIN checkpoint USING (size) WHERE token IS NOT NULL",
				)
			).rows[0];
		let found = await stamped();
		for (let left = 100; found === undefined && left > 0; left -= 1) {
			await sleep(250);
			found = await stamped();
		}
		if (found === undefined) throw new Error("no stamp came within 25 s");
		expect(authority.opensslVerify(found.token, Buffer.from(found.note))).toContain("Verification: OK");
		await client.end();
		const authorization = `Bearer ${access.token}`;
		const answer = await fetch(`${service.url}/api/v1/records/${ids[0]}/receipt`, { headers: { authorization } });
		const receipt = await answer.text();
		const { outcome, checks } = verifyReceipt(Buffer.from(receipt));
		expect(outcome).toBe("verified");
		expect(checks.filter(({ id }) => id === "independent-time")).toMatchObject([{ outcome: "passed" }]);
		const [given] = (JSON.parse(receipt) as { timeStamps: { checkpoint: string; token: string }[] }).timeStamps;
		const [token, note] = [Buffer.from(given?.token ?? "", "base64"), Buffer.from(given?.checkpoint ?? "")];
		expect(authority.opensslVerify(token, note)).toContain("Verification: OK");
	} finally {
		await service.stop();
	}
	expect(await service.ended).toBe(0);
});

it("a wrong setting stops the start with one line that names it", async () => {
	const broken = join(folder, "broken.pem");
	await writeFile(broken, (await readFile(authority.caPath, "utf8")).replace(/[A-Za-z0-9]{40}/, ""));
	for (const [variables, line] of [
		[{ TIMESTAMP_URL: server.url }, "settings TIMESTAMP_URL and TIMESTAMP_CA come together"],
		[{ TIMESTAMP_URL: "ftp://x", TIMESTAMP_CA: "a" }, "setting TIMESTAMP_URL must be an http:// or https:// address"],
		[{ TIMESTAMP_EVERY_MIN: "0" }, "setting TIMESTAMP_EVERY_MIN must be a number of minutes"],
		[{ TIMESTAMP_URL: server.url, TIMESTAMP_CA: join(folder, "none.pem") }, "setting TIMESTAMP_CA: "],
		[{ TIMESTAMP_URL: server.url, TIMESTAMP_CA: broken }, "setting TIMESTAMP_CA: "],
	] as const) {
		const failure = await startBuiltService(folder, { variables: { ...variables } }).catch(
			(error: Error) => error.message,
		);
		expect(failure).toContain(`handover-risk did not start: ${line}`);
		expect(String(failure).split("\n")).toHaveLength(1);
	}
});
