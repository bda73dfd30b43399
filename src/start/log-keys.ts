/**
 * The private keys that sign the log's checkpoints: one PKCS #8 file each, `log-key-<id>.pem`, in the key folder, which
 * only we may read. They are not in the database, so that whoever reads or changes the database cannot sign.
 */
import { createPrivateKey, generateKeyPairSync, type KeyObject, sign } from "node:crypto";
import { mkdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { LogKeys } from "../operations/deps.ts";
import { keyIdOf } from "../records/log/checkpoint.ts";
import { writeDurably } from "./key-files.ts";

export function makeLogKeys(folder: string): LogKeys {
	const loaded = new Map<string, KeyObject>();
	const pathOf = (id: string) => join(folder, `log-key-${id}.pem`);
	const load = async (id: string): Promise<KeyObject> => {
		const known = loaded.get(id);
		if (known !== undefined) return known;
		const pem = await readFile(pathOf(id)).catch(() => null);
		if (pem === null) {
			throw new Error(
				`the key that signs the log is missing: put ${pathOf(id)} back from your copy of the key folder, or set KEY_DIR to where it is`,
			);
		}
		const key = createPrivateKey(pem);
		loaded.set(id, key);
		return key;
	};
	return {
		async make(origin) {
			const { privateKey, publicKey } = generateKeyPairSync("ed25519");
			const raw = Buffer.from(publicKey.export({ format: "jwk" }).x ?? "", "base64url");
			const id = keyIdOf(origin, raw);
			await mkdir(folder, { recursive: true, mode: 0o700 });
			await writeDurably(pathOf(id), privateKey.export({ type: "pkcs8", format: "pem" }));
			return { id, origin, publicKey: raw.toString("hex") };
		},
		async require(id) {
			await load(id);
		},
		async sign(id, bytes) {
			return sign(null, bytes, await load(id));
		},
	};
}
