/** Receipts as the service gives them out, verified from their bytes alone. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let test: TestApp;
let scene: Scene;
let receipt: Buffer;
beforeAll(async () => {
	test = await testApp();
	scene = await customerScene(test);
	const answer = await test.ask("GET", `/api/v1/records/${scene.departureId}/receipt`);
	expect(answer.statusCode, answer.body).toBe(200);
	receipt = answer.rawPayload;
});
afterAll(() => test?.close());

describe("the receipt of a sealed record", () => {
	it("is verified, and says what it is about", () => {
		const { outcome, checks, about, entries } = verifyReceipt(receipt);
		expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
		expect(outcome).toBe("verified");
		expect(about).toBe(scene.departureId);
		expect(entries.map(({ kind }) => kind)).toContain("record-sealed");
	});
	it("is refused where any byte was changed, and at every truncation", () => {
		for (let at = 0; at < receipt.length; at += 7) {
			const altered = Buffer.from(receipt);
			altered[at] = (altered[at] ?? 0) ^ (1 << (at % 8));
			expect(verifyReceipt(altered).outcome, `byte ${at}`).toBe("not-verified");
			expect(verifyReceipt(receipt.subarray(0, at)).outcome, `${at} bytes`).toBe("not-verified");
		}
	}, 120_000);
	it("is verified by the service with the same outcomes as without it", async () => {
		const answer = await test.app.inject({ method: "POST", url: "/api/v1/verify", payload: receipt });
		const ours = verifyReceipt(receipt);
		expect(answer.json()).toMatchObject({ outcome: ours.outcome, about: ours.about, entries: ours.entries });
		expect(answer.json().checks.map(({ id, outcome }: { id: string; outcome: string }) => `${id} ${outcome}`)).toEqual(
			ours.checks.map(({ id, outcome }) => `${id} ${outcome}`),
		);
	});
});
