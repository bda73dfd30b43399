/** What operations are given from outside: the database, the clock, randomness, the log. Only `start/` makes one. */
import type { ScryptCost } from "../access/secrets.ts";
import type { Database } from "../database/connection.ts";
import type { LogKey } from "../records/log/checkpoint.ts";

export interface Deps {
	readonly database: Database;
	/** The time now. */
	readonly now: () => Date;
	/** Cryptographically strong random bytes. */
	readonly randomBytes: (count: number) => Buffer;
	/** What it takes to derive a key from a passphrase or code. */
	readonly secretCost: ScryptCost;
	/** A new id of our own minting: prefix, underscore, 100 random bits in lower-case base32 without look-alikes. */
	readonly newId: (prefix: IdPrefix) => string;
	readonly log: {
		info(facts: object, text: string): void;
		warn(facts: object, text: string): void;
		error(facts: object, text: string): void;
	};
	/** Address under which people reach the service, without a slash at the end. */
	readonly publicUrl: string;
	/** The private keys that sign the log's checkpoints. */
	readonly logKeys: LogKeys;
	readonly partyKeys: PartyKeys;
	readonly erasures: Erasures;
	/** Folder for exhibits, inside the data folder. */
	readonly exhibitFolder: string;
	/** Whether a mail server is set: without one nothing is queued. */
	readonly canMail: boolean;
	/** Bytes that are free where exhibits lie. */
	readonly freeBytes: () => Promise<number>;
	/** The most bytes that the exhibits of one order take. */
	readonly exhibitQuotaBytes: number;
}

export interface LogKeys {
	/** A new key for a log of this name, its private half on disk. */
	make(origin: string): Promise<LogKey>;
	/** @throws Error, naming the mend, where the private half is not at hand */
	require(keyId: string): Promise<void>;
	/** The Ed25519 signature, 64 bytes. */
	sign(keyId: string, bytes: Uint8Array): Promise<Uint8Array>;
}

/** The keys under which personal data is encrypted, one per party. */
export interface PartyKeys {
	/** A new key; on disk when this returns. */
	make(partyId: string): Promise<void>;
	/** Deletes the key: what was encrypted with it cannot be read again. */
	destroy(partyId: string): Promise<void>;
	/** @throws Error, naming the mend, where a key is not at hand */
	requireAll(partyIds: readonly string[]): Promise<void>;
}

/** Who was erased, kept beside the keys and outside the database, so that an older database is erased again. */
export interface Erasures {
	note(erasure: Erasure): Promise<void>;
	list(): Promise<readonly Erasure[]>;
}

export interface Erasure {
	readonly partyId: string;
	/** Account that erased. */
	readonly byId: string;
}

/** Prefixes of ids, one per kind of thing. */
export type IdPrefix =
	| "acc"
	| "tok"
	| "pty"
	| "itm"
	| "ord"
	| "chk"
	| "cls"
	| "con"
	| "rec"
	| "ins"
	| "ben"
	| "lnk"
	| "pka"
	| "mal"
	| "pos"
	| "stl"
	| "trc"
	| "upl"
	| "ntc"
	| "log";
