/** `npm run change-log-key -- ACCOUNT`: gives the log a new key, while the service serves or stands still. */
import { parseArgs } from "node:util";
import { accountByName } from "../database/access.ts";
import { openPool } from "../database/pool.ts";
import { changeLogKey } from "../operations/log/change-key.ts";
import { withData } from "./backup/reach-data.ts";
import { makeLogKeys } from "./log-keys.ts";
import { readSettings } from "./settings.ts";

try {
	const { positionals } = parseArgs({ allowPositionals: true, options: {} });
	const [name, ...more] = positionals;
	if (name === undefined || more.length > 0) {
		throw new Error("name the account that does this: npm run change-log-key -- ACCOUNT");
	}
	await withData(readSettings(process.env), async ({ ownerUrl, keyFolder }) => {
		const database = openPool(ownerUrl, { maxConnections: 1 });
		try {
			const account = await accountByName(database, name);
			if (account === null) throw new Error(`there is no account ${JSON.stringify(name)}`);
			const key = await changeLogKey({ database, logKeys: makeLogKeys(keyFolder) }, account.id);
			console.log(
				`The log is signed with key ${key.id} from now on. Its private half is in ${keyFolder}: copy it apart.`,
			);
			console.log("Keep the older keys' files until the next backup; receipts signed with them stay verifiable.");
		} finally {
			await database.close();
		}
	});
} catch (error) {
	console.error(`the key was not changed: ${(error as Error).message}`);
	process.exitCode = 1;
}
