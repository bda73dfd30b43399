/** An order in which the owner brought photos through a link and the shop brought its own, both records sealed. */
import { expect } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import type { TestApp } from "./test-app.ts";

export interface PictureScene extends Scene {
	/** The shop's own record. */
	readonly shopRecordId: string;
	/** Headers by kind of caller. */
	readonly as: Readonly<Record<"shop" | "owner" | "settle" | "reader" | "other", Record<string, string>>>;
	/** Brings a file to a draft; gives its SHA-256. */
	bring(who: "shop" | "owner", fileName: string, bytes: Buffer): Promise<string>;
	get(who: keyof PictureScene["as"], path: string): ReturnType<TestApp["ask"]>;
	post(who: keyof PictureScene["as"], path: string, body: object): ReturnType<TestApp["ask"]>;
	/** Seals the owner's record and the shop's, each with what was brought to it. */
	sealBoth(): Promise<void>;
}

export async function pictureScene(shop: TestApp): Promise<PictureScene> {
	const scene = await customerScene(shop);
	const { orderId, recordId, link } = scene;
	const other = await customerScene(shop);
	const { repairer } = (await shop.ask("GET", `/api/v1/orders/${orderId}`)).json();
	const shopRecord = await shop.ask("POST", `/api/v1/orders/${orderId}/records`, { stage: "bench" });
	const shopRecordId = shopRecord.json().id as string;
	const enter = async (made: { url: string; code: string }) => {
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: made.url.split("/").at(-1), code: made.code },
		});
		return { cookie: `link=${entered.cookies[0]?.value}` };
	};
	const makeLink = async (body: object) =>
		enter((await shop.ask("POST", "/api/v1/links", { orderId, ...body })).json());
	const as = {
		shop: { authorization: `Bearer ${shop.token}` },
		owner: await enter(link),
		// Of the other side than the owner.
		settle: await makeLink({ scope: "settle", partyId: repairer.id }),
		reader: await makeLink({ scope: "reader" }),
		other: await enter(other.link),
	};
	const brought: Record<"shop" | "owner", string[]> = { shop: [], owner: [] };
	const records = { shop: shopRecordId, owner: recordId };
	const inject = (method: "GET" | "POST", who: keyof typeof as, url: string, payload?: object) =>
		shop.app.inject({ method, url, headers: as[who], ...(payload === undefined ? {} : { payload }) });
	return {
		...scene,
		shopRecordId,
		as,
		get: (who, path) => inject("GET", who, path),
		post: (who, path, body) => inject("POST", who, path, body),
		async bring(who, fileName, bytes) {
			const answer = await shop.app.inject({
				method: "POST",
				url: `/api/v1/records/${records[who]}/exhibits?fileName=${fileName}`,
				headers: { ...as[who], "content-type": "application/octet-stream" },
				payload: bytes,
			});
			expect(answer.statusCode, answer.body).toBe(201);
			brought[who].push(answer.json().sha256);
			return answer.json().sha256;
		},
		async sealBoth() {
			for (const who of ["owner", "shop"] as const) {
				const content = {
					observedAt: who === "owner" ? "2026-03-05T10:00:00Z" : "2026-03-06T10:00:00Z",
					state: "good",
					identity: { serialNumber: "OW24-7731-C" },
					exhibits: brought[who].map((sha256) => ({ sha256, view: "other" })),
				};
				const path = `/api/v1/records/${records[who]}`;
				const saved = await shop.app.inject({
					method: "PUT",
					url: path,
					headers: { ...as[who], "if-match": '"v1"' },
					payload: content,
				});
				expect(saved.statusCode, saved.body).toBe(200);
				const sealed = await shop.app.inject({
					method: "POST",
					url: `${path}/seal`,
					headers: { ...as[who], "if-match": '"v2"' },
				});
				expect(sealed.statusCode, sealed.body).toBe(200);
			}
		},
	};
}
