/** Collects an importer's readings: a printed value becomes a number, or null with the reason why it is none. */
import { type ImportCondition, type ImportedReading, type ImportWarning, warning } from "./import-result.ts";
import { isSentinel, nullReasonOf } from "./null-words.ts";

/** A value as printed and where. */
export interface Printed {
	readonly raw: string;
	readonly line: number | null;
}

/** Values outside cannot be true of such a machine, whatever is printed. Source: our choice. */
const POSSIBLE: Readonly<Record<string, readonly [number, number]>> = {
	degC: [-60, 250],
	W: [0, 5000],
	V: [-60, 60],
	percent: [0, 400],
	rpm: [0, 100_000],
	lanes: [1, 32],
	"GT/s": [2.5, 64],
	h: [0, 1_000_000],
	MiB: [0, 2 ** 53],
	errors: [0, 2 ** 53 - 1],
	one: [0, 2 ** 53 - 1],
};

/** Lines that are named of one reading. Our choice. */
const MOST_LINES = 400;

export interface Readings {
	readonly list: ImportedReading[];
	/** A reading whose value is known, or known to be none. */
	give(
		check: string,
		subject: string,
		unit: string,
		value: number | null,
		raw: string,
		/** Of the file, that it was read from. */
		lines: readonly number[],
		more?: { readonly nullReason?: string; readonly atLeast?: true },
	): void;
	/**
	 * A reading printed as a number in a pattern, its number in the first group. `convert` gives null for a number that
	 * the format cannot hold. The value, or null with the reason noted.
	 */
	print(
		check: string,
		subject: string,
		unit: string,
		printed: Printed | undefined,
		pattern: RegExp,
		convert?: (value: number) => number | null,
	): number | null;
}

export function collectReadings(condition: ImportCondition, warnings: ImportWarning[]): Readings {
	const list: ImportedReading[] = [];
	const give: Readings["give"] = (check, subject, unit, value, raw, lines, more = {}) => {
		list.push({ check, subject, condition, value, unit, raw, lines: lines.slice(0, MOST_LINES), ...more });
	};
	const print: Readings["print"] = (check, subject, unit, printed, pattern, convert = (value) => value) => {
		if (printed === undefined) return null;
		const { raw, line } = printed;
		const lines = line === null ? [] : [line];
		const none = (nullReason: string) => {
			give(check, subject, unit, null, raw, lines, { nullReason });
			return null;
		};
		const word = nullReasonOf(raw);
		if (word !== null) return none(word);
		const digits = pattern.exec(raw)?.[1];
		const number = digits === undefined ? Number.NaN : Number(digits);
		if (isSentinel(number)) return none("sentinel");
		const value = Number.isFinite(number) ? convert(number) : null;
		if (value === null) {
			warnings.push(warning("not-understood", line, { raw: raw.slice(0, 80) }));
			return none("not-understood");
		}
		if (isSentinel(value)) return none("sentinel");
		const [low, high] = POSSIBLE[unit] ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
		if (!(value >= low && value <= high)) {
			warnings.push(warning("impossible", line, { raw: raw.slice(0, 80) }));
			return none("impossible");
		}
		give(check, subject, unit, value, raw, lines);
		return value;
	};
	return { list, give, print };
}
