/** Each check on receipts that are whole in form: what passes, what fails it, what cannot be said and why. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { CheckId } from "../../../src/records/verify/finding.ts";
import type { Given } from "../../../src/records/verify/given.ts";
import { runningHash } from "../../../src/records/verify/hashes.ts";
import { noteKey } from "../../../src/records/verify/signed-note.ts";
import { verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { isTextKey, say } from "../../../src/texts/say.ts";
import {
	committed,
	counterSign,
	hexHash,
	LINK,
	ORDER,
	orderLog,
	PHOTO,
	RECORD,
	rootOf,
	TestLog,
	testKey,
	written,
} from "./independent-maker.ts";

const log = orderLog();
const key = log.keys[0] ?? testKey();
type Bent = ReturnType<TestLog["receipt"]>;
const bent = (change: (receipt: Bent) => void, about = RECORD): Buffer => {
	const receipt = structuredClone(log.receipt(about, { earlier: [3, 5] }));
	change(receipt);
	return written(receipt);
};
const whole = bent(() => undefined);
/** Outcome and sentence of each finding of one check. */
const told = (id: CheckId, bytes: Uint8Array, given: Partial<Given> = {}) =>
	verifyReceipt(bytes, given)
		.checks.filter((finding) => finding.id === id)
		.map(({ outcome, where, why }) => [outcome, where ?? "", why?.sentence].filter((part) => part !== "").join(" "));

describe("form", () => {
	it("refuses a receipt about something that none of its entries is about; an order is named in its statements", () => {
		const other = bent((receipt) => {
			receipt.about = `rec_${"q".repeat(20)}`;
		});
		expect(told("form", other)).toEqual(["failed /about verify.form-about"]);
		expect(verifyReceipt(bent(() => undefined, ORDER)).outcome).toBe("verified");
	});
	it("tells the place inside what is encoded", () => {
		const entry = Buffer.from('{"$format":"handover-risk/entry/1", "by":"x"}').toString("base64");
		const spaced = bent((receipt) => {
			(receipt.entries[1] as { entry: string }).entry = entry;
		});
		expect(told("form", spaced)).toEqual(["failed /entries/1/entry → byte 35 verify.json-unexpected"]);
	});
});

describe("statement-hash", () => {
	it("misses a statement, and refuses one that was not sealed", () => {
		const missing = bent((receipt) => {
			delete receipt.entries[1]?.statement;
			(receipt.entries[1] as { openings: unknown[] }).openings = [];
		});
		expect(told("statement-hash", missing)).toEqual(["failed /entries/1/statement verify.statement-missing"]);
		const added = bent((receipt) => {
			(receipt.entries[0] as { statement: string }).statement = Buffer.from('{"$format":"x"}').toString("base64");
		});
		expect(told("statement-hash", added)).toEqual(["failed /entries/0/statement verify.statement-unexpected"]);
	});
});

describe("openings", () => {
	it("tells how many commitments stand unopened, as after an erasure", () => {
		const { why } = verifyReceipt(whole).checks.find(({ id }) => id === "openings") ?? {};
		expect(why?.values).toEqual({ opened: "4", unopened: "2" });
		const erased = bent((receipt) => {
			(receipt.entries[1] as { openings: unknown[] }).openings = [];
		});
		expect(verifyReceipt(erased).outcome).toBe("verified");
		expect(verifyReceipt(erased).checks.find(({ id }) => id === "openings")?.why?.values).toEqual({
			opened: "2",
			unopened: "4",
		});
	});
	it("refuses another text, and an opening of something else", () => {
		const other = bent((receipt) => {
			const [opening] = (receipt.entries[1] as { openings: { value: unknown }[] }).openings;
			if (opening !== undefined) opening.value = "OW24-7731-D";
		});
		expect(told("openings", other)).toEqual(["failed /entries/1/openings/0 verify.opening-differs"]);
		const foreign = bent((receipt) => {
			(receipt.entries[1] as { openings: unknown[] }).openings = [committed("something else").opening];
		});
		expect(told("openings", foreign)).toEqual(["failed /entries/1/openings/0 verify.opening-foreign"]);
	});
});

describe("order and inclusion", () => {
	it("refuse entries that stand in another order, twice, or in another place of the log", () => {
		const turned = bent((receipt) => {
			receipt.entries.reverse();
		});
		expect(told("order", turned)[0]).toBe("failed /entries/1/entry verify.order-index");
		expect(told("inclusion", turned)).toEqual(["passed verify.inclusion-passed"]);
		const twice = bent((receipt) => {
			receipt.entries.splice(1, 0, receipt.entries[1] as Bent["entries"][number]);
		});
		expect(told("order", twice)).toEqual(["failed /entries/2/entry verify.order-index"]);
	});
	it("refuse an entry of no log, however well it is made", () => {
		const other = orderLog().receipt(RECORD);
		const mixed = bent((receipt) => {
			receipt.entries[0] = other.entries[0] as Bent["entries"][number];
			(receipt.entries[2] as { proof: string[] }).proof = [];
		});
		expect(told("inclusion", mixed)).toContain("failed /entries/2/proof verify.inclusion-length");
	});
	it("refuse time that runs back", () => {
		const back = new TestLog();
		back.add({ kind: "record-opened", subject: RECORD });
		(back as unknown as { atMs: number }).atMs -= 60_000;
		back.add({ kind: "record-discarded", subject: RECORD });
		expect(told("order", written(back.receipt(RECORD)))).toEqual(["failed /entries/1/entry verify.order-time"]);
	});
});

describe("checkpoint-signature and expected-key", () => {
	it("take the key as hex and as PEM, and no other key", () => {
		for (const given of [key.publicKey, key.publicKey.toUpperCase(), key.pem, ` ${key.pem}\n${testKey().pem}`]) {
			expect(told("expected-key", whole, { keys: [given] })).toEqual(["passed verify.expected-passed"]);
		}
		expect(told("expected-key", whole, { keys: [testKey().publicKey] })).toEqual(["failed verify.expected-other"]);
		for (const given of ["", "key", key.publicKey.slice(1), key.pem.replace("MCowBQ", "MCowBR")]) {
			expect(told("expected-key", whole, { keys: [given] })).toEqual(["failed verify.expected-unreadable"]);
		}
	});
	it("take the eight digits of a key's id as a hint and no more", () => {
		const id = noteKey(log.origin, key.publicKey).keyId;
		expect(told("expected-key", whole, { keys: [id] })).toEqual(["not-possible verify.expected-id"]);
		expect(told("expected-key", whole, { keys: ["00000000"] })).toEqual(["failed verify.expected-other"]);
	});
	it("a log made up with another key is whole in itself, and fails against the key that the reader knows", () => {
		const madeUp = written(orderLog(new TestLog(log.origin)).receipt(RECORD));
		expect(verifyReceipt(madeUp).outcome).toBe("verified");
		expect(told("expected-key", madeUp)).toEqual(["not-possible verify.expected-none"]);
		expect(verifyReceipt(madeUp, { keys: [key.publicKey] }).outcome).toBe("not-verified");
	});
	it("refuse a receipt without its key, and one with a key that signed nothing", () => {
		const without = bent((receipt) => {
			receipt.keys = [];
		});
		expect(told("checkpoint-signature", without)).toEqual(["failed /checkpoint verify.signature-unknown-key"]);
		const more = bent((receipt) => {
			receipt.keys.push({ origin: log.origin, publicKey: testKey().publicKey });
		});
		expect(told("checkpoint-signature", more)).toEqual(["failed /keys/1 verify.signature-idle-key"]);
	});
});

describe("a log that has changed its key", () => {
	/** The third entry brings a new key; its checkpoint is signed by both, the later ones by the new key alone. */
	const [old, next] = [testKey(), testKey()];
	const rotated = (statedKey: string) => {
		const rotating = new TestLog(undefined, [old]);
		rotating.add({ kind: "record-opened", subject: RECORD });
		rotating.add({ kind: "record-discarded", subject: RECORD });
		rotating.note(2);
		rotating.add({
			kind: "log-key-added",
			subject: "0".repeat(8),
			statement: {
				$format: "handover-risk/log-key/1",
				keyId: "0".repeat(8),
				origin: rotating.origin,
				publicKey: statedKey,
			},
		});
		rotating.note(3, [old, next]);
		rotating.keys.push(next);
		rotating.add({ kind: "record-opened", subject: `rec_${"e".repeat(20)}` });
		return rotating;
	};
	const read = (earlier: readonly number[], statedKey = next.publicKey) =>
		told("expected-key", written(rotated(statedKey).receipt(RECORD, { earlier })), { keys: [old.publicKey] });

	it("is known by the old key, where the old key's log names the new one", () => {
		const receipt = written(rotated(next.publicKey).receipt(RECORD, { earlier: [2, 3] }));
		expect(verifyReceipt(receipt, { keys: [old.publicKey] }).outcome).toBe("verified");
		expect(read([3])).toEqual(["passed verify.expected-handed-on"]);
	});
	it("is not, where the old key never signed that entry, or it names another", () => {
		expect(read([2])).toEqual(["failed verify.expected-other"]);
		expect(read([3], testKey().publicKey)).toEqual(["failed verify.expected-other"]);
	});
});

describe("earlier-checkpoints", () => {
	const kept = (size: number) => ({ name: "kept.txt", bytes: Buffer.from(log.note(size)) });
	const plain = written(log.receipt(RECORD));
	const proof = (from: number, to = log.entries.length) => ({
		name: "proof.json",
		bytes: Buffer.from(JSON.stringify({ size: to, rootSha256: null, proof: log.consistency(from, to) })),
	});

	it("says what it needs where it has nothing", () => {
		expect(told("earlier-checkpoints", plain)).toEqual(["not-possible verify.earlier-none"]);
		expect(told("earlier-checkpoints", plain, { earlier: [kept(4)] })).toEqual([
			"not-possible kept.txt verify.earlier-unproven",
		]);
	});
	it("takes a checkpoint of the reader's, by the receipt's own proof or one that was fetched", () => {
		expect(told("earlier-checkpoints", whole, { earlier: [kept(3)] })).toEqual(["passed verify.earlier-passed"]);
		expect(told("earlier-checkpoints", plain, { earlier: [kept(7)] })).toEqual(["passed verify.earlier-passed"]);
		expect(told("earlier-checkpoints", plain, { earlier: [kept(4), proof(4)] })).toEqual([
			"passed verify.earlier-passed",
		]);
		expect(told("earlier-checkpoints", plain, { earlier: [kept(4), proof(5)] })).toEqual([
			"not-possible kept.txt verify.earlier-unproven",
		]);
	});
	it("takes a checkpoint that was printed, and finds that it is another log's", () => {
		const root = (size: number) => rootOf(log.leaves.slice(0, size)).toString("hex");
		const groups = (size: number) => `${size} ${root(size).toUpperCase().replace(/.{4}/g, "$& ")}`;
		for (const size of [3, 7]) {
			expect(told("earlier-checkpoints", whole, { printed: [groups(size)] })).toEqual(["passed verify.earlier-passed"]);
		}
		expect(told("earlier-checkpoints", plain, { printed: [groups(4)], earlier: [proof(4)] })).toEqual([
			"passed verify.earlier-passed",
		]);
		expect(told("earlier-checkpoints", plain, { printed: [groups(4)] })[0]).toMatch(
			/^not-possible 4 .*earlier-unproven$/,
		);
		expect(told("earlier-checkpoints", plain, { earlier: [proof(4)] })).toEqual(["not-possible verify.earlier-none"]);
		const other = rootOf(orderLog().leaves.slice(0, 3)).toString("hex");
		expect(told("earlier-checkpoints", whole, { printed: [`3 ${other}`] })[0]).toMatch(/^failed 3 .*earlier-fork$/);
		for (const text of ["", "3", root(3), `x ${root(3)}`, `3 ${root(3)}0`]) {
			expect(told("earlier-checkpoints", whole, { printed: [text] })[0]).toMatch(/earlier-not-printed$/);
		}
	});
	it("takes older and newer receipts of the reader's", () => {
		const older = { name: "older.json", bytes: written(log.receipt(RECORD, { size: 3 })) };
		expect(told("earlier-checkpoints", whole, { earlier: [older] })).toEqual(["passed verify.earlier-passed"]);
		const newest = written(log.receipt(RECORD, { earlier: [5] }));
		const receipt = written(log.receipt(RECORD, { size: 5 }));
		expect(told("earlier-checkpoints", receipt, { earlier: [{ name: "newer.json", bytes: newest }] })).toEqual([
			"passed verify.earlier-passed",
		]);
	});
	it("finds a log that was rewritten, and one that is another", () => {
		const rewritten = orderLog(new TestLog(log.origin, [key]));
		const fork = { name: "fork.txt", bytes: Buffer.from(rewritten.note(3)) };
		expect(told("earlier-checkpoints", whole, { earlier: [fork] })).toEqual(["failed fork.txt verify.earlier-fork"]);
		const other = orderLog(new TestLog(`handover-risk/${"8".repeat(20)}`));
		const foreign = { name: "other.txt", bytes: Buffer.from(other.note(3)) };
		expect(told("earlier-checkpoints", whole, { earlier: [foreign] })).toEqual([
			"failed other.txt verify.earlier-other-log",
		]);
		const proofs = bent((receipt) => {
			const [first, second] = receipt.earlier;
			if (first !== undefined && second !== undefined) receipt.earlier = [{ ...first, proof: second.proof }];
		});
		expect(told("earlier-checkpoints", proofs)).toEqual(["failed /earlier/0/proof verify.earlier-inconsistent"]);
	});
	it("refuses what is neither receipt nor checkpoint nor proof, and a checkpoint of an unknown key", () => {
		const noise = { name: "noise", bytes: Buffer.from("noise") };
		expect(told("earlier-checkpoints", whole, { earlier: [noise] })[0]).toMatch(/^failed noise: .*verify.note-line/);
		const forged = orderLog(new TestLog(log.origin));
		const unknown = { name: "forged.txt", bytes: Buffer.from(forged.note(3)) };
		expect(told("earlier-checkpoints", whole, { earlier: [unknown] })[0]).toMatch(/verify.signature-unknown-key$/);
	});
});

describe("party-signature", () => {
	it("counts what a device signed, and says where nothing is", () => {
		expect(told("party-signature", whole)).toEqual(["passed verify.party-passed"]);
		const check = verifyReceipt(whole).checks.find(({ id }) => id === "party-signature");
		// The arrival, sealed a second before: the times that `independent-maker.ts` gives them.
		expect(check?.why?.values).toEqual({ signed: "1", list: "5 (2026-03-02 09:00:06 / 2026-03-02 09:00:07)" });
		const unsigned = bent((receipt) => {
			receipt.entries.pop();
		});
		expect(told("party-signature", unsigned)).toEqual(["not-possible verify.party-unsigned"]);
		expect(verifyReceipt(unsigned).outcome).toBe("verified");
	});
	it("refuses a signature over another entry, by another link, and a false one", () => {
		const signed = (change: (statement: Record<string, string>) => void) => {
			const other = orderLog(new TestLog());
			const last = other.entries.at(-1);
			if (last?.sealed === undefined || last.sealed === null) throw new Error("no signature");
			const statement = JSON.parse(last.sealed.toString());
			change(statement);
			other.add({ kind: "party-signed", subject: LINK, by: LINK, statement });
			return told("party-signature", written(other.receipt(RECORD)));
		};
		expect(signed(() => undefined)).toEqual(["passed verify.party-passed"]);
		const place = "failed /entries/5/statement";
		expect(
			signed((statement) => {
				statement.leafSha256 = "0".repeat(64);
			}),
		).toEqual([`${place} verify.party-no-entry`]);
		expect(
			signed((statement) => {
				statement.linkId = `lnk_${"x".repeat(20)}`;
			}),
		).toEqual([`${place} verify.party-other-link`]);
		expect(
			signed((statement) => {
				statement.signature = "1".repeat(128);
			}),
		).toEqual([`${place} verify.party-false`]);
		expect(
			signed((statement) => {
				statement.publicKey = `04${"1".repeat(128)}`;
			}),
		).toEqual([`${place} verify.party-false`]);
		const shop = orderLog();
		counterSign(shop, 2);
		expect(told("party-signature", written(shop.receipt(RECORD))), "sealed by the shop's account").toEqual([
			`${place} verify.party-other-link`,
		]);
	});
	it("takes both halves of the range of s, as WebCrypto leaves it (independent signatures by node:crypto)", () => {
		for (let count = 0; count < 8; count += 1) {
			expect(told("party-signature", written(orderLog().receipt(RECORD)))).toEqual(["passed verify.party-passed"]);
		}
	});
});

describe("exhibits", () => {
	const file = (bytes: Buffer) => ({ name: "photo.png", sha256: hexHash(bytes) });
	it("are found by their fingerprint, or not at all", () => {
		expect(told("exhibits", whole)).toEqual(["not-possible verify.exhibits-none"]);
		expect(told("exhibits", whole, { files: [file(PHOTO)] })).toEqual(["passed verify.exhibits-passed"]);
		expect(told("exhibits", whole, { files: [file(PHOTO), file(Buffer.from("x"))] })).toEqual([
			"failed verify.exhibits-unnamed",
		]);
	});
	it("are hashed piece by piece", () => {
		const hash = runningHash();
		const bytes = Buffer.alloc(1_000_003, 7);
		for (let at = 0; at < bytes.length; at += 65_537) hash.update(bytes.subarray(at, at + 65_537));
		expect(hash.hex()).toBe(createHash("sha256").update(bytes).digest("hex"));
	});
});

describe("a receipt of the first form", () => {
	const [opened, ...rest] = log.receipt(RECORD).entries;
	const first = {
		$format: "handover-risk/receipt/1",
		about: RECORD,
		log: "not yet in a signed log",
		statements: rest
			.filter(({ statement }) => statement !== undefined)
			.map(({ entry, openings, statement }) => {
				const data = Buffer.from(entry, "base64");
				const { by, index, kind, statementSha256, subject, time } = JSON.parse(data.toString());
				const leafSha256 = createHash("sha256").update(Buffer.of(0)).update(data).digest("hex");
				return {
					entry,
					index,
					kind,
					leafSha256,
					openings,
					sealedAt: time,
					sealedBy: by,
					statement,
					statementSha256,
					subject,
				};
			}),
	};
	it("is verified as far as it goes: what needs the log is not possible, and says why", () => {
		expect(opened).toBeDefined();
		const { outcome, checks, entries } = verifyReceipt(written(first), { keys: [key.publicKey] });
		expect(outcome).toBe("verified");
		expect(entries.length).toBe(3);
		const impossible = checks.filter((finding) => finding.outcome === "not-possible").map(({ id }) => id);
		expect(impossible).toEqual([
			"inclusion",
			"checkpoint-signature",
			"expected-key",
			"earlier-checkpoints",
			"independent-time",
			"exhibits",
		]);
	});
	it("is refused at every change of one byte", () => {
		const bytes = written(first);
		for (let at = 0; at < bytes.length; at += 1) {
			const altered = Buffer.from(bytes);
			altered[at] = (altered[at] ?? 0) ^ (1 << (at % 8));
			expect(verifyReceipt(altered).outcome, `byte ${at}`).toBe("not-verified");
		}
	}, 60_000);
});

describe("sentences", () => {
	it("of every finding stand in the texts, and their values fill them", () => {
		const folder = new URL("../../../src/records/verify", import.meta.url).pathname;
		const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));
		const keys = files.flatMap((file) => readFileSync(`${folder}/${file}`, "utf8").match(/"verify\.[\w.-]+"/g) ?? []);
		expect(keys.length).toBeGreaterThan(60);
		expect(keys.map((quoted) => quoted.slice(1, -1)).filter((sentence) => !isTextKey(sentence))).toEqual([]);
		for (const { why } of verifyReceipt(whole).checks) {
			if (why !== undefined && isTextKey(why.sentence)) expect(say(why.sentence, why.values)).not.toContain("{");
		}
	});
});
