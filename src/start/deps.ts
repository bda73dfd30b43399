/** Makes what operations are given from outside: the only place where clock and randomness are read. */
import { randomBytes } from "node:crypto";
import { type ScryptCost, SECRET_COST } from "../access/secrets.ts";
import { makeVault, type Vault } from "../database/vault.ts";
import { freeBytesOf } from "../exhibits/store.ts";
import type { Deps, IdPrefix } from "../operations/deps.ts";
import { makeErasures } from "./erasures.ts";
import { makeLogKeys } from "./log-keys.ts";
import { makePartyKeys } from "./party-keys.ts";
import { DEFAULT_QUOTA_GIB, GIB } from "./settings.ts";

/** Crockford's alphabet: no letters that are read for digits. */
const ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz";

export function makeDeps({
	keyFolder,
	exhibitQuotaBytes = DEFAULT_QUOTA_GIB * GIB,
	canMail = false,
	secretCost = SECRET_COST,
	...parts
}: Pick<Deps, "database" | "log" | "publicUrl" | "exhibitFolder"> & {
	readonly keyFolder: string;
	readonly exhibitQuotaBytes?: number;
	readonly canMail?: boolean;
	/** For tests, which make many codes: no setting reaches it. */
	readonly secretCost?: ScryptCost;
}): Deps {
	return {
		...parts,
		canMail,
		secretCost,
		exhibitQuotaBytes,
		freeBytes: () => freeBytesOf(parts.exhibitFolder),
		logKeys: makeLogKeys(keyFolder),
		partyKeys: makePartyKeys(keyFolder, randomBytes),
		erasures: makeErasures(keyFolder),
		now: () => new Date(),
		randomBytes,
		newId,
	};
}

/** The vault of a database whose parties have their keys in this folder. */
export function vaultOf(keyFolder: string): Vault {
	return makeVault(makePartyKeys(keyFolder, randomBytes).keyOf, randomBytes);
}

/** Prefix, underscore, 20 characters of 5 random bits each. */
export function newId(prefix: IdPrefix): string {
	return `${prefix}_${[...randomBytes(20)].map((byte) => ALPHABET[byte % 32]).join("")}`;
}

/** A log that says nothing, for tests and tools. */
export const SILENT: Deps["log"] = { info() {}, warn() {}, error() {} };
