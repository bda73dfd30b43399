/**
 * `npm run verify -- FILE [--key HEX-or-FILE]… [--printed 'ENTRIES ROOT']… [--earlier FILE]… [--file FILE]… | --help`: verifies a receipt or a dossier without the service.
 * Ends with 0 where it is verified, 1 where it is not, 2 where it cannot be read or the command is not understood.
 */
import { createReadStream } from "node:fs";
import { open, readFile } from "node:fs/promises";
import { basename } from "node:path";
import { parseArgs } from "node:util";
import { outcomeWords } from "../pages/verify/outcome-words.ts";
import { verifyFile } from "../records/verify/dossier/verify-file.ts";
import type { Finding } from "../records/verify/finding.ts";
import type { GivenFile, HashedFile } from "../records/verify/given.ts";
import { runningHash } from "../records/verify/hashes.ts";
import type { Verification } from "../records/verify/verify-receipt.ts";
import { say, type TextKey } from "../texts/say.ts";
import { keyText, sourceOn } from "./given-files.ts";

try {
	process.exitCode = await verifyByArguments(process.argv.slice(2));
} catch (error) {
	console.error(`${(error as Error).message}\n${say("verify.usage")}`);
	process.exitCode = 2;
}

async function verifyByArguments(args: readonly string[]): Promise<number> {
	const list = { type: "string", multiple: true, default: [] as string[] } as const;
	const { values, positionals } = parseArgs({
		args: [...args],
		options: { key: list, printed: list, earlier: list, file: list, help: { type: "boolean", short: "h" } },
		allowPositionals: true,
	});
	if (values.help === true) {
		console.log(`${say("verify.usage")}\n${say("verify.usage-text")}`);
		return 0;
	}
	const [path, ...more] = positionals;
	if (path === undefined || more.length > 0) throw new Error(say("verify.one-file"));
	const given = {
		keys: await Promise.all(values.key.map(keyText)),
		printed: values.printed,
		earlier: await Promise.all(values.earlier.map(readGiven)),
		files: await Promise.all(values.file.map(hashFile)),
	};
	const file = await open(path);
	try {
		const verification = await verifyFile(await sourceOn(file), given, () => readFile(path));
		console.log(report(verification, basename(path), (await hashFile(path)).sha256));
		return verification.outcome === "verified" ? 0 : 1;
	} finally {
		await file.close();
	}
}

async function readGiven(path: string): Promise<GivenFile> {
	return { name: basename(path), bytes: await readFile(path) };
}

async function hashFile(path: string): Promise<HashedFile> {
	const hash = runningHash();
	for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
	return { name: basename(path), sha256: hash.hex() };
}

function report(verification: Verification, name: string, sha256: string): string {
	const { outcome, checks, about, entries } = verification;
	return [
		`${say(`verify.${outcome}`)}: ${name}`,
		`${say("verify.of-file-sha256")}: ${sha256}`,
		...(about === null ? [] : [`${say("verify.about")}: ${about}`]),
		"",
		...outcomeWords(verification),
		"",
		...checks.flatMap(linesOf),
		"",
		...entries.map(({ index, kind, time, fingerprint }) =>
			[String(index).padStart(6), time, kind.padEnd(18), fingerprint ?? "–"].join("  "),
		),
	].join("\n");
}

function linesOf({ id, outcome, why, ...places }: Finding): string[] {
	const words = why === undefined ? "" : say(why.sentence as TextKey, why.values);
	return [
		`${say(`verify.${outcome}`).padEnd(14)}${id.padEnd(22)}${words}`,
		...(["where", "expected", "found"] as const).flatMap((name) =>
			places[name] === undefined
				? []
				: [`${" ".repeat(36)}${say(`verify.${name}`)}: ${places[name].replaceAll("\n", `\n${" ".repeat(38)}`)}`],
		),
	];
}
