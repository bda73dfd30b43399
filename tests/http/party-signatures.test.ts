/**
 * Counter-signatures through the API. Keys and signatures are made with WebCrypto as Node has it, as a browser makes them;
 * what was sealed is verified by `records/verify/`, which has its curve from another library (ECDSA P-256, FIPS 186-5).
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPool } from "../../src/database/pool.ts";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: Scene;
let cookie: string;
let keys: CryptoKeyPair;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	cookie = await enter();
	keys = await makeKeys();
});
afterAll(() => shop?.close());

/** The cookie of a device that enters the link now. */
async function enter(): Promise<string> {
	const entered = await shop.app.inject({
		method: "POST",
		url: "/api/v1/links/enter",
		payload: { token: scene.link.url.split("/").at(-1), code: scene.link.code },
	});
	return String(entered.headers["set-cookie"]).split(";")[0] ?? "";
}

const makeKeys = () => crypto.subtle.generateKey({ name: "ECDSA", namedCurve: "P-256" }, false, ["sign", "verify"]);
const hex = (bytes: ArrayBuffer) => Buffer.from(bytes).toString("hex");

async function signatureOf(leafSha256: string, by: CryptoKeyPair = keys) {
	const text = Buffer.from(`handover-risk/party-signature/1\n${leafSha256}\n`);
	const signature = await crypto.subtle.sign({ name: "ECDSA", hash: "SHA-256" }, by.privateKey, text);
	return { leafSha256, publicKey: hex(await crypto.subtle.exportKey("raw", by.publicKey)), signature: hex(signature) };
}

const send = (payload: object, linkId = scene.link.id, headers: Record<string, string> = { cookie }) =>
	shop.app.inject({ method: "POST", url: `/api/v1/links/${linkId}/signatures`, headers, payload });

async function leafOf(kind: string): Promise<string> {
	const [row] = await shop.db.database.query<{ leaf_sha256: string }>(
		"SELECT leaf_sha256 FROM sealed_entry JOIN entry_projection USING (index) WHERE kind = $1 ORDER BY index DESC LIMIT 1",
		[kind],
	);
	return row?.leaf_sha256 ?? "";
}

async function receipt() {
	return (await shop.ask("GET", `/api/v1/records/${scene.departureId}/receipt`)).rawPayload;
}

describe("a device's signature", () => {
	it("is not there at first, and the receipt says so", async () => {
		const check = verifyReceipt(await receipt()).checks.find(({ id }) => id === "party-signature");
		expect(check).toMatchObject({ outcome: "not-possible" });
	});

	it("of the first use of the link is sealed once, and the receipt proves it", async () => {
		const signature = await signatureOf(await leafOf("link-used"));
		expect((await send(signature)).statusCode).toBe(204);
		expect((await send(signature)).statusCode).toBe(204);
		const bytes = await receipt();
		const { outcome, checks } = verifyReceipt(bytes);
		expect(outcome).toBe("verified");
		expect(checks.find(({ id }) => id === "party-signature")).toMatchObject({ outcome: "passed" });
		const signed = entriesIn(JSON.parse(bytes.toString("utf8"))).filter(({ kind }) => kind === "party-signed");
		expect(signed).toHaveLength(1);
		expect(signed[0]).toMatchObject({ subject: scene.link.id, by: scene.link.id, fits: true });
	});

	it("is sealed once also where it comes twice at the same moment", async () => {
		await shop.app.inject({
			method: "PUT",
			url: `/api/v1/records/${scene.recordId}`,
			headers: { cookie, "if-match": '"v1"' },
			payload: {
				observedAt: "2026-03-04T10:00:00+01:00",
				state: "does-not-start",
				identity: { serialNumber: "OW24-7731-C" },
			},
		});
		const sealed = await shop.app.inject({
			method: "POST",
			url: `/api/v1/records/${scene.recordId}/seal`,
			headers: { cookie, "if-match": '"v2"' },
		});
		expect(sealed.statusCode, sealed.body).toBe(200);
		const view = async () => (await shop.ask("GET", `/api/v1/records/${scene.recordId}`)).json().sealed;
		expect(await view()).toMatchObject({ partySigned: false, partySignedAt: null });
		const signature = await signatureOf((await view()).leafSha256);
		const answers = await Promise.all([1, 2, 3, 4].map(() => send(signature)));
		expect(answers.map(({ statusCode }) => statusCode)).toEqual([204, 204, 204, 204]);
		expect((await view()).partySigned).toBe(true);
		const [entry] = await shop.db.database.query<{ sealed_at: Date }>(
			"SELECT sealed_at FROM sealed_entry JOIN entry_projection USING (index) WHERE kind = 'party-signed' ORDER BY index DESC LIMIT 1",
		);
		expect((await view()).partySignedAt).toBe(entry?.sealed_at.toISOString());
		const signed = entriesIn(JSON.parse((await receipt()).toString("utf8"))).filter(
			({ kind }) => kind === "party-signed",
		);
		expect(signed).toHaveLength(2);
	});

	it("is refused by another key, over another entry, of what the link did not do, and from others", async () => {
		const leaf = await leafOf("link-used");
		const good = await signatureOf(leaf);
		const other = await signatureOf(leaf, await makeKeys());
		const refused = async (payload: object, path: string) => {
			const answer = await send(payload);
			expect(answer.statusCode).toBe(400);
			expect(answer.json().errors).toMatchObject([{ path }]);
		};
		await refused({ ...good, publicKey: other.publicKey }, "/signature");
		await refused({ ...good, leafSha256: await leafOf("record-opened") }, "/signature");
		await refused({ ...good, publicKey: `04${"0".repeat(128)}` }, "/signature");
		await refused({ ...good, publicKey: good.publicKey.slice(2) }, "/publicKey");
		await refused(await signatureOf(await leafOf("record-opened")), "/leafSha256");
		expect((await send(good, "lnk_00000000000000000000")).statusCode).toBe(403);
		expect((await send(good, scene.link.id, {})).statusCode).toBe(401);
		expect((await send(good, scene.link.id, { authorization: `Bearer ${shop.token}` })).statusCode).toBe(403);
	});

	it("of the first use is not taken from a device that entered later, and its pages do not ask for it", async () => {
		scene = await customerScene(shop);
		const first = await enter();
		const leaf = await leafOf("link-used");
		const later = await enter();
		const leavesAsked = async (device: string) => {
			const page = await shop.app.inject({ url: `/guided/${scene.recordId}/wait`, headers: { cookie: device } });
			return /data-leaves="([^"]*)"/.exec(page.body)?.[1];
		};
		expect(await leavesAsked(first)).toBe(leaf);
		expect(await leavesAsked(later)).toBeUndefined();
		const refused = await send(await signatureOf(leaf), scene.link.id, { cookie: later });
		expect(refused.statusCode).toBe(400);
		expect(refused.json().errors).toMatchObject([{ path: "/leafSha256", code: "not-done-just-now" }]);
		expect((await send(await signatureOf(leaf), scene.link.id, { cookie: first })).statusCode).toBe(204);
	});

	it("is asked for within ten minutes, and no longer", async () => {
		scene = await customerScene(shop);
		cookie = await enter();
		const owner = openPool(shop.db.superuserUrl, { maxConnections: 1 });
		try {
			// Entering and entry are made older behind the log's back, since its clock is the database's.
			await owner.query("ALTER TABLE sealed_entry DISABLE TRIGGER ALL");
			const age = async (minutes: number) => {
				const ago = `clock_timestamp() - interval '${minutes} minutes'`;
				await owner.query(`UPDATE link_session SET created_at = ${ago} WHERE link_id = $1`, [scene.link.id]);
				await owner.query(
					`UPDATE sealed_entry SET sealed_at = ${ago} WHERE index = (SELECT max(index) FROM entry_projection WHERE subject = $1)`,
					[scene.link.id],
				);
				return (await shop.app.inject({ url: `/guided/${scene.recordId}/wait`, headers: { cookie } })).body;
			};
			expect(await age(9)).toContain("data-leaves=");
			expect(await age(11)).not.toContain("data-leaves=");
			const refused = await send(await signatureOf(await leafOf("link-used")));
			expect(refused.json().errors).toMatchObject([{ code: "not-done-just-now" }]);
		} finally {
			await owner.close();
		}
	});
});
