/** `POST /api/v1/verify`: a receipt of an independent maker, altered ones, and bytes that are none. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verificationView } from "../../src/contract/verify.ts";
import { orderLog, RECORD, rootOf, testKey, written } from "../records/verify/independent-maker.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

const log = orderLog();
const receipt = written(log.receipt(RECORD, { earlier: [3] }));
const verify = (body: Buffer | string, { query = "", type = "application/json" } = {}) =>
	test.app.inject({
		method: "POST",
		url: `/api/v1/verify${query}`,
		headers: { "content-type": type },
		payload: body,
	});

describe("verifying", () => {
	it("is open to anyone, and takes any media type", async () => {
		for (const type of ["application/json", "application/octet-stream", "text/plain", "image/png"]) {
			const answer = await verify(receipt, { type });
			expect(answer.statusCode, answer.body).toBe(200);
			const body = verificationView.parse(answer.json());
			expect(body).toMatchObject({ outcome: "verified", about: RECORD, format: "handover-risk/receipt/2" });
			expect(body.checks.map(({ id, outcome }) => `${id} ${outcome}`)).toContain("inclusion passed");
			expect(body.checks.every(({ why }) => why !== undefined && !why.includes("verify."))).toBe(true);
			expect(body.entries.map(({ kind }) => kind)).toEqual([
				"record-opened",
				"record-sealed",
				"link-used",
				"record-sealed",
				"party-signed",
			]);
		}
	});
	it("compares with the key that the reader knows", async () => {
		const outcomeWith = async (key: string) =>
			(await verify(receipt, { query: `?key=${encodeURIComponent(key)}` })).json().outcome;
		expect(await outcomeWith(log.keys[0]?.publicKey ?? "")).toBe("verified");
		expect(await outcomeWith(log.keys[0]?.pem ?? "")).toBe("verified");
		expect(await outcomeWith(testKey().publicKey)).toBe("not-verified");
		expect(await outcomeWith("no key")).toBe("not-verified");
	});
	it("compares with a printed checkpoint", async () => {
		const outcomeWith = async (size: number, root: string) =>
			(await verify(receipt, { query: `?printed=${encodeURIComponent(`${size} ${root}`)}` })).json().outcome;
		expect(await outcomeWith(3, rootOf(log.leaves.slice(0, 3)).toString("hex"))).toBe("verified");
		expect(await outcomeWith(3, rootOf(log.leaves.slice(0, 4)).toString("hex"))).toBe("not-verified");
	});
	it("answers 200 and not verified for whatever is sent, and says where", async () => {
		const altered = Buffer.from(receipt);
		altered[200] = (altered[200] ?? 0) ^ 1;
		for (const body of [altered, receipt.subarray(0, 100), Buffer.alloc(0), "{}", '{"a":'.repeat(10_000), "\u0000"]) {
			const answer = await verify(body);
			expect(answer.statusCode, answer.body).toBe(200);
			const { outcome, checks } = verificationView.parse(answer.json());
			expect(outcome).toBe("not-verified");
			expect(checks.find((check) => check.outcome === "failed")?.where).toBeTruthy();
		}
	});
	it("refuses what is too large, and a parameter that is not known", async () => {
		expect((await verify(Buffer.alloc(16 * 1024 * 1024 + 1))).statusCode).toBe(413);
		expect((await verify(receipt, { query: "?keys=x" })).statusCode).toBe(400);
	});
	it("goes on serving while a receipt made to be slow is looked at", async () => {
		const value = log.receipt(RECORD, { earlier: [3] });
		const [earlier] = value.earlier;
		if (earlier === undefined) throw new Error("no earlier checkpoint");
		const slow = verify(written({ ...value, earlier: Array.from({ length: 500 }, () => earlier) }));
		const health = test.app.inject({ url: "/healthz" });
		// Whoever asks meanwhile is answered first.
		const first = await Promise.race([slow.then(() => "receipt"), health.then(() => "health")]);
		expect(first).toBe("health");
		expect((await health).statusCode).toBe(200);
		expect((await slow).statusCode).toBe(200);
	});
});
