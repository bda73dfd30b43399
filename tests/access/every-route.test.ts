/** Every route of the running app, called as every kind of caller: only those that it declares come in, and nobody gets 500. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CALLER_CLASSES, type CallerClass } from "../../src/access/callers.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
/** Headers by kind of caller. */
const headers = new Map<string, Record<string, string>>();

beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	const other = await customerScene(shop);
	const enter = async (link: { url: string; code: string }) => {
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: link.url.split("/").at(-1), code: link.code },
		});
		expect(entered.statusCode, entered.body).toBe(200);
		return { cookie: `link=${entered.cookies[0]?.value}` };
	};
	const make = async (body: object) => (await shop.ask("POST", "/api/v1/links", body)).json();
	headers.set("nobody", {});
	headers.set("account", { authorization: `Bearer ${shop.token}` });
	headers.set("account by session", { cookie: shop.sessionCookie });
	headers.set("link:record", await enter(scene.link));
	headers.set("link:settle", await enter(await make({ scope: "settle", orderId: scene.orderId })));
	headers.set("link:reader", await enter(await make({ scope: "reader", orderId: scene.orderId })));
	headers.set("link of another order", await enter(other.link));
	const withdrawn = await make({ scope: "settle", orderId: scene.orderId });
	headers.set("withdrawn link", await enter(withdrawn));
	await shop.ask("DELETE", `/api/v1/links/${withdrawn.id}`);
	const expired = await make({ scope: "settle", orderId: scene.orderId });
	headers.set("expired link", await enter(expired));
	await shop.db.database.query("UPDATE link SET expires_at = now() - interval '100 hours' WHERE id = $1", [expired.id]);
});
afterAll(async () => shop?.close());

interface Route {
	readonly method: "GET" | "POST" | "PUT" | "DELETE";
	readonly url: string;
	readonly callers: readonly CallerClass[];
}

/** The routes as the running app has them. */
function routesOf(): Route[] {
	const { routes } = shop;
	return routes.flatMap(({ method, url, callers }) =>
		(["GET", "POST", "PUT", "DELETE"] as const)
			.filter((one) => method.includes(one))
			.map((one) => ({ method: one, url, callers })),
	);
}

/** The route's address, its parameters filled with things of the scene's order. */
function addressOf(url: string): string {
	const ids: Readonly<Record<string, string>> = {
		orders: scene.orderId,
		consignments: scene.legId,
		records: scene.recordId,
		guided: scene.recordId,
		links: scene.link.id,
		tokens: `tok_${"0".repeat(20)}`,
		exhibits: "0".repeat(64),
	};
	return url
		.replace(
			/\/(\w+)\/:(\w+)/g,
			(_, thing: string, name: string) => `/${thing}/${ids[thing] ?? (name === "token" ? "A".repeat(43) : "x")}`,
		)
		.replace(/:\w+/g, "x");
}

const classOf = (kind: string): CallerClass => CALLER_CLASSES.find((known) => kind.startsWith(known)) ?? "link:settle";

describe("every route and every caller", () => {
	it("has a route list to read, and every route declares its callers", () => {
		expect(routesOf().length).toBeGreaterThan(50);
		for (const route of routesOf()) expect(route.callers.length, route.url).toBeGreaterThan(0);
	});

	it.each([
		"nobody",
		"account",
		"account by session",
		"link:record",
		"link:settle",
		"link:reader",
		"link of another order",
		"withdrawn link",
		"expired link",
	])(
		"as %s",
		async (kind) => {
			for (const route of routesOf()) {
				// Sealing, discarding and withdrawing would change the scene for the callers after.
				if (/seal|discard|withdraw|sign-out|session$|slip/.test(route.url) && route.method !== "GET") continue;
				if (/links\/:id/.test(route.url)) continue;
				const url = addressOf(route.url);
				const answer = await shop.app.inject({
					method: route.method,
					url,
					headers: { ...headers.get(kind) },
					...(route.method === "GET" || route.method === "DELETE" ? {} : { payload: {} }),
				});
				const shown = `${kind}: ${route.method} ${url} → ${answer.statusCode}`;
				expect(answer.statusCode, `${shown} ${answer.body.slice(0, 300)}`).toBeLessThan(500);
				const gone = kind === "withdrawn link" || kind === "expired link";
				const seenAs: CallerClass = gone ? "nobody" : kind === "link of another order" ? "link:record" : classOf(kind);
				if (!route.callers.includes(seenAs) && !route.callers.includes("nobody")) {
					const toSignIn = answer.statusCode === 303 && answer.headers.location === "/sign-in";
					expect([401, 403].includes(answer.statusCode) || toSignIn, shown).toBe(true);
				} else if (kind === "link of another order" && /:id/.test(route.url) && !route.callers.includes("nobody")) {
					expect([400, 403, 404, 428].includes(answer.statusCode), shown).toBe(true);
				}
			}
		},
		120_000,
	);
});

describe("forms and other sites", () => {
	const form = (extra: Record<string, string>, body = "label=x") =>
		shop.app.inject({
			method: "POST",
			url: "/benches",
			headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded", ...extra },
			payload: body,
		});
	it("refuses a form without the session's token, and one with another's", async () => {
		expect((await form({})).statusCode).toBe(403);
		expect((await form({}, "label=x&formToken=abc")).statusCode).toBe(403);
	});
	it("refuses what a browser says comes from another site", async () => {
		const api = (extra: Record<string, string>) =>
			shop.app.inject({
				method: "POST",
				url: "/api/v1/benches",
				headers: { cookie: shop.sessionCookie, ...extra },
				payload: { label: "Bench" },
			});
		expect((await api({ "sec-fetch-site": "cross-site" })).statusCode).toBe(403);
		expect((await api({ origin: "https://elsewhere.example" })).statusCode).toBe(403);
		expect((await api({ origin: "null" })).statusCode).toBe(403);
		expect(
			(await api({ origin: "http://localhost", host: "localhost", "sec-fetch-site": "same-origin" })).statusCode,
		).toBe(201);
	});
	it("sets cookies that scripts cannot read and other sites cannot send", async () => {
		const answer = await shop.app.inject({
			method: "POST",
			url: "/api/v1/session",
			payload: { name: "bench", passphrase: "a passphrase for tests" },
		});
		expect(answer.cookies[0]).toMatchObject({ name: "session", httpOnly: true, sameSite: "Lax", path: "/" });
	});
});

describe("links and their codes", () => {
	const enter = (token: string, code: string) =>
		shop.app.inject({ method: "POST", url: "/api/v1/links/enter", payload: { token, code } });
	it("is not found by guessing", async () => {
		expect((await enter("A".repeat(43), "000000")).statusCode).toBe(404);
	});
	it("locks after five wrong codes, also for the right one, and for 15 minutes", async () => {
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: scene.orderId })).json();
		const token = link.url.split("/").at(-1);
		const wrong = link.code === "000000" ? "000001" : "000000";
		const answers = [];
		for (let attempt = 0; attempt < 5; attempt += 1) answers.push((await enter(token, wrong)).statusCode);
		expect(answers).toEqual([401, 401, 401, 401, 401]);
		const locked = await enter(token, link.code);
		expect(locked.statusCode).toBe(429);
		expect(Number(locked.headers["retry-after"])).toBe(900);
		await shop.db.database.query("UPDATE throttle SET locked_until = now() - interval '1 second' WHERE key = $1", [
			`code ${link.id}`,
		]);
		expect((await enter(token, link.code)).statusCode).toBe(200);
	});
	it("keeps no token, code or passphrase in the database as it was given", async () => {
		const { rows } = {
			rows: await shop.db.database.query<Record<string, unknown>>(
				"SELECT to_jsonb(l) AS row FROM link l UNION ALL SELECT to_jsonb(s) FROM session s UNION ALL SELECT to_jsonb(t) FROM api_token t UNION ALL SELECT to_jsonb(a) FROM account a",
			),
		};
		const everything = JSON.stringify(rows);
		for (const secret of [
			shop.token,
			shop.sessionCookie.split("=")[1] ?? "",
			scene.link.url.split("/").at(-1) ?? "",
			scene.link.code,
			"a passphrase for tests",
		]) {
			expect(everything.includes(`"${secret}"`)).toBe(false);
		}
	});
	it("lets an expired link seal a draft that was begun, for 72 hours, and begin nothing new", async () => {
		const begun = await customerScene(shop);
		const entered = await enter(begun.link.url.split("/").at(-1) ?? "", begun.link.code);
		const cookie = `link=${entered.cookies[0]?.value}`;
		const content = { observedAt: "2026-03-05T10:00:00Z", state: "good", identity: { serialNumber: "OW24-7731-C" } };
		const save = (version: number) =>
			shop.app.inject({
				method: "PUT",
				url: `/api/v1/records/${begun.recordId}`,
				headers: { cookie, "if-match": `"v${version}"` },
				payload: content,
			});
		const expire = (hours: number) =>
			shop.db.database.query("UPDATE link SET expires_at = now() - make_interval(hours => $2) WHERE id = $1", [
				begun.link.id,
				hours,
			]);
		await expire(1);
		const refused = await save(1);
		expect(refused.statusCode, refused.body).toBe(403);
		expect(refused.json().type).toContain("link-expired");
		await expire(-1);
		expect((await save(1)).statusCode).toBe(200);
		await expire(71);
		const sealed = await shop.app.inject({
			method: "POST",
			url: `/api/v1/records/${begun.recordId}/seal`,
			headers: { cookie, "if-match": '"v2"' },
		});
		expect(sealed.statusCode, sealed.body).toBe(200);
		await expire(73);
		expect(
			(await shop.app.inject({ method: "GET", url: `/api/v1/records/${begun.recordId}`, headers: { cookie } }))
				.statusCode,
		).toBe(401);
	});
});
