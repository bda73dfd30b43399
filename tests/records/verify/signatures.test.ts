/** Signatures of checkpoints against RFC 8032, a published key, OpenSSL, and an independent published verifier. */
import { execFileSync } from "node:child_process";
import { createPublicKey } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ed25519 } from "@noble/curves/ed25519.js";
import { describe, expect, it } from "vitest";
import { badSignatures } from "../../../src/records/verify/bad-signatures.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";
import { isSignedBy, type Note, noteKey, readNote } from "../../../src/records/verify/signed-note.ts";
import { orderLog, RECORD, TestLog, testKey, written } from "./independent-maker.ts";

/** RFC 8032, section 7.1, tests 1 to 3: seed, public key, message, signature. */
const RFC_8032 = [
	[
		"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
		"d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
		"",
		"e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
	],
	[
		"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
		"3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
		"72",
		"92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
	],
	[
		"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
		"fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
		"af82",
		"6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
	],
] as const;
const bytes = (hex: string) => Buffer.from(hex, "hex");

describe("Ed25519", () => {
	it.each(RFC_8032)("holds for RFC 8032's seed %s", (seed, publicKey, message, signature) => {
		expect(testKey(bytes(seed)).publicKey, "the test's own maker of keys").toBe(publicKey);
		const verify = (signed: Buffer) => ed25519.verify(bytes(signature), signed, bytes(publicKey), { zip215: false });
		expect(verify(bytes(message))).toBe(true);
		expect(verify(Buffer.concat([bytes(message), Buffer.of(0)]))).toBe(false);
	});
	it("refuses a signature whose scalar is not the least one (RFC 8032, section 5.1.7)", () => {
		const order = 2n ** 252n + 27742317777372353535851937790883648493n;
		const [, publicKey, message, signature] = RFC_8032[1];
		const scalar = BigInt(`0x${bytes(signature).subarray(32).reverse().toString("hex")}`) + order;
		const grown = bytes(scalar.toString(16).padStart(64, "0")).reverse();
		const bent = Buffer.concat([bytes(signature).subarray(0, 32), grown]);
		expect(ed25519.verify(bent, bytes(message), bytes(publicKey), { zip215: false })).toBe(false);
	});
});

describe("key hashes", () => {
	it("are those of signed notes: the verifier key that the Go checksum database publishes", () => {
		const published = /^(.+)\+([0-9a-f]{8})\+(.+)$/.exec(
			"sum.golang.org+033de0ae+Ac4zctda0e5eza+HJyk9SxEdh+s3Ux18htTTAD8OuAn8",
		);
		const [, name = "", id, key = ""] = published ?? [];
		const raw = Buffer.from(key, "base64");
		expect(raw[0], "Ed25519").toBe(1);
		expect(noteKey(name, raw.subarray(1).toString("hex")).keyId).toBe(id);
	});
});

describe("a checkpoint", () => {
	const log = orderLog();
	const text = log.note();
	const [key] = log.keys;
	if (key === undefined) throw new Error("no key");
	const known = noteKey(log.origin, key.publicKey);
	const refusal = (note: string) => {
		try {
			return badSignatures(readNote(note, "/checkpoint"), [known]).map((bad) => bad.why?.sentence);
		} catch (error) {
			if (error instanceof Unreadable) return [error.details.why?.sentence];
			throw error;
		}
	};

	it("is signed by its key and no other", () => {
		const note = readNote(text, "");
		expect(refusal(text)).toEqual([]);
		const [signature] = note.signatures;
		expect(signature && isSignedBy(note, signature, known)).toBe(true);
		expect(badSignatures(note, [noteKey(log.origin, testKey().publicKey)])[0]?.why?.sentence).toBe(
			"verify.signature-unknown-key",
		);
	});
	it("is refused with any other size, root or origin, and with any broken line", () => {
		const lines = text.split("\n");
		const bent = (line: number, by: (old: string) => string) =>
			refusal(lines.map((old, index) => (index === line ? by(old) : old)).join("\n"));
		expect(bent(0, (old) => `${old}x`)).toEqual(["verify.signature-false"]);
		expect(bent(1, () => "8")).toEqual(["verify.signature-false"]);
		expect(bent(1, (old) => `0${old}`)).toEqual(["verify.note-line"]);
		expect(bent(2, () => Buffer.alloc(32).toString("base64"))).toEqual(["verify.signature-false"]);
		expect(bent(2, (old) => old.slice(0, -1))).toEqual(["verify.note-line"]);
		expect(bent(3, () => "x")).toEqual(["verify.note-line"]);
		expect(bent(4, (old) => old.replace("—", "-"))).toEqual(["verify.note-line"]);
		expect(bent(4, (old) => `${old} x`)).toEqual(["verify.note-line"]);
		expect(refusal(text.slice(0, -1))).toEqual(["verify.note-line"]);
		expect(refusal(`${text}\n`)).toEqual(["verify.note-line"]);
		expect(refusal("")).toEqual(["verify.note-line"]);
	});
	it("agrees with `openssl pkeyutl -verify -rawin`, also where it was altered", () => {
		const folder = mkdtempSync(join(tmpdir(), "handover-risk-openssl-"));
		const agrees = (note: Note) => {
			writeFileSync(join(folder, "text"), note.text);
			writeFileSync(join(folder, "sig"), note.signatures[0]?.signature ?? "");
			writeFileSync(join(folder, "key.pem"), key.pem);
			const files = ["-inkey", "key.pem", "-sigfile", "sig", "-in", "text"];
			try {
				execFileSync("openssl", ["pkeyutl", "-verify", "-rawin", "-pubin", ...files], { cwd: folder, stdio: "pipe" });
				return true;
			} catch {
				return false;
			}
		};
		try {
			expect(agrees(readNote(text, ""))).toBe(true);
			expect(agrees(readNote(text.replace("\n7\n", "\n8\n"), ""))).toBe(false);
		} finally {
			rmSync(folder, { recursive: true });
		}
	});
	it("and the proofs of its entries agree with an independent published verifier (npm: @sigstore/verify)", () => {
		const require = createRequire(import.meta.url);
		const { verifyCheckpoint } = require("@sigstore/verify/dist/tlog/checkpoint.js");
		const { verifyMerkleInclusion } = require("@sigstore/verify/dist/tlog/merkle.js");
		const authority = {
			logID: bytes(known.keyId),
			publicKey: createPublicKey(key.pem),
			baseURL: log.origin,
		};
		const accepts = (note: string, entry: Buffer, index: number, proof: readonly string[]) => {
			const inclusionProof = { checkpoint: { envelope: note }, logIndex: String(index), hashes: proof.map(bytes) };
			try {
				const checkpoint = verifyCheckpoint({ inclusionProof }, [authority]);
				verifyMerkleInclusion({ inclusionProof, canonicalizedBody: entry }, checkpoint);
				return true;
			} catch {
				return false;
			}
		};
		const receipt = log.receipt(RECORD);
		for (const { entry, proof } of receipt.entries) {
			const data = Buffer.from(entry, "base64");
			const { index } = JSON.parse(data.toString());
			expect(accepts(receipt.checkpoint, data, index, proof)).toBe(true);
			expect(accepts(receipt.checkpoint, Buffer.concat([data, Buffer.of(0)]), index, proof)).toBe(false);
			expect(accepts(receipt.checkpoint.replace("\n7\n", "\n8\n"), data, index, proof)).toBe(false);
		}
	});
	it("that changes the key is signed by both, the old one first", () => {
		const rotating = orderLog(new TestLog());
		rotating.keys.push(testKey());
		const note = readNote(rotating.note(rotating.entries.length, rotating.keys), "");
		const [old, next] = rotating.keys.map((one) => noteKey(rotating.origin, one.publicKey));
		if (old === undefined || next === undefined) throw new Error("two keys");
		expect(badSignatures(note, [old, next])).toEqual([]);
		expect(badSignatures(note, [next]).map((bad) => bad.why?.sentence)).toEqual(["verify.signature-unknown-key"]);
		expect(written(note.size).toString()).toBe("7");
	});
});
