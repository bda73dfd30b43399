/** Numbers as people type them. */

/** Digits with a point or a comma, as the sealed form keeps them. */
const TYPED_DIGITS = /^-?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?$/;

/** The number and its digits as typed; null for anything that is no finite number. */
export function readNumber(typed: string): { readonly value: number; readonly typed: string } | null {
	const digits = typed.trim().replace(/^[−–]/, "-").replace(/^\+/, "");
	if (digits.length > 40 || !TYPED_DIGITS.test(digits)) return null;
	const value = Number(digits.replace(",", "."));
	return Number.isFinite(value) ? { value, typed: digits } : null;
}

/**
 * The number of an amount of money; null for what is none, and for more than two decimals: `1.200` may be meant as
 * twelve hundred, and is sealed or sent to a carrier.
 */
export function readAmount(typed: string): number | null {
	const read = readNumber(typed);
	return read === null || /[.,]\d{3,}/.test(read.typed) ? null : read.value;
}

/** Whether a number counts something. */
export function isCount(value: number): boolean {
	return Number.isInteger(value) && value >= 0;
}
