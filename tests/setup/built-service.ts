/** The built service as a process of its own, in a data folder that the test owns. Needs `npm run build` before. */
import { existsSync } from "node:fs";
import {
	freePort,
	type ServiceProcess,
	type ServiceProcessOptions,
	startServiceProcess,
} from "../../src/start/demo/service-process.ts";

const PROGRAM = new URL("../../dist/start/server.js", import.meta.url).pathname;

export async function startBuiltService(
	dataFolder: string,
	options: Pick<ServiceProcessOptions, "ownGroup" | "log"> & { readonly variables?: Record<string, string> } = {},
): Promise<ServiceProcess> {
	if (!existsSync(PROGRAM)) throw new Error("the service is not built: npm run build");
	return startServiceProcess({
		...options,
		program: PROGRAM,
		variables: {
			PATH: process.env.PATH,
			DATA_DIR: dataFolder,
			PORT: String(await freePort()),
			LOG_LEVEL: "warn",
			...options.variables,
		},
	});
}
