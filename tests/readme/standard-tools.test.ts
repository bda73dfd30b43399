/** The README's commands for checking a receipt with standard tools, run as they stand there. */
import { spawnSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { stampRequest } from "../../src/operations/time-stamps/stamp-request.ts";
import { hexHash, orderLog, RECORD, written } from "../records/verify/independent-maker.ts";
import { makeTestAuthority, type TestAuthority } from "../setup/time-authority.ts";

const README = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const [, commands = ""] = /## How to check a receipt without us[\s\S]*?```sh\n([\s\S]*?)```/.exec(README) ?? [];
const log = orderLog();
let authority: TestAuthority;
let folder: string;
beforeAll(() => {
	authority = makeTestAuthority();
	folder = mkdtempSync(join(tmpdir(), "handover-risk-readme-"));
});
afterAll(() => {
	authority.remove();
	rmSync(folder, { recursive: true });
});

const run = (receipt: Buffer) => {
	writeFileSync(join(folder, "receipt.json"), receipt);
	copyFileSync(authority.caPath, join(folder, "authority.pem"));
	const { stdout, stderr } = spawnSync("bash", ["-c", commands], { cwd: folder, encoding: "utf8" });
	return stdout + stderr;
};

it("accept a good receipt: signature, fingerprint, time stamp", () => {
	const stamped = Buffer.from(log.note(3));
	authority.reply(stampRequest(createHash("sha256").update(stamped).digest(), randomBytes(8)).der);
	const openssl = ["ts", "-reply", "-config", "tsa.cnf", "-section", "own", "-in", "reply.tsr", "-token_out"];
	spawnSync("openssl", [...openssl, "-out", "token.der"], { cwd: authority.folder });
	const token = readFileSync(join(authority.folder, "token.der"));
	const said = run(written(log.receipt(RECORD, { timeStamps: [{ size: 3, token }] })));
	expect(said).toContain("Signature Verified Successfully");
	expect(said).toMatch(/Verification: OK/);
	const statement = log.entries.find(({ sealed }) => sealed !== null)?.sealed ?? Buffer.alloc(0);
	const fingerprint = hexHash(statement);
	expect(said).toContain(`${fingerprint}  statement`);
	expect(said).toContain(`"statementSha256":"${fingerprint}"`);
	// The log grows, and its size stands in what is signed.
	const forged = run(written({ ...log.receipt(RECORD), checkpoint: log.note().replace("\n7\n", "\n8\n") }));
	expect(forged).toMatch(/Signature Verification Failure/);
});
