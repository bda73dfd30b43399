/**
 * Erasing a person, on the built service: names and texts are planted in every field that takes one, and looked for with
 * `grep` in everything that the service leaves on disk: the database's files and WAL, its log, our log, exhibits, keys.
 */
import { spawnSync } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import type { ServiceProcess } from "../../src/start/demo/service-process.ts";
import { startBuiltService } from "../setup/built-service.ts";
import { fillDataFolder } from "../setup/data-folder.ts";
import { entriesIn } from "../setup/receipt-entries.ts";
import { setUp } from "../trials/sealing-client.ts";

/** Every planted text holds this word, which nothing else does. */
const WORD = "Quillerby";
const CONTROL = "Zuverlyte";
const LOGGED = {
	LOG_LEVEL: "trace",
	// No mail server is there; mails are queued, tried and logged.
	SMTP_URL: "smtp://127.0.0.1:9",
	MAIL_FROM: "post@nord.example",
};

let folder: string;
let service: ServiceProcess;
let token: string;
beforeEach(async () => {
	folder = await mkdtemp(join(tmpdir(), "handover-erasure-"));
	await fillDataFolder(folder);
	service = await startBuiltService(folder, { variables: LOGGED, log: keepLog });
	token = await setUp(service.url, service.setUpLink ?? "");
});
afterEach(async () => {
	await service.stop();
	await rm(folder, { recursive: true, force: true });
	ourLog.length = 0;
});

const ourLog: string[] = [];
function keepLog(line: string): void {
	ourLog.push(line);
}

async function ask(method: string, path: string, body?: unknown, headers: Record<string, string> = {}) {
	const answer = await fetch(`${service.url}/api/v1${path}`, {
		method,
		headers: {
			authorization: `Bearer ${token}`,
			...(body === undefined || body instanceof Buffer ? {} : { "content-type": "application/json" }),
			...headers,
		},
		...(body === undefined ? {} : { body: body instanceof Buffer ? new Uint8Array(body) : JSON.stringify(body) }),
	});
	const text = await answer.text();
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${text}`);
	return text === "" ? {} : JSON.parse(text);
}

/** A file that is on its way: some of it is here, its name too. */
async function beginUpload(recordId: string): Promise<void> {
	const encoded = (text: string) => Buffer.from(text).toString("base64");
	const headers = { authorization: `Bearer ${token}`, "tus-resumable": "1.0.0" };
	const made = await fetch(`${service.url}/api/v1/exhibits`, {
		method: "POST",
		headers: {
			...headers,
			"upload-length": "600000",
			"upload-metadata": `filename ${encoded(`${WORD}-film.txt`)},record ${encoded(recordId)}`,
		},
	});
	const answer = await fetch(service.url + made.headers.get("location"), {
		method: "PATCH",
		headers: { ...headers, "upload-offset": "0", "content-type": "application/offset+octet-stream" },
		body: `${WORD} `.repeat(30_000),
	});
	if (answer.status !== 204) throw new Error(`an upload: ${answer.status} ${await answer.text()}`);
}

/** An order whose every text is planted: one sealed record with a file, one draft. */
async function plant() {
	const order = await ask("POST", "/orders", {
		contractKind: "repair",
		repairer: { kind: "business", country: "DE", name: "Werkbank Nord" },
		owner: {
			kind: "consumer",
			country: "FR",
			name: `Ada ${WORD}`,
			email: `ada@${WORD}.example`,
			address: `1 ${WORD} Lane`,
		},
		item: {
			class: "graphics-card",
			maker: `${WORD} Works`,
			model: `M ${WORD}`,
			serialNumber: `SN-${WORD}`,
			massKg: 1.2,
		},
		terms: {
			reportedFault: `${WORD} says it is dead`,
			agreedWork: `mend it for ${WORD}`,
			warranty: { months: 6, covers: `what ${WORD} paid for` },
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	});
	const leg = await ask("POST", `/orders/${order.id}/consignments`, {
		direction: "to-repairer",
		facts: { mode: "road", bookedBy: "consignor", carrier: `${WORD} and sons`, trackingNumber: `T-${WORD}` },
	});
	const draft = await ask("POST", `/consignments/${leg.id}/records`, { stage: "arrival" });
	const file = Buffer.from(`a log in which ${WORD} is named`);
	const exhibit = await ask("POST", `/records/${draft.id}/exhibits?fileName=${WORD}.log`, file, {
		"content-type": "text/plain",
	});
	// A picture names a device, and may name its owner.
	const picture = await sharp({ create: { width: 40, height: 30, channels: 3, background: "red" } })
		.withExif({ IFD0: { Make: WORD, Model: `${WORD}'s own` } })
		.jpeg()
		.toBuffer();
	const { sha256: pictureSha256 } = await ask("POST", `/records/${draft.id}/exhibits?fileName=${WORD}.jpg`, picture, {
		"content-type": "image/jpeg",
	});
	const told = await ask("GET", `/records/${draft.id}/exhibits/${pictureSha256}`);
	expect(told.claimed.device).toContain(WORD);
	const content = {
		observedAt: "2026-03-02T10:00:00+01:00",
		state: "does-not-start",
		identity: { serialNumber: `SN-${WORD}`, marks: [`scratched by ${WORD}`] },
		readings: [{ check: "mass", values: [{ value: 412, unit: "g", typed: "412" }] }],
		statement: `${WORD} wrote this`,
		exhibits: [{ sha256: exhibit.sha256, view: "other", note: `from ${WORD}` }],
	};
	const saved = await ask("PUT", `/records/${draft.id}`, content, { "if-match": '"v1"' });
	const receipt = await ask("POST", `/records/${draft.id}/seal`, undefined, { "if-match": `"v${saved.version}"` });
	const open = await ask("POST", `/consignments/${leg.id}/records`, { stage: "departure", content });
	await ask("POST", `/orders/${order.id}/positions`, { kind: "states", text: `${WORD} was told so` });
	await ask("POST", `/orders/${order.id}/settlement`, {
		act: "proposes",
		outcome: "refund",
		itemNext: "stays",
		text: `as ${WORD} wishes`,
	});
	await ask("POST", `/orders/${order.id}/mails`, {
		kind: "receipt",
		recordId: draft.id,
		to: `second@${WORD}.example`,
	});
	const notice = await ask("POST", `/consignments/${leg.id}/notices`, {
		language: "en",
		text: `Notice of damage to the parcel of ${WORD}`,
		sentOn: "2026-03-09",
		sentBy: "registered-letter",
		proofOfSending: `RN 0042 of ${WORD}`,
	});
	await ask("POST", `/notices/${notice.id}/receipt`, {
		receivedOn: "2026-03-10",
		proofOfReceipt: `signed for ${WORD}`,
	});
	await beginUpload(open.id);
	// A recorder may be named after its owner, in the header too.
	const trip = Buffer.from(`time [s],${WORD} z [g],note\n0,1,by ${WORD}\n0.001,9,\n0.002,1,\n`);
	const reading = {
		place: "not-known",
		device: "recorder",
		unitsConfirmed: true,
		mapping: { time: { column: 1, unit: "s" }, axes: [{ column: 2, unit: "Gn" }] },
	};
	const query = new URLSearchParams({ fileName: `${WORD}.csv`, reading: JSON.stringify(reading) });
	await ask("POST", `/consignments/${leg.id}/transit-recordings?${query}`, trip, { "content-type": "text/csv" });
	return {
		order,
		leg,
		recordId: draft.id as string,
		draftId: open.id as string,
		receipt,
		sha256: exhibit.sha256 as string,
	};
}

/** Files under the data folder that hold the word, in UTF-8 or UTF-16, as grep finds them. */
async function filesWith(word: string): Promise<string[]> {
	// A stop writes out what is still in the database's memory.
	await service.stop();
	await writeFile(join(folder, "our.log"), ourLog.join("\n"));
	const utf16 = [...word].join(".");
	const { status, stdout } = spawnSync("grep", ["-rlaiE", `${word}|${utf16}`, folder], { encoding: "utf8" });
	expect(status, "grep itself").toBeLessThan(2);
	service = await startBuiltService(folder, { variables: LOGGED, log: keepLog });
	return stdout === "" ? [] : stdout.trim().split("\n");
}

describe("a person's data", () => {
	it("is nowhere on disk in plain, not even before it is erased", async () => {
		await plant();
		expect(ourLog.length).toBeGreaterThan(5);
		expect(await filesWith(WORD)).toEqual([]);
		// What is not personal, as a bench's label, is found by the same search: in the table's file and in the WAL.
		await ask("POST", "/benches", { label: `Bench ${CONTROL}` });
		const found = await filesWith(CONTROL);
		expect(found.filter((path) => path.includes("/base/"))).toHaveLength(1);
		expect(found.filter((path) => path.includes("/pg_wal/")).length).toBeGreaterThan(0);
	});

	it("is gone from every answer once erased, and the log still proves the rest", async () => {
		const { order, recordId, draftId, receipt, sha256 } = await plant();
		expect(JSON.stringify(receipt)).toContain(WORD);
		await expect(ask("POST", `/parties/${order.owner.id}/erase`, { confirm: order.repairer.id })).rejects.toThrow(
			"confirm",
		);
		await ask("POST", `/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
		await ask("POST", `/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
		const [{ text }] = (await ask("GET", `/orders/${order.id}/positions`)).positions;
		expect(text).toBeNull();
		for (const path of [
			`/orders/${order.id}`,
			`/orders/${order.id}/settlement`,
			"/orders",
			`/parties/${order.owner.id}`,
			`/records/${recordId}`,
		]) {
			expect(JSON.stringify(await ask("GET", path)), path).not.toContain(WORD);
		}
		const after = await ask("GET", `/orders/${order.id}`);
		expect(after.item).toMatchObject({ class: "graphics-card", massKg: 1.2, maker: "[erased]" });
		expect(after.consignments[0].facts).toEqual({ mode: "road", bookedBy: "consignor" });
		await expect(ask("GET", `/exhibits/${sha256}`)).rejects.toThrow("410");
		await expect(ask("GET", `/records/${draftId}`)).rejects.toThrow("404");
		expect(after.owner.erasedAt).toMatch(/^20/);
		const next = ask("POST", `/orders/${order.id}/consignments`, {
			direction: "to-owner",
			facts: { mode: "road", bookedBy: "consignor" },
		});
		await expect(next).rejects.toThrow("410");
		const receiptNow = await ask("GET", `/records/${recordId}/receipt`);
		expect(JSON.stringify(receiptNow)).not.toContain(WORD);
		const { outcome, checks } = verifyReceipt(Buffer.from(JSON.stringify(receiptNow)));
		expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
		expect(outcome).toBe("verified");
		expect(entriesIn(receiptNow).filter(({ kind }) => kind === "party-erased")).toMatchObject([
			{ subject: order.owner.id },
		]);
		// The receipt that was handed out before goes on proving what it holds.
		expect(verifyReceipt(Buffer.from(JSON.stringify(receipt))).outcome).toBe("verified");
		expect(await filesWith(WORD)).toEqual([]);
		expect(await readdir(join(folder, "keys"))).not.toContain(`${order.owner.id}.key`);
		const page = await fetch(`${service.url}/orders/${order.id}`, { headers: { authorization: `Bearer ${token}` } });
		expect(page.status).toBe(200);
	});

	// As after a restore of a backup that is older than the erasure: made with its keys, or with the key folder kept apart,
	// from which the key is gone already.
	it.each([true, false])(
		"is erased again where an older database comes back, its key there: %s",
		async (isKeyThere) => {
			const { order, recordId, sha256 } = await plant();
			const keys = join(folder, "keys");
			await writeFile(
				join(keys, "erasures.jsonl"),
				`${JSON.stringify({ partyId: order.owner.id, byId: "acc_00000000000000000000" })}\n`,
			);
			await service.stop();
			if (!isKeyThere) await rm(join(keys, `${order.owner.id}.key`));
			service = await startBuiltService(folder, { variables: LOGGED });
			expect((await ask("GET", `/parties/${order.owner.id}`)).name).toBe("[erased]");
			expect(await readdir(keys)).not.toContain(`${order.owner.id}.key`);
			expect(JSON.stringify(await ask("GET", `/orders/${order.id}`))).not.toContain(WORD);
			const receipt = await ask("GET", `/records/${recordId}/receipt`);
			expect(verifyReceipt(Buffer.from(JSON.stringify(receipt))).outcome).toBe("verified");
			await expect(ask("GET", `/exhibits/${sha256}`)).rejects.toThrow("410");
			const stored = await readdir(join(folder, "exhibits"), { recursive: true, withFileTypes: true });
			expect(stored.filter((entry) => entry.isFile())).toEqual([]);
		},
	);

	it("is erased to the end when asked again after the act was cut short", async () => {
		const { order } = await plant();
		const path = join(folder, "keys", `${order.owner.id}.key`);
		const key = await readFile(path);
		await ask("POST", `/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
		// As if the process had ended between the rows and the key.
		await writeFile(path, key);
		await ask("POST", `/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
		await expect(readFile(path)).rejects.toThrow("ENOENT");
		expect((await readFile(join(folder, "keys", "erasures.jsonl"), "utf8")).trim().split("\n")).toHaveLength(1);
	});

	it("leaves nothing unreadable although others write about the person while it is erased", async () => {
		const { order, leg } = await plant();
		const owner = order.owner.id;
		const write = async (path: string, body: unknown) => {
			for (let count = 0; count < 15; count += 1) {
				const refused = await ask("POST", path, body).catch((error: Error) => error.message);
				if (typeof refused === "string") expect(refused).toMatch(/: (400|410) /);
			}
		};
		const next = { ...order, owner: { id: owner }, repairer: { id: order.repairer.id } };
		const { contractKind, item, terms } = next;
		const { id: _item, ...itemInput } = item;
		await Promise.all([
			write(`/consignments/${leg.id}/records`, { stage: "arrival", content: { statement: `more of ${WORD}` } }),
			write(`/orders/${order.id}/consignments`, {
				direction: "to-owner",
				facts: { mode: "road", bookedBy: "consignor", carrier: WORD },
			}),
			write("/orders", { contractKind, owner: next.owner, repairer: next.repairer, item: itemInput, terms }),
			ask("POST", `/parties/${owner}/erase`, { confirm: owner }),
		]);
		const { orders } = await ask("GET", "/orders");
		expect(orders.length).toBeGreaterThan(0);
		expect(JSON.stringify(orders)).not.toContain(WORD);
		for (const { id } of orders) {
			const page = await fetch(`${service.url}/orders/${id}`, { headers: { authorization: `Bearer ${token}` } });
			expect(page.status).toBe(200);
		}
		expect(await filesWith(WORD)).toEqual([]);
	});

	it("cannot be read without its key, and a start without it says which file is missing", async () => {
		const { order } = await plant();
		await service.stop();
		const path = join(folder, "keys", `${order.owner.id}.key`);
		const key = await readFile(path);
		await rm(path);
		await expect(startBuiltService(folder)).rejects.toThrow(
			`handover-risk did not start: the key of a party is missing: put ${path} back`,
		);
		await writeFile(path, key);
		service = await startBuiltService(folder);
		expect((await ask("GET", `/parties/${order.owner.id}`)).name).toBe(`Ada ${WORD}`);
	});
});
