/**
 * A dossier read into a service that never saw its order: the same bytes under the same seals come out again, its pages and
 * answers are the same, and what is not right is refused with nothing left behind.
 */
import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { insertParty } from "../../src/database/orders.ts";
import { openPool } from "../../src/database/pool.ts";
import { listIncoming } from "../../src/exhibits/incoming.ts";
import { dossierContent } from "../../src/operations/read-in/dossier-content.ts";
import { readInDossier } from "../../src/operations/read-in/read-in-dossier.ts";
import { ReadInRefusal } from "../../src/operations/read-in/read-in-refusal.ts";
import { cleanUploads } from "../../src/operations/uploads/clean-uploads.ts";
import { type ByteSource, sourceOf } from "../../src/records/verify/dossier/byte-source.ts";
import { readBag } from "../../src/records/verify/dossier/read-bag.ts";
import { verifyDossier } from "../../src/records/verify/dossier/verify-dossier.ts";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { vaultOf } from "../../src/start/deps.ts";
import { ERASURES_FILE } from "../../src/start/erasures.ts";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { forgedDossier } from "../setup/forged-dossier.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

const scenario = JSON.parse(readFileSync(new URL("../../demo-data/scenarios/s10a.json", import.meta.url), "utf8"));

let there: TestApp;
let here: TestApp;
let played: Played;
let zip: Buffer;
let recordId: string;
let keyThere: string;
let zipOfSameOwner: Buffer;
beforeAll(async () => {
	[there, here] = await Promise.all([testApp(), testApp()]);
	played = await playScenario(there, scenario);
	// An order of its own, so that this service's log has entries of the same places.
	await playScenario(here, scenario);
	recordId = await sealWithPhotos();
	keyThere = (await there.ask("GET", "/api/v1/log/key")).body;
	zip = (await there.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip`)).rawPayload;
	zipOfSameOwner = await secondDossier();
}, 60_000);
afterAll(async () => {
	await there?.close();
	await here?.close();
});

/** Three photos: of one the shop hands out the original, of one a copy without metadata, of one a copy with a part blacked out. */
async function sealWithPhotos(): Promise<string> {
	const draft = (
		await there.ask("POST", `/api/v1/consignments/${played.legIds[0]}/records`, { stage: "arrival" })
	).json();
	const [front = "", back = "", label = ""] = await Promise.all(
		["card-front", "card-back", "serial-label"].map(async (side) => {
			const brought = await there.app.inject({
				method: "POST",
				url: `/api/v1/records/${draft.id}/exhibits?fileName=${side}.png`,
				headers: { authorization: `Bearer ${there.token}`, "content-type": "image/png" },
				payload: readFileSync(new URL(`../../demo-data/pictures/${side}.png`, import.meta.url)),
			});
			return brought.json().sha256;
		}),
	);
	const content = {
		observedAt: "2026-05-02T10:00:00+02:00",
		state: "good",
		identity: { serialNumber: "BM12-40118" },
		exhibits: [
			{ sha256: front, view: "item-front" },
			{ sha256: back, view: "item-back" },
			{ sha256: label, view: "serial-label" },
		],
	};
	const saved = await there.ask("PUT", `/api/v1/records/${draft.id}`, content, { "if-match": '"v1"' });
	const sealed = await there.ask("POST", `/api/v1/records/${draft.id}/seal`, undefined, {
		"if-match": String(saved.headers.etag),
	});
	expect(sealed.statusCode, sealed.body).toBe(200);
	const path = `/api/v1/records/${draft.id}/exhibits/${front}/hand-out`;
	const consent = await there.ask("POST", path, { choice: "original" });
	expect(consent.statusCode, consent.body).toBeLessThan(300);
	const ofLabel = `/api/v1/records/${draft.id}/exhibits/${label}`;
	const rectangles = [{ x: 10, y: 10, w: 30, h: 20 }];
	const blackened = (await there.ask("POST", `${ofLabel}/copies`, { rectangles })).json();
	const { sha256: copySha256 } = blackened.copies.find(({ kind }: { kind: string }) => kind === "blacked-out");
	const chosen = await there.ask("POST", `${ofLabel}/hand-out`, { choice: "blacked-out", copySha256 });
	expect(chosen.statusCode, chosen.body).toBeLessThan(300);
	return draft.id;
}

/** Of another order of the same parties. */
async function secondDossier(): Promise<Buffer> {
	const { owner, repairer, item } = (await there.ask("GET", `/api/v1/orders/${played.orderId}`)).json();
	const order = await there.ask("POST", "/api/v1/orders", {
		contractKind: "repair",
		owner: { id: owner.id },
		repairer: { id: repairer.id },
		item: { class: item.class, maker: "Brookmere", model: "Heron 14" },
		terms: {
			reportedFault: "None.",
			agreedWork: "None.",
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	});
	expect(order.statusCode, order.body).toBe(201);
	const path = `/api/v1/orders/${order.json().id}`;
	const leg = { direction: "to-repairer", facts: { mode: "road", bookedBy: "consignor" } };
	const { id: legId } = (await there.ask("POST", `${path}/consignments`, leg)).json();
	const content = {
		observedAt: "2026-05-02T10:00:00+02:00",
		state: "good",
		identity: { serialNumber: "BM14-7" },
	};
	const record = { stage: "arrival", content };
	const draft = (await there.ask("POST", `/api/v1/consignments/${legId}/records`, record)).json();
	const sealed = await there.ask("POST", `/api/v1/records/${draft.id}/seal`, undefined, { "if-match": '"v1"' });
	expect(sealed.statusCode, sealed.body).toBe(200);
	return (await there.ask("GET", `${path}/dossier.zip`)).rawPayload;
}

/** A dossier beside whose reading something else happens, before each slice. */
function sourceDuring(bytes: Uint8Array, act: (start: number, length: number) => Promise<void>) {
	const source = sourceOf(bytes);
	return {
		size: source.size,
		read: async (start: number, length: number) => {
			await act(start, length);
			return source.read(start, length);
		},
	};
}

const readIn = (bytes: Uint8Array) => readInDossier(here.deps, sourceOf(bytes));
const refusal = async (bytes: Uint8Array, keys: string[] = []) => refusalOf(sourceOf(bytes), keys);
const refusalOf = async (source: ByteSource, keys: string[] = []) => {
	const error = await readInDossier(here.deps, source, { keys }).then(
		() => null,
		(thrown: unknown) => thrown,
	);
	if (!(error instanceof ReadInRefusal)) throw new Error(`not refused: ${error}`);
	return error.check;
};
/** Everything that an import could leave behind. */
const traces = async () => {
	const counted = await Promise.all(
		[
			"party",
			"item",
			"repair_order",
			"consignment",
			"state_record",
			"opening",
			"exhibit",
			"exhibit_use",
			"exhibit_derivative",
			"exhibit_hand_out",
			"packaging_assessment",
			"read_in_log",
			"read_in_entry",
		].map(async (table) => (await here.db.database.query<{ n: number }>(`SELECT count(*) AS n FROM ${table}`))[0]?.n),
	);
	const files = (folder: string) =>
		readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
	return { counted, keys: files(here.db.keyFolder).length, exhibits: files(here.deps.exhibitFolder).length };
};

describe("refused, with nothing left behind:", () => {
	it("a flip of any bit, wherever it stands", async () => {
		const before = await traces();
		const files = await readBag(sourceOf(zip), () => {});
		const starts = [...files.files.values()].map(({ start, size }) => ({ start, size }));
		// By file, not by byte alone: else the page that verifies would take nearly all.
		const inFile = fc
			.tuple(fc.constantFrom(...starts), fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }))
			.map(([{ start, size }, share]) => start + Math.floor(share * size));
		const anywhere = fc.nat(zip.length - 1);
		await fc.assert(
			fc.asyncProperty(fc.oneof(inFile, anywhere), fc.integer({ min: 0, max: 7 }), async (at, bit) => {
				const bad = Buffer.from(zip);
				bad[at] = (bad[at] ?? 0) ^ (1 << bit);
				expect(await refusal(bad)).toBe("bag");
			}),
			{ numRuns: 30 },
		);
		expect(await traces()).toEqual(before);
	}, 60_000);
	it("one that was cut, and one sealed by another key than the one that is known", async () => {
		const before = await traces();
		expect(await refusal(zip.subarray(0, -1))).toBe("bag");
		expect(await refusal(zip, ["ab".repeat(32)])).toBe("expected-key");
		expect(await traces()).toEqual(before);
	});
	it("one whose noted order is at odds with what was sealed, all hashes of its bag fitting", async () => {
		const before = await traces();
		for (const [from, to] of [
			[played.ownerId, `pty_${"0".repeat(20)}`],
			[String(played.legIds[0]), `con_${"0".repeat(20)}`],
			['"class":"graphics-card"', '"class":"drive"'],
			['"leg":1', '"leg":2'],
			['"terms"', '"other"'],
		] as const) {
			const forged = await forgedDossier(zip, "data/order.json", (bytes) =>
				Buffer.from(bytes.toString("utf8").replaceAll(from, to)),
			);
			expect(await refusal(forged), from).toBe("order-file");
		}
		expect(await refusal(await forgedDossier(zip, "data/order.json", () => null))).toBe("order-file");
		const other = await forgedDossier(zip, "data/exhibits/E1.png", (bytes) => Buffer.concat([bytes, Buffer.of(0)]));
		expect(await refusal(other)).toBe("exhibits");
		const copy = await forgedDossier(zip, "data/copies/E2.jpg", (bytes) => Buffer.concat([bytes, Buffer.of(0)]));
		expect(await refusal(copy)).toBe("copies");
		expect(await traces()).toEqual(before);
	});
	it("one with a step of another order's settlement among its entries", async () => {
		const bag = await readBag(sourceOf(zip), () => {});
		const receipt = JSON.parse(Buffer.from(await bag.bytesOf("data/receipt.json")).toString("utf8"));
		const order = await bag.bytesOf("data/order.json");
		const base64 = (value: object) => Buffer.from(JSON.stringify(value)).toString("base64");
		const step = (orderId: string, partyId: string) => ({
			...receipt,
			entries: [
				...receipt.entries,
				{
					entry: base64({
						index: 1e6,
						kind: "settlement-sealed",
						subject: "stl_1",
						by: "x",
						time: "2026-05-03T00:00:00Z",
					}),
					statement: base64({ act: "assents", orderId, partyId, stepId: "stl_1" }),
					proof: [],
				},
			],
		});
		const read = (changed: object) => dossierContent(Buffer.from(JSON.stringify(changed)), order);
		expect(() => read(step(played.orderId, played.ownerId))).not.toThrow();
		expect(() => read(step(`ord_${"0".repeat(20)}`, played.ownerId))).toThrow(ReadInRefusal);
		expect(() => read(step(played.orderId, `pty_${"0".repeat(20)}`))).toThrow(ReadInRefusal);
	});
	it("one of a person who was erased here, though no row knows it any more", async () => {
		await here.deps.erasures.note({ partyId: played.ownerId, byId: here.accountId });
		const before = await traces();
		expect(await refusal(zip)).toBe("erased-party");
		expect(await traces()).toEqual(before);
		rmSync(join(here.db.keyFolder, ERASURES_FILE));
	});
	it("one whose writing fails half-way", async () => {
		const itemId = (await there.ask("GET", `/api/v1/orders/${played.orderId}`)).json().item.id;
		await here.db.database.query(
			"INSERT INTO item (id, class, owner_id, plain, personal) SELECT $1, class, owner_id, plain, personal FROM item LIMIT 1",
			[itemId],
		);
		const before = await traces();
		await expect(readIn(zip)).rejects.toThrow(/duplicate key/);
		expect(await traces()).toEqual(before);
		await here.db.database.query("DELETE FROM item WHERE id = $1", [itemId]);
	});
});

describe("read in", () => {
	beforeAll(async () => {
		// The service beside it tidies uploads whenever one may lie there, as another process with locks of its own.
		const beside = openPool(here.db.serviceUrl, { vault: vaultOf(here.db.keyFolder) });
		let tidied = 0;
		let second: string | null = null;
		const source = sourceDuring(zip, async () => {
			// Whoever reads the same in at the same time is sent away, and takes nothing with it.
			second ??= await refusal(zip);
			if ((await listIncoming(here.deps.exhibitFolder)).length === 0) return;
			await cleanUploads({ ...here.deps, database: beside });
			tidied++;
		});
		const done = await readInDossier(here.deps, source, { keys: [keyThere] });
		await beside.close();
		expect(tidied).toBeGreaterThan(0);
		expect(second).toBe("busy");
		expect(done).toMatchObject({ orderId: played.orderId, exhibits: { named: 3, originals: 1, copies: 2 } });
	});
	it("a second time is refused", async () => {
		expect(await refusal(zip)).toBe("already-there");
	});
	it("it gives a dossier of the same bytes, but for the report, which says that it was read in", async () => {
		const again = await here.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip`);
		expect(again.statusCode, again.body.slice(0, 300)).toBe(200);
		const hashes = async (bytes: Uint8Array) => {
			const { files } = await readBag(sourceOf(bytes), () => {});
			return new Map(
				[...files].filter(([path]) => path.startsWith("data/")).map(([path, { sha256 }]) => [path, sha256]),
			);
		};
		const [first, second] = [await hashes(zip), await hashes(again.rawPayload)];
		expect([...second.keys()]).toEqual([...first.keys()]);
		expect([...first].filter(([path, sha256]) => second.get(path) !== sha256).map(([path]) => path)).toEqual([
			"data/report.pdf",
		]);
	});
	it("its receipts verify against the key of the log that sealed them, and no other", async () => {
		const receipt = await here.ask("GET", `/api/v1/records/${recordId}/receipt`);
		expect(receipt.statusCode, receipt.body.slice(0, 300)).toBe(200);
		const verified = verifyReceipt(receipt.rawPayload, { keys: [keyThere] });
		expect(verified.checks.filter(({ outcome }) => outcome === "failed")).toEqual([]);
		expect(verified).toMatchObject({ outcome: "verified", about: recordId });
		const keyHere = (await here.ask("GET", "/api/v1/log/key")).body;
		expect(verifyReceipt(receipt.rawPayload, { keys: [keyHere] }).outcome).toBe("not-verified");
		// What its holder kept of the other service is the beginning, or the same.
		const kept = await there.ask("GET", `/api/v1/records/${recordId}/receipt`);
		const earlier = [{ name: "kept.json", bytes: kept.rawPayload }];
		expect(verifyReceipt(receipt.rawPayload, { keys: [keyThere], earlier }).outcome).toBe("verified");
	});
	it("its comparison, records and photos are the same, a copy where others get one", async () => {
		const original = /E2 ([0-9a-f]{64}) without-metadata/.exec(zip.toString("latin1"))?.[1];
		const copy = await here.ask("GET", `/api/v1/exhibits/${original}`);
		expect(copy.headers["content-type"]).toBe("image/jpeg");
		for (const path of [`consignments/${played.legIds[0]}/comparison`, `exhibits/${exhibitOf(zip)}`]) {
			const [one, other] = await Promise.all([there, here].map((app) => app.ask("GET", `/api/v1/${path}`)));
			expect(other?.statusCode, other?.body.slice(0, 300)).toBe(200);
			expect(other?.rawPayload.equals(one?.rawPayload ?? Buffer.of())).toBe(true);
		}
		const sealed = async (app: TestApp) => (await app.ask("GET", `/api/v1/records/${recordId}`)).json().sealed;
		expect(await sealed(here)).toEqual(await sealed(there));
	});
	it("its pages say whose seals these are; its report too", async () => {
		const { readIn: from } = (await here.ask("GET", `/api/v1/orders/${played.orderId}`)).json();
		expect(from).toMatchObject({
			treeSize: expect.any(Number),
			dossierSha256: expect.stringMatching(/^[0-9a-f]{64}$/),
		});
		for (const path of ["", "/comparison", "/papers"]) {
			const url = `/orders/${played.orderId}${path === "/comparison" ? `/consignments/${played.legIds[0]}/comparison` : path}`;
			const page = await here.app.inject({ method: "GET", url, headers: { cookie: here.sessionCookie } });
			expect(page.statusCode, url).toBe(200);
			if (path !== "/papers") expect(page.body).toContain(`Sealed in the log ${from.origin}`);
		}
		const report = await here.ask("GET", `/api/v1/orders/${played.orderId}/report.pdf`);
		expect(report.statusCode).toBe(200);
	});
	it("only its own size of the log can be told of", async () => {
		const { treeSize } = (await here.ask("GET", `/api/v1/orders/${played.orderId}`)).json().readIn;
		for (const [at, status] of [
			[treeSize, 200],
			[treeSize - 1, 400],
			[treeSize + 1, 400],
		]) {
			expect((await here.ask("GET", `/api/v1/orders/${played.orderId}/carrier-text?at=${at}`)).statusCode).toBe(status);
		}
	});
	it("nothing is added to it", async () => {
		for (const [path, body] of [
			[`consignments/${played.legIds[0]}/records`, { stage: "arrival" }],
			[`orders/${played.orderId}/records`, { stage: "bench" }],
			["links", { scope: "reader", orderId: played.orderId }],
			[`orders/${played.orderId}/positions`, { kind: "states", text: "It worked." }],
			[
				`orders/${played.orderId}/consignments`,
				{ direction: "to-owner", facts: { mode: "road", bookedBy: "consignor" } },
			],
		] as const) {
			const answer = await here.ask("POST", `/api/v1/${path}`, body);
			expect(answer.statusCode, path).toBe(409);
			expect(answer.json().type).toContain("read-in");
		}
	});
	it("it stays whole where the line to the database broke as it was committed", async () => {
		const other = await testApp();
		try {
			// Someone else under its owner's id: nobody is taken for another.
			await other.deps.partyKeys.make(played.ownerId);
			const someone = {
				kind: "consumer",
				country: "DE",
				language: null,
				name: "X",
				email: null,
				address: null,
			} as const;
			await insertParty(other.db.database, { id: played.ownerId, ...someone });
			const mistaken = await readInDossier(other.deps, sourceOf(zip)).catch((error: unknown) => error);
			expect(mistaken).toMatchObject({ check: "other-party" });
			await other.db.database.query("DELETE FROM party WHERE id = $1", [played.ownerId]);
			await other.deps.partyKeys.destroy(played.ownerId);
			const { transaction } = other.deps.database;
			const database: typeof other.deps.database = {
				...other.deps.database,
				transaction: async (work) => {
					await transaction(work);
					throw new Error("the line broke");
				},
			};
			await expect(readInDossier({ ...other.deps, database }, sourceOf(zip))).rejects.toThrow("the line broke");
			const again = await other.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip`);
			expect(again.statusCode, again.body.slice(0, 300)).toBe(200);
			expect((await verifyDossier(sourceOf(again.rawPayload), {})).outcome).toBe("verified");
			expect(exhibitOf(again.rawPayload)).toBe(exhibitOf(zip));
		} finally {
			await other.close();
		}
	});
	it("another order of its owner, who is erased while that is read: refused, with nothing left behind", async () => {
		let before: Awaited<ReturnType<typeof traces>> | null = null;
		const source = sourceDuring(zipOfSameOwner, async (start, length) => {
			// The whole is hashed once the parties were looked for, and before anything is written.
			if (start !== 0 || length < zipOfSameOwner.length) return;
			const erased = await here.ask("POST", `/api/v1/parties/${played.ownerId}/erase`, { confirm: played.ownerId });
			expect(erased.statusCode, erased.body).toBeLessThan(300);
			before = await traces();
		});
		expect(await refusalOf(source)).toBe("erased-party");
		expect(before).not.toBeNull();
		expect(await traces()).toEqual(before);
	});
	it("after its owner is erased it still verifies, without the words", async () => {
		const erased = await here.ask("POST", `/api/v1/parties/${played.ownerId}/erase`, { confirm: played.ownerId });
		expect(erased.statusCode, erased.body).toBeLessThan(300);
		const receipt = await here.ask("GET", `/api/v1/records/${recordId}/receipt`);
		expect(verifyReceipt(receipt.rawPayload, { keys: [keyThere] }).outcome).toBe("verified");
		expect(receipt.body).not.toContain("BM12-40118");
	});
	it("one of a person who was erased there as well brings no words, and is read in where that erasure is known", async () => {
		const erased = await there.ask("POST", `/api/v1/parties/${played.ownerId}/erase`, { confirm: played.ownerId });
		expect(erased.statusCode, erased.body).toBeLessThan(300);
		const bare = (await there.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip`)).rawPayload;
		const other = await testApp();
		try {
			await other.deps.erasures.note({ partyId: played.ownerId, byId: other.accountId });
			expect(await readInDossier(other.deps, sourceOf(bare))).toMatchObject({ orderId: played.orderId });
			const { owner } = (await other.ask("GET", `/api/v1/orders/${played.orderId}`)).json();
			expect(owner).toMatchObject({ id: played.ownerId, erasedAt: expect.any(String) });
		} finally {
			await other.close();
		}
	});
});

/** The photo's hash, as the dossier's manifest lists it. */
function exhibitOf(bytes: Buffer): string {
	return /([0-9a-f]{64}) {2}data\/exhibits\/E1\.png\n/.exec(bytes.toString("latin1"))?.[1] ?? "";
}
