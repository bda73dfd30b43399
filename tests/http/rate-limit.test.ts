/** Many requests from one address: RFC 6585 section 4 (429 with Retry-After, RFC 9110 section 10.2.3). */
import { afterAll, beforeAll, expect, it } from "vitest";
import { buildApp } from "../../src/start/build-app.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

it("are slowed down where everyone may ask, and not where only a known caller may", async () => {
	const app = await buildApp(test.deps, { requestsPerMinute: 3 });
	try {
		const open = async () => app.inject({ method: "GET", url: "/api/v1/openapi.json" });
		for (let count = 0; count < 3; count += 1) expect((await open()).statusCode).toBe(200);
		const refused = await open();
		expect(refused.statusCode).toBe(429);
		expect(refused.headers["content-type"]).toMatch(/^application\/problem\+json/);
		expect(Number(refused.headers["retry-after"])).toBeGreaterThan(0);
		expect(Number(refused.headers["retry-after"])).toBeLessThanOrEqual(60);
		const known = { method: "GET", url: "/api/v1/orders", headers: { authorization: `Bearer ${test.token}` } } as const;
		for (let count = 0; count < 5; count += 1) expect((await app.inject(known)).statusCode).toBe(200);
	} finally {
		await app.close();
	}
});
