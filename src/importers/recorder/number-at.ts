/** Reads a decimal number from bytes. Most recorders' numbers have few digits, and are read without making a text of them. */

const ZERO = 0x30;
/** Powers of ten that a double holds exactly: one rounding, so that the value is the nearest double, as `Number` gives it. */
const POWERS_OF_TEN = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
const MOST_EXACT_DIGITS = 15;
const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/;

/**
 * The number that stands from `from` up to `to`, spaces and quotes around it left out. NaN where nothing stands there, or
 * `nan` does: a missing sample; null for what is no number.
 * @param decimalComma a comma parts whole digits from others as well as a point
 */
export function numberAt(bytes: Uint8Array, from: number, to: number, decimalComma: boolean): number | null {
	// Plain variables: this runs once a field, and a pattern may make an array each time.
	let start = from;
	let end = to;
	while (start < end && isAround(bytes[start] as number)) start += 1;
	while (end > start && isAround(bytes[end - 1] as number)) end -= 1;
	if (start === end) return Number.NaN;
	let at = start;
	const first = bytes[at];
	const negative = first === 0x2d;
	if (negative || first === 0x2b) at += 1;
	let value = 0;
	let digits = 0;
	let fraction = 0;
	let inFraction = false;
	for (; at < end; at += 1) {
		const byte = bytes[at] as number;
		const digit = byte - ZERO;
		if (digit >= 0 && digit <= 9) {
			value = value * 10 + digit;
			if (value > 0) digits += 1;
			if (inFraction) fraction += 1;
		} else if (!inFraction && (byte === 0x2e || (decimalComma && byte === 0x2c))) inFraction = true;
		else return slowly(bytes.subarray(start, end), decimalComma);
	}
	// A sign or a point alone is no number.
	if (at - start === Number(inFraction) + Number(first === 0x2d || first === 0x2b)) return null;
	if (digits > MOST_EXACT_DIGITS || fraction > 22) return slowly(bytes.subarray(start, end), decimalComma);
	const size = value / (POWERS_OF_TEN[fraction] as number);
	return negative ? -size : size;
}

function isAround(byte: number): boolean {
	return byte === 0x20 || byte === 0x22 || byte === 0x09;
}

/** Exponents, long numbers, and words. */
function slowly(bytes: Uint8Array, decimalComma: boolean): number | null {
	let text = "";
	for (const byte of bytes) text += String.fromCharCode(byte);
	if (/^nan$/i.test(text)) return Number.NaN;
	const plain = decimalComma ? text.replace(",", ".") : text;
	return NUMBER.test(plain) && Number.isFinite(Number(plain)) ? Number(plain) : null;
}
