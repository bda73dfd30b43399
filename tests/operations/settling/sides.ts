/** An order with both its sides and those who may only read, for the tests of positions and settlement. */
import { expect } from "vitest";
import { customerScene, type Scene } from "../../pages/customer-scene.ts";
import type { TestApp } from "../../setup/test-app.ts";

export interface Sides {
	readonly scene: Scene;
	readonly ownerId: string;
	readonly repairerId: string;
	/** Asks as a kind of caller; `repairer` is the shop. */
	as(who: Who, method: "GET" | "POST", path: string, body?: unknown): ReturnType<TestApp["ask"]>;
	/** The same for a path that does not begin with the order's. */
	asAt(who: Who, method: "GET" | "POST", url: string, body?: unknown): ReturnType<TestApp["ask"]>;
}
export const WHO = [
	"repairer",
	"owner",
	"reader",
	"record link",
	"link of another order",
	"withdrawn link",
	"nobody",
] as const;
export type Who = (typeof WHO)[number];

export async function sidesOf(shop: TestApp): Promise<Sides> {
	const scene = await customerScene(shop);
	const other = await customerScene(shop);
	const enter = async (link: { url: string; code: string }) => {
		const payload = { token: link.url.split("/").at(-1), code: link.code };
		const entered = await shop.app.inject({ method: "POST", url: "/api/v1/links/enter", payload });
		expect(entered.statusCode, entered.body).toBe(200);
		return { cookie: `link=${entered.cookies[0]?.value}` };
	};
	const make = async (body: object) => (await shop.ask("POST", "/api/v1/links", body)).json();
	const order = (await shop.ask("GET", `/api/v1/orders/${scene.orderId}`)).json();
	const withdrawn = await make({ scope: "settle", orderId: scene.orderId });
	const headers: Record<Who, Record<string, string>> = {
		repairer: { authorization: `Bearer ${shop.token}` },
		owner: await enter(await make({ scope: "settle", orderId: scene.orderId })),
		reader: await enter(await make({ scope: "reader", orderId: scene.orderId })),
		"record link": await enter(scene.link),
		"link of another order": await enter(await make({ scope: "settle", orderId: other.orderId })),
		"withdrawn link": await enter(withdrawn),
		nobody: {},
	};
	await shop.ask("DELETE", `/api/v1/links/${withdrawn.id}`);
	const asAt: Sides["asAt"] = (who, method, url, body) =>
		shop.app.inject({
			method,
			url,
			headers: { ...headers[who], ...(body === undefined ? {} : { "content-type": "application/json" }) },
			...(body === undefined ? {} : { payload: JSON.stringify(body) }),
		});
	return {
		scene,
		ownerId: order.owner.id,
		repairerId: order.repairer.id,
		asAt,
		as: (who, method, path, body) => asAt(who, method, `/api/v1/orders/${scene.orderId}${path}`, body),
	};
}
