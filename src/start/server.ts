/** `npm start`: serves the user's own data until it is told to stop. */
import { makeSetUpLink } from "../operations/access/set-up.ts";
import { startService } from "./service.ts";
import { readSettings } from "./settings.ts";
import { stopOnSignals } from "./shutdown.ts";

try {
	const settings = readSettings(process.env);
	const service = await startService(settings);
	stopOnSignals(() => service.stop());
	console.log(`handover-risk serves ${settings.publicUrl}, data in ${settings.dataDir}`);
	const setUpLink = await makeSetUpLink(service.deps);
	if (setUpLink !== null) console.log(`Set up your shop with this link, valid once:\n  ${setUpLink}`);
} catch (error) {
	console.error(`handover-risk did not start: ${(error as Error).message}`);
	process.exitCode = 1;
}
