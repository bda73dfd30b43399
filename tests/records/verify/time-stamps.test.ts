/**
 * Time stamps in receipts: tokens made by OpenSSL (`openssl ts`, `openssl cms`), RSA and elliptic curves, accepted by
 * `openssl ts -verify` and here; altered ones.
 */
import { execFileSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stampRequest } from "../../../src/operations/time-stamps/stamp-request.ts";
import { Unreadable } from "../../../src/records/verify/finding.ts";
import { readTimeStamp } from "../../../src/records/verify/time-stamp-token.ts";
import { verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { makeTestAuthority, type TestAuthority } from "../../setup/time-authority.ts";
import { orderLog, RECORD, written } from "./independent-maker.ts";

let authority: TestAuthority;
beforeAll(() => {
	authority = makeTestAuthority();
});
afterAll(() => authority.remove());

const log = orderLog();
const note = (size: number) => Buffer.from(log.note(size));
const question = (data: Buffer) => stampRequest(createHash("sha256").update(data).digest(), randomBytes(8)).der;
const openssl = (command: string) =>
	execFileSync("openssl", command.split(" "), { cwd: authority.folder, stdio: ["ignore", "pipe", "pipe"] });
/** The authority's token over data. */
const tokenOver = (data: Buffer): Buffer => {
	authority.reply(question(data));
	openssl("ts -reply -config tsa.cnf -section own -in reply.tsr -token_out -out token.der");
	return readFileSync(join(authority.folder, "token.der"));
};
const receiptWith = (token: Buffer, size = 3) => written(log.receipt(RECORD, { timeStamps: [{ size, token }] }));
const told = (bytes: Uint8Array) =>
	verifyReceipt(bytes)
		.checks.filter(({ id }) => id === "independent-time")
		.map(({ outcome, why }) => `${outcome} ${why?.sentence}`);

describe("a time stamp", () => {
	it("over the checkpoint is taken, here and by `openssl ts -verify`", () => {
		const token = tokenOver(note(3));
		expect(authority.opensslVerify(token, note(3))).toMatch(/OK/);
		const verification = verifyReceipt(receiptWith(token));
		expect(verification.outcome).toBe("verified");
		expect(told(receiptWith(token))).toEqual(["passed verify.time-passed"]);
		const { why } = verification.checks.find(({ id }) => id === "independent-time") ?? {};
		expect(Date.parse(why?.values.time ?? "")).toBeGreaterThan(Date.now() - 60_000);
		expect(why?.values.size).toBe("3");
	});
	it("over something else is refused, and so is noise", () => {
		expect(told(receiptWith(tokenOver(note(4))))).toEqual(["failed verify.time-other"]);
		expect(told(receiptWith(Buffer.from("noise")))).toEqual(["failed verify.time-unreadable"]);
		expect(told(receiptWith(Buffer.alloc(0)))).toEqual(["failed verify.time-unreadable"]);
	});
	it.each(["prime256v1", "secp384r1"])("signed on the curve %s is taken", (curve) => {
		openssl(
			`req -x509 -config ca.cnf -newkey ec -pkeyopt ec_paramgen_curve:${curve} -nodes -keyout ${curve}.key -out ${curve}.pem -days 30 -subj /CN=invented-${curve}`,
		);
		authority.forge(question(note(3)), curve);
		const token = readFileSync(join(authority.folder, "forged.der"));
		expect(told(receiptWith(token))).toEqual(["passed verify.time-passed"]);
		const altered = Buffer.from(token);
		altered[altered.length - 3] = (altered[altered.length - 3] ?? 0) ^ 1;
		expect(told(receiptWith(altered))).toEqual(["failed verify.time-false"]);
	});
	it("without the signer's certificate is not possible to check here, and says so", () => {
		authority.forge(question(note(3)), "signer", "-cades -nocerts");
		expect(told(receiptWith(readFileSync(join(authority.folder, "forged.der"))))).toEqual([
			"not-possible verify.time-unsigned",
		]);
	});
	it("is refused at every truncation", () => {
		const token = tokenOver(note(3));
		for (let length = 0; length < token.length; length += 7) {
			expect(told(receiptWith(token.subarray(0, length)))).toEqual(["failed verify.time-unreadable"]);
		}
	});
	it("is refused, or not taken, at every change of one byte but in the name of an issuer who is not there", () => {
		const token = tokenOver(note(3));
		const imprint = createHash("sha256").update(note(3)).digest("hex");
		const isTaken = (bytes: Buffer) => {
			try {
				const stamp = readTimeStamp(bytes);
				return stamp.signature === "valid" && stamp.imprintSha256 === imprint;
			} catch (error) {
				if (error instanceof Unreadable) return false;
				throw error;
			}
		};
		expect(isTaken(token)).toBe(true);
		const alteredAt = (at: number) => {
			const altered = Buffer.from(token);
			altered[at] = (altered[at] ?? 0) ^ (1 << (at % 8));
			return altered;
		};
		const taken = [...token.keys()].filter((at) => isTaken(alteredAt(at)));
		// Who issued the outermost certificate is bound by nothing in a token, and OpenSSL takes that too.
		const [first = 0, last = 0] = [taken[0], taken.at(-1)];
		expect(token.subarray(first, last + 1).toString("latin1")).toMatch(/^.{1,20}invented-test-authorit.$/s);
		expect(authority.opensslVerify(alteredAt(last - 3), note(3))).toMatch(/OK/);
	}, 90_000);
});
