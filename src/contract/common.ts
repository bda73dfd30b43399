/** Shapes that many requests share. Strict: nothing is coerced, nothing unknown is dropped, null is never sent. */
import { z } from "zod";

const NUL = "\u0000";

/** Text that a person typed: at least one character, no U+0000, no lone surrogate. */
export const text = (maximum = 500) =>
	z
		.string()
		.min(1)
		.max(maximum)
		.refine((value) => !value.includes(NUL), { error: "U+0000 cannot be stored" })
		.refine((value) => value.isWellFormed(), { error: "the text holds half of a surrogate pair" });

/** An id of our own minting: prefix, underscore, 20 characters. */
export const id = (prefix: string) => z.string().regex(new RegExp(`^${prefix}_[0-9a-z]{20}$`));

/** SHA-256 in lower-case hex. */
export const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

const yearWithin = (value: string) => {
	const year = Number(value.slice(0, 4));
	return year >= 1970 && year <= 2200;
};

/** RFC 3339 time with offset, years 1970 to 2200. */
export const dateTime = z.iso
	.datetime({ offset: true })
	.refine(yearWithin, { error: "the year must lie between 1970 and 2200" });

/** Calendar date, years 1970 to 2200. */
export const civilDate = z.iso.date().refine(yearWithin, { error: "the year must lie between 1970 and 2200" });

/** ISO 3166-1 alpha-2 country code. */
export const country = z.string().regex(/^[A-Z]{2}$/);

/** Money; the amount in the currency's major unit with at most two decimals. */
export const money = z.strictObject({
	amount: z
		.number()
		.min(0)
		.max(1e9)
		.refine((amount) => Math.abs(amount * 100 - Math.round(amount * 100)) < 1e-6, { error: "at most two decimals" }),
	currency: z.string().regex(/^[A-Z]{3}$/),
});

/** A number above zero. */
export const positive = z.number().positive();
