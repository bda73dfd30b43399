/** `npm run verify`: the built command, its list and its exit codes. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { orderLog, PHOTO, RECORD, testKey, written } from "../records/verify/independent-maker.ts";

const PROGRAM = new URL("../../dist/start/verify.js", import.meta.url).pathname;
const log = orderLog();
let folder: string;
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "handover-risk-verify-"));
	const receipt = written(log.receipt(RECORD));
	writeFileSync(join(folder, "receipt.json"), receipt);
	writeFileSync(join(folder, "cut.json"), receipt.subarray(0, -1));
	writeFileSync(join(folder, "key.pem"), log.keys[0]?.pem ?? "");
	writeFileSync(join(folder, "photo.png"), PHOTO);
	writeFileSync(join(folder, "checkpoint.txt"), log.note(4));
	const proof = { size: log.entries.length, rootSha256: null, proof: log.consistency(4) };
	writeFileSync(join(folder, "proof.json"), JSON.stringify(proof));
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...args: readonly string[]) => {
	const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], { cwd: folder, encoding: "utf8" });
	return { status, stdout, stderr };
};

it("ends with 0 where the receipt is verified, and tells each check", () => {
	const given = ["--key", "key.pem", "--earlier", "checkpoint.txt", "--earlier", "proof.json", "--file", "photo.png"];
	const { status, stdout, stderr } = run("receipt.json", ...given);
	expect(stderr).toBe("");
	expect(status).toBe(0);
	expect(stdout).toMatch(/^Verified: receipt\.json/);
	expect(stdout).toContain("Nothing in this receipt was changed since it was signed");
	for (const id of ["form", "inclusion", "expected-key", "earlier-checkpoints", "exhibits"]) {
		expect(stdout).toMatch(new RegExp(`^Passed +${id} `, "m"));
	}
});
it("ends with 1 where it is not, and says where", () => {
	const cut = run("cut.json");
	expect(cut.status).toBe(1);
	expect(cut.stdout).toMatch(/^Failed +form .*ends too early/m);
	expect(cut.stdout).toMatch(/Where: byte \d+/);
	expect(run("receipt.json", "--key", testKey().publicKey).status).toBe(1);
	expect(run("receipt.json", "--file", "key.pem").status).toBe(1);
});
it.each(["--help", "-h"])("ends with 0 and tells its usage where it is asked: %s", (asked) => {
	const { status, stdout, stderr } = run(asked);
	expect([status, stderr]).toEqual([0, ""]);
	expect(stdout).toMatch(/^npm run verify -- FILE/);
	for (const option of ["--key", "--printed", "--earlier", "--file"]) expect(stdout).toContain(`\n  ${option} `);
});
it("ends with 2 where nothing can be read or the command is not understood", () => {
	for (const args of [
		["missing.json"],
		[],
		["receipt.json", "cut.json"],
		["receipt.json", "--key", "missing"],
		["--x"],
	]) {
		const { status, stderr } = run(...args);
		expect(status, args.join(" ")).toBe(2);
		expect(stderr).toContain("npm run verify -- FILE");
	}
});
