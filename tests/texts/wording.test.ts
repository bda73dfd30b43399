/** What is said to people: no sentence decides who is liable, at fault or to blame, in any text and on any page of the demo. */
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeSetUpLink } from "../../src/operations/access/set-up.ts";
import { openLog } from "../../src/operations/log/open-log.ts";
import { buildApp } from "../../src/start/build-app.ts";
import { playScenarios } from "../../src/start/demo/play-scenarios.ts";
import { makeDeps, SILENT } from "../../src/start/deps.ts";
import { english } from "../../src/texts/english.ts";
import { type TestDatabase, testDatabase } from "../setup/test-database.ts";
import { PRONOUNCES, TRANSPOSES } from "./pronounces.ts";

/** Sentences that say what the service does not do. */
const EXCEPTIONS = new Set<string>(["layout.foot"]);
const sentences = Object.entries(english) as [string, string][];

describe("texts", () => {
	it("pronounce nothing", () => {
		expect(sentences.filter(([key, text]) => PRONOUNCES.test(text) && !EXCEPTIONS.has(key))).toEqual([]);
	});
	it("turn no probability round: findings under an origin, never an origin from findings", () => {
		expect(sentences.filter(([, text]) => TRANSPOSES.test(text))).toEqual([]);
		for (const bad of [
			"It was probably caused by a fall.",
			"The board was likely damaged; it likely came from the trip.",
			"The most likely cause is a shock.",
			"The probability that the carrier dropped it is 90 %.",
			"This proves that the carrier dropped it.",
			"It must have been dropped.",
		]) {
			expect(TRANSPOSES.test(bad), bad).toBe(true);
		}
		for (const good of [
			"The findings are 5 times as probable under this origin as under the others.",
			"A shock on the way is not excluded.",
		]) {
			expect(TRANSPOSES.test(good), good).toBe(false);
		}
	});
	it("the exceptions are still needed, and are few", () => {
		expect([...EXCEPTIONS].filter((key) => !PRONOUNCES.test((english as Record<string, string>)[key] ?? ""))).toEqual(
			[],
		);
		expect(EXCEPTIONS.size).toBeLessThan(6);
	});
	it("the test itself would see a sentence that does", () => {
		expect(PRONOUNCES.test("The carrier is liable for the damage.")).toBe(true);
		expect(PRONOUNCES.test("The repairer is at fault.")).toBe(true);
	});
	it("have whole braces and no empty text", () => {
		for (const [key, text] of sentences) {
			expect(text.trim(), key).not.toBe("");
			expect(text.replace(/\{\w+\}/g, ""), key).not.toMatch(/[{}]/);
		}
	});
});

describe("every page of the demo", () => {
	let db: TestDatabase;
	let close: () => Promise<void>;
	let base: string;
	let cookie: string;
	beforeAll(async () => {
		db = await testDatabase();
		const deps = makeDeps({
			database: db.database,
			log: SILENT,
			publicUrl: "http://127.0.0.1",
			exhibitFolder: "/tmp/handover-risk-wording",
			keyFolder: db.keyFolder,
		});
		await openLog(deps);
		const app = await buildApp(deps, { requestsPerMinute: 1_000_000 });
		close = () => app.close();
		await app.listen({ host: "127.0.0.1", port: 0 });
		base = `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`;
		await playScenarios({ url: base, setUpLink: (await makeSetUpLink(deps)) ?? "", outFolder: null, withYear: false });
		const signedIn = await fetch(`${base}/api/v1/session`, {
			method: "POST",
			headers: { "content-type": "application/json" },
			body: JSON.stringify({ name: "bench", passphrase: "an invented passphrase" }),
		});
		cookie = signedIn.headers.getSetCookie()[0]?.split(";")[0] ?? "";
	});
	afterAll(async () => {
		await close?.();
		await db?.close();
	});

	it("pronounces nothing, and none fails", async () => {
		const waiting = ["/"];
		const seen = new Set<string>();
		while (waiting.length > 0) {
			const path = waiting.pop() ?? "";
			if (seen.has(path)) continue;
			seen.add(path);
			const answer = await fetch(base + path, { headers: { cookie } });
			expect(answer.status, path).toBe(200);
			const html = await answer.text();
			const words = html
				.replace(/<(script|style)[\s\S]*?<\/\1>/g, "")
				.replace(/<[^>]+>/g, " ")
				.replaceAll(english["layout.foot"], "")
				.replaceAll(english["comparison-page.disclaimer"], "");
			expect(PRONOUNCES.exec(words)?.[0] ?? null, path).toBeNull();
			expect(TRANSPOSES.exec(words)?.[0] ?? null, path).toBeNull();
			for (const [, href = ""] of html.matchAll(/href="(\/[^"#]*)"/g)) {
				const path = href.replaceAll("&amp;", "&");
				if (/^\/(orders|consignments|records|benches)/.test(path) && !path.endsWith("/link")) waiting.push(path);
			}
		}
		expect(seen.size).toBeGreaterThan(30);
	}, 120_000);
});
