/**
 * Canonical bytes of a JSON value: RFC 8785 (JSON Canonicalization Scheme), UTF-8. What the scheme leaves to the
 * caller is refused here: lone surrogates, numbers that are not finite, `undefined`, and anything that is not JSON.
 * Sealed bytes are kept exactly as made, so verifying never needs to make them again.
 */
import { createHash } from "node:crypto";
import canonicalize from "canonicalize";

export type JsonValue =
	| null
	| boolean
	| number
	| string
	| readonly JsonValue[]
	| { readonly [name: string]: JsonValue };

/**
 * The canonical bytes of a value.
 * @throws Error naming the place of a value that has no canonical form.
 */
export function canonicalBytes(value: unknown): Buffer {
	refuseForeign(value, "");
	const text = canonicalize(value);
	if (text === undefined) throw new Error("the value has no canonical form");
	return Buffer.from(text, "utf8");
}

/** SHA-256 of bytes (after optional prefix bytes), lower-case hex. */
export function sha256Hex(...parts: readonly Uint8Array[]): string {
	const hash = createHash("sha256");
	for (const part of parts) hash.update(part);
	return hash.digest("hex");
}

function refuseForeign(value: unknown, path: string): void {
	if (value === null || typeof value === "boolean") return;
	if (typeof value === "string") {
		if (!value.isWellFormed()) throw new Error(`lone surrogate in the text at ${path || "/"}`);
		return;
	}
	if (typeof value === "number") {
		if (!Number.isFinite(value)) throw new Error(`number that is not finite at ${path || "/"}`);
		return;
	}
	if (Array.isArray(value)) {
		value.forEach((entry, index) => {
			refuseForeign(entry, `${path}/${index}`);
		});
		return;
	}
	if (typeof value === "object" && Object.getPrototypeOf(value) === Object.prototype) {
		for (const [name, entry] of Object.entries(value)) {
			if (!name.isWellFormed()) throw new Error(`lone surrogate in a member name at ${path || "/"}`);
			refuseForeign(entry, `${path}/${name}`);
		}
		return;
	}
	throw new Error(`a value that is not JSON at ${path || "/"}`);
}
