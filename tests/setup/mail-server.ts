/** Starts a mail server process for tests, and reads what it took with a parser that is not ours: Python's `email`. */
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { build } from "esbuild";

const SOURCE = new URL("mail-server-process.ts", import.meta.url).pathname;
const PARSER = new URL("parse-mail.py", import.meta.url).pathname;
const ARTEFACT = new URL(`../../.artefacts/mail-server-${process.pid}.js`, import.meta.url).pathname;

/** A mail as Python's parser reads it. */
export interface ReadMail {
	readonly from: string;
	readonly to: string;
	readonly subject: string;
	readonly messageId: string;
	/** Names of all headers, in order. */
	readonly headers: readonly string[];
	readonly text: string;
	readonly attachments: readonly { readonly name: string; readonly type: string; readonly base64: string }[];
	readonly defects: readonly string[];
}

export interface TakenMail extends ReadMail {
	readonly envelope: { readonly from: string; readonly to: readonly string[]; readonly secure: boolean };
}

export interface MailServerProcess {
	readonly url: string;
	readonly port: number;
	/** Says what to do with the next mails (`mail-server-process.ts`). */
	answer(how: object): void;
	/** Everything taken so far, by this and earlier processes of the folder. */
	taken(): TakenMail[];
	/** What of mails, and of the way in, came over the line, and how; mails that were taken or not. */
	heard(): string[];
	/** Forgets what was taken, and takes everything from here on. */
	clear(): void;
	stop(): Promise<void>;
	/** Starts again, on the same port. */
	start(): Promise<void>;
	remove(): Promise<void>;
}

export async function mailServer(
	options: {
		readonly user?: string;
		readonly pass?: string;
		readonly tlsFolder?: string;
		readonly fromStart?: boolean;
	} = {},
): Promise<MailServerProcess> {
	await build({
		entryPoints: [SOURCE],
		outfile: ARTEFACT,
		bundle: true,
		packages: "external",
		platform: "node",
		format: "esm",
		logLevel: "warning",
	});
	const folder = mkdtempSync(join(tmpdir(), "handover-mail-"));
	let round = 0;
	const answer = (how: object) => {
		round += 1;
		writeFileSync(join(folder, "how.json"), JSON.stringify({ ...how, round }));
	};
	answer({});
	const { user = "", pass = "", tlsFolder = "", fromStart = false } = options;
	const begin = async (port: number) => {
		const child = spawn(
			process.execPath,
			[ARTEFACT, folder, String(port), user, pass, tlsFolder, fromStart ? "start" : ""],
			{
				stdio: ["ignore", "pipe", "inherit"],
			},
		);
		const [line] = (await once(createInterface({ input: child.stdout }), "line")) as [string];
		return { child, port: Number(line.split(" ").at(-1)) };
	};
	let { child, port } = await begin(0);
	const stop = async () => {
		if (child.exitCode !== null || child.signalCode !== null) return;
		child.kill("SIGKILL");
		await once(child, "exit");
	};
	return {
		url: `smtp://127.0.0.1:${port}`,
		port,
		answer,
		taken() {
			const files = readdirSync(folder).filter((file) => file.endsWith(".eml"));
			const mails = readMails(files.map((file) => join(folder, file)));
			return files.map((file, place) => ({
				...(mails[place] as ReadMail),
				envelope: JSON.parse(readFileSync(join(folder, file.replace(".eml", ".json")), "utf8")),
			}));
		},
		heard() {
			const file = join(folder, "heard.txt");
			return existsSync(file) ? readFileSync(file, "utf8").trimEnd().split("\n") : [];
		},
		clear() {
			for (const file of readdirSync(folder)) rmSync(join(folder, file));
			answer({});
		},
		stop,
		async start() {
			({ child, port } = await begin(port));
		},
		async remove() {
			await stop();
			rmSync(folder, { recursive: true, force: true });
			rmSync(ARTEFACT, { force: true });
		},
	};
}

/** Mails as they went over the wire, as Python's parser reads them. */
export function readMailBytes(mails: readonly Uint8Array[]): ReadMail[] {
	const folder = mkdtempSync(join(tmpdir(), "handover-mails-"));
	try {
		const paths = [...mails.entries()].map(([place, bytes]) => {
			const path = join(folder, `${place}.eml`);
			writeFileSync(path, bytes);
			return path;
		});
		return readMails(paths);
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

function readMails(paths: readonly string[]): ReadMail[] {
	if (paths.length === 0) return [];
	return JSON.parse(execFileSync("python3", [PARSER, ...paths], { encoding: "utf8", maxBuffer: 64e6 }));
}
