/**
 * Words of verification. They are had from their own file, not through `say`, as the offline file brings them along and
 * has no use for all the others.
 */
import { verify } from "../../texts/english/verify.ts";
import { fill, type TextValues } from "../../texts/fill.ts";

export type VerifyKey = keyof typeof verify;

export function verifyWords(key: VerifyKey, values: TextValues = {}): string {
	return fill(key, verify[key], values);
}

/** The words for a key that was put together; null where there are none. */
export function verifyWordsIfAny(key: string, values: TextValues = {}): string | null {
	return Object.hasOwn(verify, key) ? verifyWords(key as VerifyKey, values) : null;
}
