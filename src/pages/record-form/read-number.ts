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

/** Whether a number counts something. */
export function isCount(value: number): boolean {
	return Number.isInteger(value) && value >= 0;
}
