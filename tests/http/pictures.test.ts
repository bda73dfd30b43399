/**
 * Photos and films by every actor: the taker has the original, others get a copy in which nothing says where or with what it
 * was taken, until the taker agrees; and what papers hold. Metadata is planted by libexif and looked for by another reader
 * and byte by byte (tests/setup/pictures.ts).
 */
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sourceOf } from "../../src/records/verify/dossier/byte-source.ts";
import { verifyDossier } from "../../src/records/verify/dossier/verify-dossier.ts";
import { type PictureScene, pictureScene } from "../setup/picture-scene.ts";
import { large, leaksOf, located, locatedFilm, PLANTED_MODEL } from "../setup/pictures.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { lacks, runTool } from "../setup/tools.ts";

let shop: TestApp;
let scene: PictureScene;
let folder: string;
let photo: Buffer;
/** Of the owner, except `bench` and `big`, which the shop brought. */
const sha256s: Record<"photo" | "film" | "cut" | "bench" | "big", string> = {
	photo: "",
	film: "",
	cut: "",
	bench: "",
	big: "",
};
beforeAll(async () => {
	shop = await testApp();
	scene = await pictureScene(shop);
	folder = mkdtempSync(join(tmpdir(), "handover-risk-pictures-"));
	photo = await located("jpeg");
	expect(leaksOf(photo), "the planted metadata is found where it is").toContain("gps");
	sha256s.photo = await scene.bring("owner", "front.jpg", photo);
	sha256s.film = await scene.bring("owner", "opening.mp4", locatedFilm());
	sha256s.cut = await scene.bring("owner", "cut.jpg", photo.subarray(0, photo.length - 300));
	sha256s.big = await scene.bring("owner", "big.jpg", await large());
	sha256s.bench = await scene.bring("shop", "bench.png", await located("png"));
	await scene.sealBoth();
}, 60_000);
afterAll(async () => {
	await shop?.close();
	rmSync(folder, { recursive: true, force: true });
});

const fileOf = (sha256: string, record = scene.recordId) => `/api/v1/records/${record}/exhibits/${sha256}`;
const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const OTHERS = ["shop", "settle", "reader"] as const;

describe("before any consent", () => {
	it("the owner, who took it, gets the original back", async () => {
		const answer = await scene.get("owner", `/api/v1/exhibits/${sha256s.photo}`);
		expect(sha256(answer.rawPayload)).toBe(sha256s.photo);
		expect(answer.headers["content-disposition"]).toMatch(/^attachment/);
	});
	it("so does the owner through another link of the same party", async () => {
		const order = (await shop.ask("GET", `/api/v1/orders/${scene.orderId}`)).json();
		const made = (
			await shop.ask("POST", "/api/v1/links", { scope: "settle", orderId: scene.orderId, partyId: order.owner.id })
		).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: "/api/v1/links/enter",
			payload: { token: made.url.split("/").at(-1), code: made.code },
		});
		const answer = await shop.app.inject({
			url: `/api/v1/exhibits/${sha256s.photo}`,
			headers: { cookie: `link=${entered.cookies[0]?.value}` },
		});
		expect(sha256(answer.rawPayload)).toBe(sha256s.photo);
	});
	it.each(OTHERS)("%s gets a copy that says neither place nor device nor time", async (who) => {
		for (const path of [`/api/v1/exhibits/${sha256s.photo}`, `${fileOf(sha256s.photo)}/thumbnail`]) {
			const answer = await scene.get(who, path);
			expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
			expect(answer.headers["content-type"]).toBe("image/jpeg");
			expect(leaksOf(answer.rawPayload)).toEqual([]);
		}
	});
	it("whoever reads another order gets nothing, nor does anyone unknown", async () => {
		for (const path of [
			`/api/v1/exhibits/${sha256s.photo}`,
			fileOf(sha256s.photo),
			`${fileOf(sha256s.photo)}/thumbnail`,
		]) {
			expect((await scene.get("other", path)).statusCode, path).toBe(404);
			expect((await shop.app.inject({ url: path })).statusCode, path).toBe(401);
		}
	});
	it("the shop's own photo is the shop's: the owner gets the copy", async () => {
		expect(sha256((await scene.get("shop", `/api/v1/exhibits/${sha256s.bench}`)).rawPayload)).toBe(sha256s.bench);
		const copy = await scene.get("owner", `/api/v1/exhibits/${sha256s.bench}`);
		expect(copy.statusCode).toBe(200);
		expect(leaksOf(copy.rawPayload)).toEqual([]);
	});
	it("a film with its place, and a photo that is cut off, are handed to nobody else", async () => {
		for (const name of ["film", "cut"] as const) {
			const answer = await scene.get("shop", `/api/v1/exhibits/${sha256s[name]}`);
			expect(answer.statusCode, name).toBe(403);
			expect(answer.json().type).toContain("not-handed-out");
			expect((await scene.get("owner", `/api/v1/exhibits/${sha256s[name]}`)).statusCode).toBe(200);
			expect((await scene.get("shop", `${fileOf(sha256s[name])}/thumbnail`)).statusCode).toBe(404);
		}
	});
	it("claims are told beside the receipt, as claims; that there is a place only to the taker", async () => {
		const [own, others] = await Promise.all([
			scene.get("owner", fileOf(sha256s.photo)),
			scene.get("shop", fileOf(sha256s.photo)),
		]);
		const claimed = { time: "2026-05-02T10:11:12", offset: "+02:00", device: expect.stringContaining(PLANTED_MODEL) };
		expect(own.json()).toMatchObject({
			isTaker: true,
			claimed: { ...claimed, hasPlace: true },
			others: "without-metadata",
		});
		expect(others.json()).toMatchObject({ isTaker: false, claimed, choices: [] });
		expect(others.json().claimed.hasPlace).toBe(undefined);
		expect(Date.parse(own.json().receivedAt)).toBeGreaterThan(0);
		expect((await scene.get("owner", fileOf(sha256s.cut))).json().refusal).toBe("damaged");
		for (const answer of [own, others]) expect(answer.body).not.toMatch(/48\.2|16\.3/);
	});
});

describe("consent", () => {
	const handOut = (
		who: "shop" | "owner" | "settle" | "reader" | "other",
		body: object,
		name: keyof typeof sha256s = "photo",
	) => scene.post(who, `${fileOf(sha256s[name])}/hand-out`, body);

	it("is the taker's alone", async () => {
		expect((await handOut("shop", { choice: "original" })).statusCode).toBe(403);
		expect((await handOut("reader", { choice: "original" })).statusCode).toBe(403);
		expect((await handOut("settle", { choice: "original" })).statusCode).toBe(403);
		expect((await handOut("other", { choice: "original" })).statusCode).toBe(404);
		const body = { rectangles: [{ x: 0, y: 0, w: 10, h: 10 }] };
		expect((await scene.post("shop", `${fileOf(sha256s.photo)}/copies`, body)).statusCode).toBe(403);
	});
	it("refuses what it cannot mean, by name", async () => {
		for (const [body, path] of [
			[{ choice: "all" }, "/choice"],
			[{ choice: "blacked-out" }, "/copySha256"],
			[{ choice: "blacked-out", copySha256: "0".repeat(64) }, "/copySha256"],
			[{ choice: "original", copySha256: "0".repeat(64) }, "/copySha256"],
		] as const) {
			const answer = await handOut("owner", body);
			expect([answer.statusCode, answer.json().errors[0].path], JSON.stringify(body)).toEqual([400, path]);
		}
		const outside = { rectangles: [{ x: 95, y: 0, w: 10, h: 10 }] };
		const answer = await scene.post("owner", `${fileOf(sha256s.photo)}/copies`, outside);
		expect([answer.statusCode, answer.json().errors[0].path]).toEqual([400, "/rectangles/0/w"]);
		const none = await scene.post("owner", `${fileOf(sha256s.cut)}/copies`, {
			rectangles: [{ x: 0, y: 0, w: 10, h: 10 }],
		});
		expect([none.statusCode, none.json().errors[0].code]).toEqual([400, "no-picture"]);
	});
	it("hands out the original from then on, and no longer once it is withdrawn; both are dated", async () => {
		for (const name of ["photo", "film"] as const) {
			expect((await handOut("owner", { choice: "original" }, name)).json().others).toBe("original");
			for (const who of ["shop", "reader", "settle"] as const) {
				const answer = await scene.get(who, `/api/v1/exhibits/${sha256s[name]}`);
				expect(sha256(answer.rawPayload), `${name} ${who}`).toBe(sha256s[name]);
			}
			expect((await scene.get("other", `/api/v1/exhibits/${sha256s[name]}`)).statusCode).toBe(404);
			const after = (await handOut("owner", { choice: "without-metadata" }, name)).json();
			expect(after.choices.map(({ choice }: { choice: string }) => choice)).toEqual(["original", "without-metadata"]);
			expect(Date.parse(after.choices[0].at)).toBeLessThanOrEqual(Date.parse(after.choices[1].at));
			expect(after.choices[0].by).toMatch(/^lnk_/);
			const again = await scene.get("shop", `/api/v1/exhibits/${sha256s[name]}`);
			expect(sha256(again.rawPayload)).not.toBe(sha256s[name]);
			expect(again.statusCode).toBe(name === "photo" ? 200 : 403);
		}
	});
	it("hands out a blacked-out copy where the taker says so, also as thumbnail, and the whole one no more", async () => {
		// The left half is red.
		const body = { rectangles: [{ x: 0, y: 0, w: 50, h: 100 }] };
		const made = await scene.post("owner", `${fileOf(sha256s.photo)}/copies`, body);
		expect(made.statusCode, made.body).toBe(201);
		const copySha256 = String(made.headers.location).split("/").at(-1) ?? "";
		const whole = made.json().copies.find(({ kind }: { kind: string }) => kind === "without-metadata").sha256;
		const place = (copy: string) => `${fileOf(sha256s.photo)}/copies/${copy}`;
		// Nobody gets it yet but the taker.
		expect((await scene.get("shop", place(copySha256))).statusCode).toBe(404);
		expect(sha256((await scene.get("owner", place(copySha256))).rawPayload)).toBe(copySha256);
		expect((await scene.get("shop", place(whole))).statusCode).toBe(200);
		expect((await handOut("owner", { choice: "blacked-out", copySha256 })).json().others).toBe("blacked-out");
		expect((await scene.get("shop", place(whole))).statusCode).toBe(404);
		for (const path of [`/api/v1/exhibits/${sha256s.photo}`, `${fileOf(sha256s.photo)}/thumbnail`, place(copySha256)]) {
			const { rawPayload } = await scene.get("shop", path);
			expect(leaksOf(rawPayload)).toEqual([]);
			const [left] = await sharp(rawPayload).extract({ left: 50, top: 100, width: 1, height: 1 }).raw().toBuffer();
			const right = await sharp(rawPayload).extract({ left: 350, top: 100, width: 1, height: 1 }).raw().toBuffer();
			expect(left, path).toBeLessThan(30);
			expect(right[2], path).toBeGreaterThan(200);
		}
	});
});

describe("what papers hold", () => {
	let zip: Buffer;
	beforeAll(async () => {
		const answer = await scene.get("reader", `/api/v1/orders/${scene.orderId}/dossier.zip?edition=expert`);
		expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
		zip = answer.rawPayload;
	}, 60_000);

	it("the dossier has copies, names the sealed hashes, and says nowhere where anything was taken", () => {
		// Archive without compression: what is in a file is in its bytes.
		expect(leaksOf(zip)).toEqual([]);
		expect(zip.includes("48.2083")).toBe(false);
		expect(zip.includes(photo)).toBe(false);
	});
	it("our verifier says of each copy what it stands for, and that it cannot compare them", async () => {
		const { outcome, checks } = await verifyDossier(sourceOf(zip));
		expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
		expect(outcome).toBe("verified");
		const copies = checks.filter(({ id }) => id === "copies");
		expect(copies.map(({ why }) => why?.sentence).sort()).toEqual([
			"verify.copies-blacked-out-party",
			"verify.copies-nothing-party",
			"verify.copies-without-metadata-party",
			"verify.copies-without-metadata-shop",
		]);
		expect(JSON.stringify(copies)).toContain(sha256s.photo);
		const files = [{ name: "front.jpg", sha256: sha256s.photo }];
		const brought = (await verifyDossier(sourceOf(zip), { files })).checks.filter(({ id }) => id === "copies");
		expect(brought.map(({ why }) => why?.values.brought).sort()).toEqual(["0", "0", "0", "1"]);
	});
	it.skipIf(lacks("unzip"))("its guide's step for copies passes, and finds a copy that was exchanged", () => {
		writeFileSync(join(folder, "dossier.zip"), zip);
		runTool("unzip", ["-q", "dossier.zip"], folder);
		const bag = join(folder, readdirSync(folder).find((name) => name.startsWith("dossier-")) ?? "");
		expect(readdirSync(join(bag, "data/copies")).sort()).toEqual(["E1.jpg", "E4.jpg", "E5.jpg"]);
		const step = /\n7\. [\s\S]*?\n\n([\s\S]*?)\n\n8\. /.exec(readFileSync(join(bag, "VERIFY.txt"), "utf8"))?.[1] ?? "";
		const follow = () => runTool("bash", ["-c", step], bag).said.trim().split("\n");
		expect(follow()).toEqual([
			expect.stringMatching(/^E1, blacked-out, original with pty_\w+: OK$/),
			expect.stringMatching(/^E2, nothing, original with pty_\w+: OK$/),
			expect.stringMatching(/^E3, nothing, original with pty_\w+: OK$/),
			expect.stringMatching(/^E4, without-metadata, original with pty_\w+: OK$/),
			"E5, without-metadata, original with shop: OK",
		]);
		writeFileSync(join(bag, "data/copies/E1.jpg"), readFileSync(join(bag, "data/copies/E4.jpg")));
		expect(follow()[0]).toMatch(/FAILED$/);
	});
	it.each(["parties", "carrier"])(
		"the report for %s names original and copy, and holds no metadata",
		async (edition) => {
			const { rawPayload } = await scene.get("shop", `/api/v1/orders/${scene.orderId}/report.pdf?edition=${edition}`);
			expect(leaksOf(rawPayload)).toEqual([]);
			if (lacks("pdftotext")) return;
			writeFileSync(join(folder, "report.pdf"), rawPayload);
			const words = runTool("pdftotext", ["-raw", join(folder, "report.pdf"), "-"]).said.replace(/\s+/g, "");
			const copy = (await scene.get("shop", fileOf(sha256s.photo))).json().copies[0].sha256;
			for (const text of [sha256s.photo, copy, sha256s.film, "Nothandedout", "partsblackedout"]) {
				expect(words, text).toContain(text);
			}
		},
	);
	it("the carrier's photos are those of the leg under the report's numbers, 2 MB at most and no metadata; the shop alone gets them", async () => {
		const path = `/api/v1/orders/${scene.orderId}/carrier-photos`;
		const list = (await scene.get("shop", path)).json();
		expect(list.photos.map(({ number, file }: { number: string; file: unknown }) => [number, file !== null])).toEqual([
			["E1", true],
			["E2", false],
			["E3", false],
			["E4", true],
		]);
		for (const { file } of list.photos.filter((one: { file: unknown }) => one.file !== null)) {
			const { rawPayload, headers } = await scene.get("shop", file.path);
			expect(headers["content-type"]).toBe("image/jpeg");
			expect(rawPayload.length).toBeLessThanOrEqual(2_000_000);
			expect(sha256(rawPayload)).toBe(file.sha256);
			expect(leaksOf(rawPayload)).toEqual([]);
		}
		// Not thrown down to nothing either.
		expect(list.photos[3].file.sizeBytes).toBeGreaterThan(1_000_000);
		expect((await scene.get("shop", `${path}/E2.jpg`)).statusCode).toBe(404);
		expect((await scene.get("shop", `${path}/E99.jpg`)).statusCode).toBe(404);
		for (const who of ["owner", "settle", "reader"] as const) {
			expect((await scene.get(who, `${path}/E1.jpg`)).statusCode).toBe(403);
			expect((await scene.get(who, path)).statusCode).toBe(403);
		}
	}, 60_000);
});

it("what was brought to a draft that was discarded is for whoever may write it, and nobody else", async () => {
	const draft = (await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, { stage: "bench" })).json();
	const brought = await shop.app.inject({
		method: "POST",
		url: `/api/v1/records/${draft.id}/exhibits?fileName=front.jpg`,
		headers: { ...scene.as.shop, "content-type": "image/jpeg" },
		payload: photo,
	});
	expect(brought.statusCode, brought.body).toBe(201);
	await shop.ask("POST", `/api/v1/records/${draft.id}/discard`, undefined, { "if-match": '"v1"' });
	for (const path of [`/api/v1/records/${draft.id}/files`, `/api/v1/records/${draft.id}/exhibits`])
		for (const who of ["reader", "owner"] as const)
			expect([403, 404], `${who} ${path}`).toContain((await scene.get(who, path)).statusCode);
});

describe("the code beside the board", () => {
	it("is given for a draft, and found again with the checkpoint that it comes from", async () => {
		const draft = (await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, { stage: "bench" })).json();
		const size = Number((await shop.ask("GET", "/api/v1/log/checkpoint")).body.split("\n")[1]);
		const root = Buffer.from((await shop.ask("GET", "/api/v1/log/checkpoint")).body.split("\n")[2] ?? "", "base64");
		const given = await shop.ask("POST", `/api/v1/records/${draft.id}/photo-code`);
		expect(given.json(), given.body).toMatchObject({ recordId: draft.id, treeSize: size, root: root.toString("hex") });
		const { code } = given.json();
		// The log grows; the paper that was written stays good, and so does its code.
		await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, { stage: "bench" });
		expect((await shop.ask("POST", `/api/v1/records/${draft.id}/photo-code`)).json().code).toBe(code);
		for (const who of ["shop", "owner", "settle", "reader"] as const) {
			const typed = `${code.slice(0, 4).toLowerCase()}-${code.slice(4)}`;
			const found = await scene.get(who, `/api/v1/orders/${scene.orderId}/photo-codes?code=${typed}`);
			expect(found.json().codes, who).toEqual([given.json()]);
		}
		expect((await scene.get("other", `/api/v1/orders/${scene.orderId}/photo-codes?code=${code}`)).statusCode).toBe(404);
		expect((await scene.get("shop", `/api/v1/orders/${scene.orderId}/photo-codes?code=00000000`)).json().codes).toEqual(
			[],
		);
		const bad = await scene.get("shop", `/api/v1/orders/${scene.orderId}/photo-codes?code=no`);
		expect([bad.statusCode, bad.json().errors[0].path]).toEqual([400, "/code"]);
	});
	it("is given for no sealed record, and to no reader", async () => {
		expect((await shop.ask("POST", `/api/v1/records/${scene.shopRecordId}/photo-code`)).statusCode).toBe(409);
		expect((await scene.post("reader", `/api/v1/records/${scene.recordId}/photo-code`, {})).statusCode).toBe(403);
	});
});

it("an erased owner's photos, copies too, are gone", async () => {
	const order = (await shop.ask("GET", `/api/v1/orders/${scene.orderId}`)).json();
	const erased = await shop.ask("POST", `/api/v1/parties/${order.owner.id}/erase`, { confirm: order.owner.id });
	expect(erased.statusCode, erased.body).toBeLessThan(300);
	const left = readdirSync(shop.deps.exhibitFolder, { recursive: true, withFileTypes: true }).filter((one) =>
		one.isFile(),
	);
	expect(left).toEqual([]);
	expect((await scene.get("shop", `/api/v1/exhibits/${sha256s.bench}`)).statusCode).toBe(410);
	expect((await scene.get("shop", `${fileOf(sha256s.bench, scene.shopRecordId)}/thumbnail`)).statusCode).toBe(410);
	const view = (await scene.get("shop", fileOf(sha256s.bench, scene.shopRecordId))).json();
	expect(view.claimed).toMatchObject({ device: null, time: null });
});

describe("a photo that both sides brought", () => {
	it("is handed out as the more careful of the two wants it; where each hides another part, not at all", async () => {
		const both = await pictureScene(shop);
		const shared = await both.bring("owner", "front.jpg", photo);
		expect(await both.bring("shop", "same.jpg", photo)).toBe(shared);
		await both.sealBoth();
		const records = { owner: both.recordId, shop: both.shopRecordId };
		const blackOut = async (who: "owner" | "shop", x: number) => {
			const body = { rectangles: [{ x, y: 0, w: 50, h: 100 }] };
			const made = await both.post(who, `${fileOf(shared, records[who])}/copies`, body);
			expect(made.statusCode, made.body).toBe(201);
			return String(made.headers.location).split("/").at(-1) ?? "";
		};
		const choose = async (who: "owner" | "shop", choice: string, copySha256?: string) =>
			(await both.post(who, `${fileOf(shared, records[who])}/hand-out`, { choice, copySha256 })).json().others;
		const read = async () => {
			const answer = await both.get("reader", `/api/v1/exhibits/${shared}`);
			return answer.statusCode === 200 ? sha256(answer.rawPayload) : answer.statusCode;
		};
		const [left, right] = [await blackOut("owner", 0), await blackOut("shop", 50)];
		expect(await choose("shop", "original")).toBe("without-metadata");
		expect(await choose("shop", "blacked-out", right)).toBe("blacked-out");
		expect(await read()).toBe(right);
		expect(await choose("owner", "blacked-out", left)).toBe("nothing");
		expect(await read()).toBe(403);
		const page = await both.get("reader", `/records/${both.recordId}/exhibits/${shared}`);
		expect(page.body).toContain("each blacked out another part");
		for (const copy of [left, right])
			expect((await both.get("reader", `${fileOf(shared, records.owner)}/copies/${copy}`)).statusCode).toBe(404);
		expect(await choose("owner", "blacked-out", right)).toBe("blacked-out");
		expect(await read()).toBe(right);
		// The newest choice counts, whatever was chosen before.
		expect(await choose("owner", "original")).toBe("blacked-out");
		expect(await choose("shop", "blacked-out", left)).toBe("blacked-out");
		expect(await read()).toBe(left);
		expect(await choose("shop", "original")).toBe("original");
		expect(await read()).toBe(shared);
	});
});
