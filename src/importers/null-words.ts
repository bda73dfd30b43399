/** Words and numbers that tools print where they have no value. Source: bench practice, import rules, common practice. */

const NULL_WORDS = new Set([
	"",
	"n/a",
	"[n/a]",
	"none",
	"[not supported]",
	"not supported",
	"[unknown error]",
	"unknown error",
	"err!",
	"not specified",
	"default string",
	"to be filled by o.e.m.",
	"redacted",
	"unknown",
	"requested functionality has been deprecated",
	"gpu is lost",
	"[gpu is lost]",
]);

/** All-ones and absolute-zero values that counters and sensors give instead of a reading. */
const SENTINELS = new Set([-273.15, 65261.85, 65535, 4294967295, 2 ** 64, 2147483647]);

/** Why a printed value is no value; null where it is one. */
export function nullReasonOf(raw: string): string | null {
	const word = raw.trim().toLowerCase();
	if (word === "gpu is lost" || word === "[gpu is lost]") return "bus-lost";
	return NULL_WORDS.has(word) ? "not-given" : null;
}

/** Whether a number stands for none. */
export function isSentinel(value: number): boolean {
	return SENTINELS.has(value);
}
