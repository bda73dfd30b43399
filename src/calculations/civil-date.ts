/**
 * Calendar dates without a clock, a time zone or an hour: days of the Gregorian calendar, counted from 1 January 1970. Law counts
 * such days at one place; the hour at which something happened there never changes the day.
 */

/** `YYYY-MM-DD`. */
export type CivilDate = string;

/** Days since 1970-01-01. */
export function dayNumber(date: CivilDate): number {
	const [year, month, day] = partsOf(date);
	// Years from March, so that the leap day comes last; eras of 400 years have 146,097 days.
	const fromMarch = month <= 2 ? year - 1 : year;
	const era = Math.floor(fromMarch / 400);
	const yearOfEra = fromMarch - era * 400;
	const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
	const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
	return era * 146_097 + dayOfEra - 719_468;
}

/** The date of a day's number. */
export function civilDateOf(number: number): CivilDate {
	const shifted = number + 719_468;
	const era = Math.floor(shifted / 146_097);
	const dayOfEra = shifted - era * 146_097;
	const yearOfEra = Math.floor(
		(dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
	);
	const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
	const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
	const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
	const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
	return written(yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day);
}

export function addDays(date: CivilDate, days: number): CivilDate {
	return civilDateOf(dayNumber(date) + days);
}

/** The same day of a later month; where that month has no such day, its last one. */
export function addMonths(date: CivilDate, months: number): CivilDate {
	const [year, month, day] = partsOf(date);
	const count = year * 12 + (month - 1) + months;
	const [toYear, toMonth] = [Math.floor(count / 12), (count % 12) + 1];
	return written(toYear, toMonth, Math.min(day, daysInMonth(toYear, toMonth)));
}

/** Days from one date to a later one. */
export function daysBetween(from: CivilDate, to: CivilDate): number {
	return dayNumber(to) - dayNumber(from);
}

/** 1 for Monday to 7 for Sunday, as ISO 8601 numbers them. */
export function weekday(date: CivilDate): number {
	// 1970-01-01 was a Thursday.
	return ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;
}

export const SATURDAY = 6;
export const SUNDAY = 7;

export function earliest(dates: readonly CivilDate[]): CivilDate | null {
	return [...dates].sort()[0] ?? null;
}

export function latest(dates: readonly CivilDate[]): CivilDate | null {
	return [...dates].sort().at(-1) ?? null;
}

function daysInMonth(year: number, month: number): number {
	const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
	return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? Number.NaN;
}

function partsOf(date: CivilDate): [year: number, month: number, day: number] {
	return [Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8, 10))];
}

function written(year: number, month: number, day: number): CivilDate {
	const digits = (value: number, count: number) => String(value).padStart(count, "0");
	return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`;
}
