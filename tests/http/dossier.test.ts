/**
 * A dossier of a played order: BagIt by the rules of RFC 8493, its guide run as it stands with sha256sum and OpenSSL, our
 * verifier's answer, and what it says of a byte that was changed or cut off.
 */
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { outcomeWords } from "../../src/pages/verify/outcome-words.ts";
import { sourceOf } from "../../src/records/verify/dossier/byte-source.ts";
import { readBag } from "../../src/records/verify/dossier/read-bag.ts";
import { verifyDossier } from "../../src/records/verify/dossier/verify-dossier.ts";
import { verifyReceipt } from "../../src/records/verify/verify-receipt.ts";
import { english } from "../../src/texts/english.ts";
import { type Played, playScenario } from "../scenarios/play-scenario.ts";
import { forgedDossier } from "../setup/forged-dossier.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { lacks, runTool } from "../setup/tools.ts";

const scenario = JSON.parse(readFileSync(new URL("../../demo-data/scenarios/s10a.json", import.meta.url), "utf8"));
const PHOTO = readFileSync(new URL("../../demo-data/pictures/card-front.png", import.meta.url));

let shop: TestApp;
let played: Played;
let path: string;
let zip: Buffer;
let folder: string;
let bag: string;
beforeAll(async () => {
	shop = await testApp();
	played = await playScenario(shop, scenario);
	await sealWithPhoto(shop, played);
	for (const [path, body] of [
		["positions", { kind: "states", text: "It started forty times here." }],
		["settlement", { act: "proposes", outcome: "no-fault-found", itemNext: "stays" }],
	] as const) {
		const sealed = await shop.ask("POST", `/api/v1/orders/${played.orderId}/${path}`, body);
		expect(sealed.statusCode, sealed.body).toBe(201);
	}
	const size = (await shop.ask("GET", "/api/v1/log/checkpoint")).body.split("\n")[1];
	path = `/api/v1/orders/${played.orderId}/dossier.zip?edition=expert&at=${size}`;
	const answer = await shop.ask("GET", path);
	expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
	zip = answer.rawPayload;
	folder = mkdtempSync(join(tmpdir(), "handover-risk-dossier-"));
	writeFileSync(join(folder, "dossier.zip"), zip);
	if (!lacks("unzip")) runTool("unzip", ["-q", "dossier.zip"], folder);
	bag = join(folder, readdirSync(folder).find((name) => name.startsWith("dossier-")) ?? "");
}, 60_000);
afterAll(async () => {
	await shop?.close();
	if (folder !== undefined) rmSync(folder, { recursive: true });
});

async function sealWithPhoto(app: TestApp, { legIds }: Played): Promise<void> {
	const draft = (await app.ask("POST", `/api/v1/consignments/${legIds[0]}/records`, { stage: "arrival" })).json();
	const brought = await app.app.inject({
		method: "POST",
		url: `/api/v1/records/${draft.id}/exhibits?fileName=front.png`,
		headers: { authorization: `Bearer ${app.token}`, "content-type": "image/png" },
		payload: PHOTO,
	});
	const content = {
		observedAt: "2026-05-02T10:00:00+02:00",
		state: "good",
		identity: { serialNumber: "BM12-40118" },
		exhibits: [{ sha256: brought.json().sha256, view: "item-front" }],
	};
	const saved = await app.ask("PUT", `/api/v1/records/${draft.id}`, content, { "if-match": '"v1"' });
	const sealed = await app.ask("POST", `/api/v1/records/${draft.id}/seal`, undefined, {
		"if-match": String(saved.headers.etag),
	});
	expect(sealed.statusCode, sealed.body).toBe(200);
	// Without consent a copy without metadata stands in the place of the original: tests/http/pictures-in-papers.test.ts.
	const path = `/api/v1/records/${draft.id}/exhibits/${brought.json().sha256}/hand-out`;
	expect((await app.ask("POST", path, { choice: "original" })).statusCode).toBe(200);
}

/** Where the archive's files begin. */
function headsOf(archive: Buffer): number[] {
	const heads: number[] = [];
	for (let at = archive.indexOf("PK\u0003\u0004"); at >= 0; at = archive.indexOf("PK\u0003\u0004", at + 4))
		heads.push(at);
	return heads;
}

const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const verify = (bytes: Uint8Array) => verifyDossier(sourceOf(bytes));

describe.skipIf(lacks("unzip"))("the bag, RFC 8493", () => {
	const filesBelow = (place: string) =>
		readdirSync(place, { recursive: true, withFileTypes: true })
			.filter((entry) => entry.isFile())
			.map((entry) => join(entry.parentPath, entry.name).slice(bag.length + 1))
			.sort();
	const manifest = (name: string) =>
		readFileSync(join(bag, name), "utf8")
			.trimEnd()
			.split("\n")
			.map((line) => [line.slice(0, 64), line.slice(66)] as const);

	it("declares itself (section 2.1.1)", () => {
		expect(readFileSync(join(bag, "bagit.txt"), "utf8")).toBe(
			"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
		);
	});
	it("lists every file of the payload once, with its hash (2.1.3), and every tag file but itself (2.2.1)", () => {
		const payload = filesBelow(join(bag, "data"));
		expect(
			manifest("manifest-sha256.txt")
				.map(([, path]) => path)
				.sort(),
		).toEqual(payload);
		const tags = filesBelow(bag).filter((path) => !path.startsWith("data/") && path !== "tagmanifest-sha256.txt");
		expect(
			manifest("tagmanifest-sha256.txt")
				.map(([, path]) => path)
				.sort(),
		).toEqual(tags);
		for (const [hash, path] of [...manifest("manifest-sha256.txt"), ...manifest("tagmanifest-sha256.txt")]) {
			expect(sha256(readFileSync(join(bag, path))), path).toBe(hash);
		}
	});
	it("counts its payload (2.2.2)", () => {
		const payload = filesBelow(join(bag, "data"));
		const octets = payload.reduce((sum, path) => sum + readFileSync(join(bag, path)).length, 0);
		expect(readFileSync(join(bag, "bag-info.txt"), "utf8")).toContain(`Payload-Oxum: ${octets}.${payload.length}\n`);
	});
	it("holds report, statements, openings, proofs, key, signature, the photo and the page that verifies", () => {
		for (const path of ["report.pdf", "receipt.json", "verify-offline.html", "log/key.pem", "log/checkpoint.sig"]) {
			expect(existsSync(join(bag, "data", path)), path).toBe(true);
		}
		expect(readFileSync(join(bag, "data/exhibits/E1.png")).equals(PHOTO)).toBe(true);
		expect(readdirSync(join(bag, "data/statements")).length).toBe(played.view.records.length + 3);
	});
});

/** The blocks of the guide's part B, in any language: what stands behind the empty line under a numbered heading. */
const blocksOf = (guide: string) =>
	(/\nB\. [\s\S]*?\n\n\n/.exec(guide)?.[0] ?? "")
		.trimEnd()
		.split(/\n\d\. /)
		.slice(1)
		.map((block) => block.split("\n\n").slice(1).join("\n"));

describe.skipIf(lacks("unzip"))("its guide, every block pasted as it stands", () => {
	const guide = () => readFileSync(join(bag, "VERIFY.txt"), "utf8");
	const follow = () => blocksOf(guide()).map((block) => runTool("bash", ["-c", block], bag).said);

	it("is in English the same, byte for byte, as before there were others (regression value)", () => {
		expect(sha256(readFileSync(join(bag, "VERIFY.txt")))).toBe(
			"04f02339b5cf2bc45d68152c06658fd0f717fb9fc598036ddcc5a9a5d486cde6",
		);
	});
	it.each(["de", "fr"])(
		"is in %s in a dossier of that language, with the same blocks, and the bag verifies",
		async (language) => {
			const answer = await shop.ask("GET", `${path}&language=${language}`);
			expect(answer.statusCode).toBe(200);
			const read = await readBag(sourceOf(answer.rawPayload), () => {});
			const said = Buffer.from(await read.bytesOf("VERIFY.txt")).toString("utf8");
			expect(said).toContain(language === "de" ? "SO WIRD DIESES DOSSIER GEPRÜFT" : "COMMENT VÉRIFIER CE DOSSIER");
			expect(Buffer.from(await read.bytesOf("bag-info.txt")).toString("utf8")).toContain("Dossier of one order");
			// Byte for byte those that the next test runs; the last command stands behind them.
			expect(blocksOf(said)).toEqual(blocksOf(guide()));
			expect(blocksOf(said).length).toBe(8);
			expect(said).toContain("\nopenssl pkey -pubin -in data/log/key.pem -noout -text\n");
			expect((await verify(answer.rawPayload)).outcome).toBe("verified");
		},
	);
	it("says that all is well", () => {
		const [hashes = "", signature, root = "", entries = "", statements = "", exhibits] = follow();
		expect(
			hashes
				.trim()
				.split("\n")
				.every((line) => line.endsWith(": OK")),
			hashes,
		).toBe(true);
		expect(signature).toContain("Signature Verified Successfully");
		const [signed, climbed] = root.trim().split("\n");
		expect(climbed).toBe(signed);
		for (const said of [entries, statements]) {
			expect(said).not.toContain("FAILED");
			expect(said.split("OK").length).toBeGreaterThan(3);
		}
		expect(exhibits).toBe("exhibit E1.png: OK\n");
	});
	it.each([
		["data/log/checkpoint.txt", 1, /Signature Verification Failure/],
		["data/entries", 3, /in the log: FAILED/],
		["data/statements", 4, /statement \d+: FAILED/],
		["data/exhibits/E1.png", 5, /E1.png: FAILED/],
	])("finds a change of %s", (name, step, says) => {
		const place = join(bag, name);
		const file = /\.\w+$/.test(name) ? place : join(place, readdirSync(place)[0] ?? "");
		const good = readFileSync(file);
		const bad = Buffer.from(good);
		bad[10] = (bad[10] ?? 0) ^ 1;
		writeFileSync(file, bad);
		try {
			const said = follow();
			expect(said[0]).toMatch(/FAILED/);
			expect(said[step]).toMatch(says);
		} finally {
			writeFileSync(file, good);
		}
	});
});

describe("our verifier", () => {
	it("says that it is verified, and what it compared", async () => {
		const verification = await verify(zip);
		const failed = verification.checks.filter(({ outcome }) => outcome === "failed");
		expect(failed).toEqual([]);
		expect(verification).toMatchObject({
			outcome: "verified",
			about: played.orderId,
			format: "handover-risk/receipt/2",
		});
		for (const id of ["bag", "bag-files", "inclusion", "checkpoint-signature", "exhibits"]) {
			expect(verification.checks.find((check) => check.id === id)?.outcome, id).toBe("passed");
		}
	});
	it("says the same on the service, which takes it as it takes a receipt", async () => {
		const answer = await shop.app.inject({
			method: "POST",
			url: "/api/v1/verify",
			headers: { "content-type": "application/zip" },
			payload: zip,
		});
		expect(answer.json(), answer.body.slice(0, 300)).toMatchObject({ outcome: "verified", about: played.orderId });
	});
	it("says the same at the command line", () => {
		const program = new URL("../../dist/start/verify.js", import.meta.url).pathname;
		const good = runTool(process.execPath, [program, "dossier.zip"], folder);
		expect(good.said).toMatch(/^Verified: dossier\.zip/);
		expect(good.said).toContain(sha256(zip));
		expect(good.status).toBe(0);
		writeFileSync(join(folder, "cut.zip"), zip.subarray(0, -1));
		const cut = runTool(process.execPath, [program, "cut.zip"], folder);
		expect(cut.said).toMatch(/^Failed +bag /m);
		expect(cut.status).toBe(1);
	});
	it("finds a changed byte in the content of every file, and in the archive's structure wherever it stands", async () => {
		// Every header, the directory and the end; and a byte in the middle of each file.
		const places = new Set<number>();
		const heads = headsOf(zip);
		for (const [which, head] of heads.entries()) {
			const nameBytes = zip.readUInt16LE(head + 26);
			const start = head + 30 + nameBytes;
			for (let at = head; at < start; at += which < 2 ? 1 : 7) places.add(at);
			if (zip.readUInt32LE(head + 22) > 0) places.add(start + Math.floor(zip.readUInt32LE(head + 22) / 2));
		}
		const directory = zip.readUInt32LE(zip.length - 6);
		for (let at = directory; at < zip.length; at += at < directory + 200 ? 1 : 13) places.add(at);
		for (let at = zip.length - 22; at < zip.length; at++) places.add(at);
		const unseen: number[] = [];
		for (const at of places) {
			zip[at] = (zip[at] ?? 0) ^ 0x10;
			const { outcome, checks } = await verify(zip);
			if (outcome === "verified" || !checks.some((check) => check.outcome === "failed")) unseen.push(at);
			zip[at] = (zip[at] ?? 0) ^ 0x10;
		}
		expect(unseen).toEqual([]);
	}, 120_000);
	describe("of one that was made over, all hashes of its bag fitting again,", () => {
		/** Files of the log and of what was sealed, and photos; the report and the like are not sealed, and it says so. */
		const sealed = async () =>
			[...(await readBag(sourceOf(zip), () => {})).files.values()]
				.filter(({ path: name }) => /^data\/(log|entries|statements|openings|proofs|exhibits|receipt)/.test(name))
				.map(({ path: name, size }) => ({ name, size }));
		const failedIds = async (bytes: Buffer) => {
			const { outcome, checks } = await verify(bytes);
			expect(outcome).toBe("not-verified");
			return checks.filter((check) => check.outcome === "failed").map(({ id }) => id);
		};

		it("finds the flip of any bit of what was sealed, and names the check", async () => {
			const files = await sealed();
			await fc.assert(
				fc.asyncProperty(
					fc.constantFrom(...files),
					fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
					fc.integer({ min: 0, max: 7 }),
					async ({ name, size }, share, bit) => {
						const at = Math.floor(share * size);
						const forged = await forgedDossier(zip, name, (bytes) => {
							bytes[at] = (bytes[at] ?? 0) ^ (1 << bit);
							return bytes;
						});
						const failed = await failedIds(forged);
						expect(failed, `${name} ${at}`).not.toContain("bag");
						// Of the receipt itself it depends on where; every other file is named by the check that compares it.
						if (name === "data/receipt.json") expect(failed.length).toBeGreaterThan(0);
						else
							expect(failed, `${name} ${at}`).toEqual([name.startsWith("data/exhibits/") ? "exhibits" : "bag-files"]);
					},
				),
				{ numRuns: 40 },
			);
		}, 60_000);
		it("finds that a file of the log is missing", async () => {
			for (const { name } of (await sealed()).filter((_, place) => place % 7 === 0)) {
				if (name.startsWith("data/exhibits/")) continue;
				expect((await failedIds(await forgedDossier(zip, name, () => null)))[0], name).toMatch(/^bag/);
			}
		});
		it("takes no other report for sealed: that stays for the reader to compare", async () => {
			const forged = await forgedDossier(zip, "data/report.pdf", () => Buffer.from("%PDF-1.7 another"));
			const { outcome, checks } = await verify(forged);
			expect(outcome).toBe("verified");
			expect(checks.find(({ id }) => id === "bag-files")?.why?.sentence).toBe("verify.bag-files-passed");
			expect(english["verify.bag-files-passed"]).toContain("computed and not sealed");
		});
		it.each(["report.pdf", "comparison.json", "order.json"])(
			"says beside the verdict that it is not about %s",
			async (name) => {
				const verification = await verify(await forgedDossier(zip, `data/${name}`, () => Buffer.from("{}")));
				expect(verification.outcome).toBe("verified");
				const [verdict, covers, coversNot] = outcomeWords(verification);
				expect(verdict).toContain("that is sealed in this dossier was changed");
				expect(covers).toContain("sealed records and statements");
				expect(coversNot).toMatch(new RegExp(`^It does not cover [^:]*${name.replace(".", "\\.")}`));
			},
		);
		it("says so of no receipt, which holds nothing else", async () => {
			const receipt = await (await readBag(sourceOf(zip), () => {})).bytesOf("data/receipt.json");
			expect(outcomeWords(verifyReceipt(receipt))).toHaveLength(1);
		});
	});
	it("finds that something was cut off or added", async () => {
		for (const length of [0, 1, 3, 4, 21, 22, 1000, zip.length - 23, zip.length - 22, zip.length - 1]) {
			const { outcome, checks } = await verify(zip.subarray(0, length));
			expect(outcome, String(length)).toBe("not-verified");
			expect(checks[0]).toMatchObject({ id: "bag", outcome: "failed" });
		}
		expect((await verify(Buffer.concat([zip, Buffer.of(0)]))).outcome).toBe("not-verified");
	});
});

describe("the bytes", () => {
	it("are the same for the same size, also after the log has grown", async () => {
		await playScenario(shop, scenario);
		expect((await shop.ask("GET", path)).rawPayload.equals(zip)).toBe(true);
	});
	it.each([
		["bytes=0-99", 0, 100],
		["bytes=1000-", 1000, null],
		["bytes=-50", -50, null],
	])("are served in ranges: %s", async (range, from, to) => {
		const answer = await shop.ask("GET", path, undefined, { range });
		expect(answer.statusCode).toBe(206);
		expect(answer.rawPayload.equals(to === null ? zip.subarray(from) : zip.subarray(from, to))).toBe(true);
		expect(answer.headers["content-range"]).toMatch(new RegExp(`/${zip.length}$`));
	});
	it.each(["bytes=99999999-", "bytes=5-1", "bytes=a-b", "lines=1-2", "bytes=0-1,4-5", "bytes=-"])(
		"come whole where a range means nothing here: %s",
		async (range) => {
			const answer = await shop.ask("GET", path, undefined, { range });
			expect(answer.statusCode).toBe(200);
			expect(answer.rawPayload.length).toBe(zip.length);
		},
	);
	it("come whole where a range is of other bytes than these", async () => {
		const stale = await shop.ask("GET", path, undefined, { range: "bytes=0-9", "if-range": '"other"' });
		expect(stale.statusCode).toBe(200);
		const tag = String(stale.headers.etag);
		expect((await shop.ask("GET", path, undefined, { range: "bytes=0-9", "if-range": tag })).statusCode).toBe(206);
	});
});

it("there is none for the carrier, and none before something is sealed", async () => {
	const carrier = await shop.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip?edition=carrier`);
	expect(carrier.statusCode).toBe(400);
	expect(carrier.json().errors[0].path).toBe("/edition");
});

it("of an erased owner leaves out photos and words, and still verifies", async () => {
	const erased = await shop.ask("POST", `/api/v1/parties/${played.ownerId}/erase`, { confirm: played.ownerId });
	expect(erased.statusCode, erased.body).toBeLessThan(300);
	const answer = await shop.ask("GET", `/api/v1/orders/${played.orderId}/dossier.zip`);
	expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
	expect(answer.rawPayload.includes("exhibits/E1.png")).toBe(false);
	expect((await verify(answer.rawPayload)).outcome).toBe("verified");
});
