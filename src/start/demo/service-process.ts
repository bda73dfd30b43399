/** Runs `server.js` as a process of its own, as `npm start` does, and reads what it prints. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { createInterface } from "node:readline";

export interface ServiceProcess {
	readonly pid: number;
	readonly url: string;
	/** Printed while there is no account. */
	readonly setUpLink: string | null;
	/** Resolves with the exit code, null after a kill. */
	readonly ended: Promise<number | null>;
	/** Asks the service to drain and stop, and waits until it has. */
	stop(): Promise<void>;
}

export interface ServiceProcessOptions {
	/** The built `server.js`. */
	readonly program: string;
	/** Its whole environment. */
	readonly variables: Readonly<Record<string, string | undefined>>;
	/** Gets a process group of its own, as in a terminal. */
	readonly ownGroup?: boolean;
	/** Gets what the service prints while it runs, line by line: its log, and what it complains of. */
	readonly log?: (line: string) => void;
}

/**
 * Starts the service and waits until it serves.
 * @throws Error with what it printed, when it ends before that
 */
export async function startServiceProcess(options: ServiceProcessOptions): Promise<ServiceProcess> {
	const child = spawn(process.execPath, [options.program], {
		env: options.variables,
		stdio: ["ignore", "pipe", "pipe"],
		detached: options.ownGroup ?? false,
	});
	const ended = once(child, "exit").then(([code]) => code as number | null);
	const complaints: string[] = [];
	createInterface({ input: child.stderr }).on("line", (line) => {
		complaints.push(line);
		options.log?.(line);
	});
	let setUpLink: string | null = null;
	const lines = createInterface({ input: child.stdout });
	const url = await new Promise<string>((resolve, reject) => {
		lines.on("line", (line) => {
			setUpLink = /^\s+(https?:\S+\/set-up\/\S+)$/.exec(line)?.[1] ?? setUpLink;
			const serves = /^handover-risk serves (\S+), /.exec(line)?.[1];
			if (serves !== undefined) resolve(serves);
			if (line.startsWith("{")) options.log?.(line);
		});
		child.once("error", reject);
		child.once("close", () => reject(new Error(complaints.join("\n") || "the service ended without a word")));
	});
	if (child.pid === undefined) throw new Error("a process that printed has a number");
	return {
		pid: child.pid,
		url,
		setUpLink,
		ended,
		async stop() {
			child.kill("SIGTERM");
			await ended;
		},
	};
}

/** A port that is free on 127.0.0.1 now. */
export async function freePort(): Promise<number> {
	const probe = createServer().listen(0, "127.0.0.1");
	await once(probe, "listening");
	const address = probe.address();
	probe.close();
	await once(probe, "close");
	if (address === null || typeof address === "string") throw new Error("no free port");
	return address.port;
}
