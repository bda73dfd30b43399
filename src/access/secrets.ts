/** Tokens, codes and passphrases: how they are made and how they are kept. */
import { createHash, randomInt, scrypt, timingSafeEqual } from "node:crypto";

/** What scrypt takes to derive a key: steps, block size, lanes (RFC 7914, section 2). */
export interface ScryptCost {
	readonly N: number;
	readonly r: number;
	readonly p: number;
}

/** For passphrases and codes: N 2^15, r 8, p 1. Source: from memory, OWASP Password Storage Cheat Sheet. */
export const SECRET_COST: ScryptCost = { N: 2 ** 15, r: 8, p: 1 };
/** Twice what that takes, 128 × N × r bytes. */
const MOST_MEMORY_BYTES = 64 * 1024 * 1024;
const KEY_BYTES = 32;

/** A token of 256 random bits, for URLs, cookies and headers. */
export function makeToken(randomBytes: (count: number) => Buffer): string {
	return randomBytes(32).toString("base64url");
}

/** What is kept of a token. It has 256 random bits, so a plain hash cannot be guessed back. */
export function tokenHash(token: string): string {
	return createHash("sha256").update(token).digest("hex");
}

/** A six-digit code. */
export function makeCode(): string {
	return String(randomInt(0, 1_000_000)).padStart(6, "0");
}

/** Letters and digits that nobody mistakes for each other. */
const SHORT_ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ";
const SHORT_LENGTH = 8;

/** A short code to type on another device: 39 random bits, so only for minutes and one use. */
export function makeShortCode(): string {
	return Array.from({ length: SHORT_LENGTH }, () => SHORT_ALPHABET[randomInt(SHORT_ALPHABET.length)]).join("");
}

/** A short code as it was made, whatever was typed between its letters; null for what is none. */
export function readShortCode(typed: string): string | null {
	const code = typed.toUpperCase().replaceAll(/[\s-]/g, "");
	return code.length === SHORT_LENGTH && [...code].every((letter) => SHORT_ALPHABET.includes(letter)) ? code : null;
}

/** What is kept of a passphrase or code: `scrypt$N$r$p$salt$key`, hex. */
export async function hashSecret(secret: string, salt: Buffer, cost: ScryptCost): Promise<string> {
	const { N, r, p } = cost;
	const key = await derive(secret, salt, cost);
	return ["scrypt", N, r, p, salt.toString("hex"), key.toString("hex")].join("$");
}

/** Whether a secret is the one that was hashed; takes the same time whether it is or not. */
export async function secretMatches(secret: string, hash: string): Promise<boolean> {
	const [, N, r, p, salt, key] = hash.split("$");
	if (salt === undefined || key === undefined) throw new Error("not a hash of ours");
	const cost = { N: Number(N), r: Number(r), p: Number(p) };
	return timingSafeEqual(await derive(secret, Buffer.from(salt, "hex"), cost), Buffer.from(key, "hex"));
}

/** A hash that no secret matches, to spend the same time on a name that does not exist. */
export const NO_ACCOUNT_HASH = `scrypt$${SECRET_COST.N}$8$1$${"00".repeat(16)}$${"00".repeat(KEY_BYTES)}`;

/** The token that a page's forms carry: bound to the session's cookie, so another site cannot know it. */
export function formTokenOf(sessionToken: string): string {
	return createHash("sha256").update("form ").update(sessionToken).digest("base64url");
}

/** Whether a form carried the token of the session. */
export function formTokenMatches(sessionToken: string, formToken: unknown): boolean {
	if (typeof formToken !== "string") return false;
	const expected = Buffer.from(formTokenOf(sessionToken));
	const given = Buffer.from(formToken);
	return expected.length === given.length && timingSafeEqual(expected, given);
}

function derive(secret: string, salt: Buffer, cost: ScryptCost): Promise<Buffer> {
	return new Promise((resolve, reject) => {
		const settings = { ...cost, maxmem: MOST_MEMORY_BYTES };
		scrypt(secret.normalize("NFKC"), salt, KEY_BYTES, settings, (error, key) => (error ? reject(error) : resolve(key)));
	});
}
