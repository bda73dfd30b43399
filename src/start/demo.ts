/** `npm run demo` (`-- --year` adds 400 invented orders to learn from): a service of its own with new data, played from end to end over HTTP, then left running to look at. */
import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { playScenarios } from "./demo/play-scenarios.ts";
import { freePort, type ServiceProcess, startServiceProcess } from "./demo/service-process.ts";

/** Our choice. */
const PARENT_LOOKED_AT_MS = 1000;

const { values: options } = parseArgs({
	options: { exit: { type: "boolean" }, out: { type: "string" }, year: { type: "boolean" } },
});
const dataFolder = await mkdtemp(join(tmpdir(), "handover-risk-demo-"));
if ((process.env.DATA_DIR ?? "") !== "") {
	console.log(`DATA_DIR is left alone: the demo has a folder of its own, ${dataFolder}, and removes it at its end`);
}
const starting = startService();
// Ctrl-C reaches the service too; this process then only waits for its end and clears away.
for (const signal of ["SIGINT", "SIGTERM"] as const) {
	process.on(signal, () => {
		stop();
	});
}
// npm that is killed cannot pass it on: a demo that npm started ends when its parent has, so that nothing is left running.
const parent = process.ppid;
if (process.env.npm_lifecycle_event !== undefined) {
	setInterval(() => {
		if (process.ppid !== parent) stop();
	}, PARENT_LOOKED_AT_MS).unref();
}

try {
	const outFolder = options.out === undefined ? null : resolve(options.out);
	if (outFolder !== null) await mkdir(outFolder, { recursive: true });
	const service = await starting;
	if (service.setUpLink === null) throw new Error("a new service printed no set-up link");
	for (const link of await playScenarios({
		url: service.url,
		setUpLink: service.setUpLink,
		outFolder,
		withYear: options.year === true,
	})) {
		console.log(`${link.title}\n  ${link.url}${link.secret === undefined ? "" : `   (${link.secret})`}`);
	}
	if (outFolder !== null) console.log(`What the parties get lies in ${outFolder}`);
	if (options.exit === true) await service.stop();
	else console.log("The demo keeps serving; Ctrl-C stops it and removes its data");
	await service.ended;
} catch (error) {
	console.error(`the demo failed: ${(error as Error).message}`);
	process.exitCode = 1;
	await starting.then(
		(service) => service.stop(),
		() => {},
	);
} finally {
	await rm(dataFolder, { recursive: true, force: true });
}

function stop(): void {
	starting.then((service) => service.stop()).catch(() => {});
}

async function startService(): Promise<ServiceProcess> {
	return startServiceProcess({
		program: fileURLToPath(new URL("server.js", import.meta.url)),
		variables: {
			...process.env,
			DATA_DIR: dataFolder,
			KEY_DIR: "",
			PORT: process.env.PORT ?? String(await freePort()),
			LOG_LEVEL: process.env.LOG_LEVEL ?? "warn",
			DATABASE_URL: "",
			DATABASE_MIGRATION_URL: "",
			// Nobody is written to: the people of the demo are invented.
			SMTP_URL: "",
			MAIL_FROM: "",
		},
		log: (line) => console.error(line),
	});
}
