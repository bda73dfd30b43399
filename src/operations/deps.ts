/** What operations are given from outside: the database, the clock, randomness, the log. Only `start/` makes one. */
import type { Database } from "../database/connection.ts";

export interface Deps {
	readonly database: Database;
	/** The time now. */
	readonly now: () => Date;
	/** Cryptographically strong random bytes. */
	readonly randomBytes: (count: number) => Buffer;
	/** A new id of our own minting: prefix, underscore, 100 random bits in lower-case base32 without look-alikes. */
	readonly newId: (prefix: IdPrefix) => string;
	readonly log: {
		info(facts: object, text: string): void;
		warn(facts: object, text: string): void;
		error(facts: object, text: string): void;
	};
	/** Address under which people reach the service, without a slash at the end. */
	readonly publicUrl: string;
	/** Folder for exhibits, inside the data folder. */
	readonly exhibitFolder: string;
}

/** Prefixes of ids, one per kind of thing. */
export type IdPrefix = "acc" | "tok" | "pty" | "itm" | "ord" | "con" | "rec" | "ins" | "ben" | "lnk" | "pka";
