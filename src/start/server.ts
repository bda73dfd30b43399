/** `npm start`: serves the user's own data until it is told to stop. */
import { makeSetUpLink } from "../operations/access/set-up.ts";
import { readSettings } from "./settings.ts";
import { stopOnSignals } from "./shutdown.ts";

try {
	const settings = readSettings(process.env);
	// The larger part of the program is loaded now: what is wrong with a setting was told before.
	const starting = import("./service.ts").then(({ startService }) => startService(settings));
	// From the first moment on: a signal during the start ends the service, and its database, once it is up.
	stopOnSignals(async () => (await starting).stop());
	const { deps } = await starting;
	const setUpLink = await makeSetUpLink(deps);
	if (setUpLink !== null) console.log(`Set up your shop with this link, valid once:\n  ${setUpLink}`);
	// Last, since the demo and the trials take it as the sign that the service is up.
	console.log(`handover-risk serves ${settings.publicUrl}, data in ${settings.dataDir}; Ctrl-C stops it`);
} catch (error) {
	console.error(`handover-risk did not start: ${(error as Error).message}`);
	process.exitCode = 1;
}
