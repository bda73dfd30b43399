/** Strict base64, RFC 4648 section 4. */
const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
const VALUES = new Int16Array(128).fill(-1);
for (let value = 0; value < 64; value += 1) VALUES[ALPHABET.charCodeAt(value)] = value;

/** The bytes; null unless the text is standard alphabet, padded, and without stray bits, so that it encodes to itself. */
export function bytesOfBase64(text: string): Uint8Array | null {
	if (text.length % 4 !== 0) return null;
	const padding = text.endsWith("==") ? 2 : text.endsWith("=") ? 1 : 0;
	const bytes = new Uint8Array((text.length / 4) * 3 - padding);
	const digits = text.length - padding;
	let bits = 0;
	let held = 0;
	let filled = 0;
	for (let at = 0; at < digits; at += 1) {
		const code = text.charCodeAt(at);
		const value = code < 128 ? (VALUES[code] ?? -1) : -1;
		if (value < 0) return null;
		held = ((held << 6) | value) & 0xffff;
		bits += 6;
		if (bits >= 8) {
			bits -= 8;
			bytes[filled] = (held >> bits) & 0xff;
			filled += 1;
		}
	}
	return (held & ((1 << bits) - 1)) === 0 ? bytes : null;
}
