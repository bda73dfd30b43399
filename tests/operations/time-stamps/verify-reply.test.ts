/**
 * Questions and answers of RFC 3161 against OpenSSL (`openssl ts`), which makes the answers and must accept the tokens
 * that we accept. Refusals follow RFC 3161, 2.3 and 2.4.2, and RFC 5816.
 */

import { execFileSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stampRequest } from "../../../src/operations/time-stamps/stamp-request.ts";
import { trustAnchors } from "../../../src/operations/time-stamps/trust-anchors.ts";
import { verifyReply } from "../../../src/operations/time-stamps/verify-reply.ts";
import { makeTestAuthority, type TestAuthority } from "../../setup/time-authority.ts";

const NOTE = Buffer.from("handover-risk/0123456789abcdefghjk\n1\nAAAA\n\n— not a real signature\n", "utf8");

let authority: TestAuthority;
let foreign: TestAuthority;
beforeAll(() => {
	authority = makeTestAuthority();
	foreign = makeTestAuthority("foreign");
	authority.addSigner("expired", { from: "20200101000000Z", to: "20210101000000Z" });
	authority.addSigner("not-yet", { from: "20390101000000Z" });
	authority.addSigner("not-critical", { usage: "timeStamping" });
	authority.addSigner("also-mail", { usage: "critical,timeStamping,emailProtection" });
	authority.addSigner("server", { usage: "critical,serverAuth" });
	authority.addSigner("no-usage", { usage: "" });
});
afterAll(() => {
	authority.remove();
	foreign.remove();
});

const ask = (over: Uint8Array = NOTE) => stampRequest(createHash("sha256").update(over).digest(), randomBytes(8));
const check = (reply: Uint8Array, request = ask(), anchors = authority.caPem) =>
	verifyReply(reply, request, NOTE, trustAnchors(anchors));

/** The question with some bytes put in the place of others of the same length. */
function altered(question: Uint8Array, from: Uint8Array, to: Uint8Array): Buffer {
	const bytes = Buffer.from(question);
	const place = bytes.indexOf(from);
	if (place < 0) throw new Error("the question does not hold these bytes");
	bytes.set(to, place);
	return bytes;
}

describe("a question", () => {
	it("says to OpenSSL what was asked", () => {
		const request = ask();
		writeFileSync(join(authority.folder, "ours.tsq"), request.der);
		const text = execFileSync("openssl", ["ts", "-query", "-in", join(authority.folder, "ours.tsq"), "-text"], {
			encoding: "utf8",
		});
		expect(text).toContain("Hash Algorithm: sha256");
		expect(text.toLowerCase()).toContain(`nonce: 0x${Buffer.from(request.nonce).toString("hex")}`);
		expect(text).toContain("Certificate required: yes");
		expect(text).toContain("Policy OID: unspecified");
	});

	it("has a positive nonce in its shortest form, whatever the random bytes are", () => {
		for (const byte of [0x00, 0x7f, 0x80, 0xff]) {
			const { nonce } = stampRequest(new Uint8Array(32), new Uint8Array(8).fill(byte));
			expect(nonce[0]).toBeGreaterThanOrEqual(0x40);
			expect(nonce[0]).toBeLessThan(0x80);
		}
	});
});

describe("an answer", () => {
	it("by OpenSSL is taken, its token kept byte for byte and accepted by openssl ts -verify", async () => {
		const request = ask();
		const reply = authority.reply(request.der);
		const stamp = await check(reply, request);
		expect(reply.subarray(-stamp.token.length).equals(stamp.token)).toBe(true);
		expect(stamp.policy).toBe("1.3.6.1.4.1.99999.1");
		// OpenSSL states whole seconds here.
		expect(Math.abs(stamp.genTime.getTime() - Date.now())).toBeLessThan(60_000);
		expect(authority.opensslVerify(stamp.token, NOTE)).toContain("Verification: OK");
		expect(() => authority.opensslVerify(stamp.token, Buffer.from("something else"))).toThrow();
	});

	it("made by openssl cms with the right signer is taken too, so that the refusals below are for what they name", async () => {
		const request = ask();
		const stamp = await check(authority.forge(request.der, "signer"), request);
		expect(authority.opensslVerify(stamp.token, NOTE)).toContain("Verification: OK");
	});

	it("to another question's nonce is refused", async () => {
		const request = ask();
		const other = altered(request.der, request.nonce, ask().nonce);
		await expect(check(authority.reply(other), request)).rejects.toMatchObject({ code: "wrong-nonce" });
	});

	it("without a nonce is refused", async () => {
		const request = ask();
		writeFileSync(join(authority.folder, "note"), NOTE);
		const without = execFileSync("openssl", ["ts", "-query", "-data", "note", "-sha256", "-cert", "-no_nonce"], {
			cwd: authority.folder,
		});
		await expect(check(authority.reply(without), request)).rejects.toMatchObject({ code: "wrong-nonce" });
	});

	it("over another imprint is refused", async () => {
		const request = ask();
		const other = altered(request.der, request.imprint, randomBytes(32));
		await expect(check(authority.reply(other), request)).rejects.toMatchObject({ code: "wrong-imprint" });
	});

	it("with a rejected status is refused", async () => {
		const request = ask();
		await expect(check(authority.reply(request.der, { digests: "sha512" }), request)).rejects.toMatchObject({
			code: "rejected",
			message: expect.stringContaining("status 2"),
		});
	});

	for (const signer of ["expired", "not-yet"]) {
		it(`of a signer whose certificate is ${signer} at the stated time is refused`, async () => {
			const request = ask();
			await expect(check(authority.forge(request.der, signer), request)).rejects.toMatchObject({ code: "untrusted" });
		});
	}

	for (const signer of ["not-critical", "also-mail", "server", "no-usage"]) {
		it(`of a signer with the wrong extended key usage is refused: ${signer}`, async () => {
			const request = ask();
			await expect(check(authority.forge(request.der, signer), request)).rejects.toMatchObject({
				code: "wrong-usage",
			});
		});
	}

	it("under a foreign authority is refused", async () => {
		const request = ask();
		await expect(check(foreign.reply(request.der), request)).rejects.toMatchObject({ code: "untrusted" });
		await expect(check(authority.reply(request.der), request, foreign.caPem)).rejects.toMatchObject({
			code: "untrusted",
		});
	});

	it("whose signature does not name its certificate, or that carries none, is refused", async () => {
		const request = ask();
		await expect(check(authority.forge(request.der, "signer", ""), request)).rejects.toMatchObject({
			code: "wrong-signer",
		});
		await expect(check(authority.forge(request.der, "signer", "-cades -nocerts"), request)).rejects.toMatchObject({
			code: "wrong-signer",
		});
	});

	it("with any altered byte of its stated time, signature or imprint is refused", async () => {
		const request = ask();
		const reply = authority.reply(request.der);
		const { token } = await check(reply, request);
		const time = reply.indexOf(Buffer.from("180f", "hex")) + 2;
		for (const place of [time + 3, reply.length - 5, reply.indexOf(request.imprint) + 7]) {
			const bytes = Buffer.from(reply);
			bytes[place] = (bytes[place] ?? 0) ^ 1;
			await expect(check(bytes, request), `byte ${place} of ${token.length}`).rejects.toMatchObject({
				name: "StampRefusal",
			});
		}
	});

	it("that is garbage, cut short or too long is refused as malformed", async () => {
		const request = ask();
		const reply = authority.reply(request.der);
		for (const bytes of [
			Buffer.alloc(0),
			Buffer.from("<html>not here</html>"),
			randomBytes(500),
			reply.subarray(0, -1),
			reply.subarray(0, 200),
			Buffer.concat([reply, Uint8Array.of(0)]),
			Buffer.from("30053003020100", "hex"),
		]) {
			await expect(check(bytes, request)).rejects.toMatchObject({ name: "StampRefusal", code: "malformed" });
		}
	});
});

it("a file of trust anchors without a certificate, or with a broken one, is refused", () => {
	expect(() => trustAnchors("nothing")).toThrow("holds no certificate");
	expect(() => trustAnchors("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----")).toThrow();
	expect(trustAnchors(authority.caPem + foreign.caPem)).toHaveLength(2);
});
