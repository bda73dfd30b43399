/** Public holidays of a country or region by the years that a calculation spans, from a maintained library. */
import PublicHolidays from "date-holidays";
import { addDays, type CivilDate, SATURDAY, weekday } from "../../calculations/civil-date.ts";
import type { Holidays } from "../../calculations/claims/claim-periods.ts";
import { invalid } from "../../faults.ts";

export interface HolidayChoice {
	readonly country: string;
	readonly region?: string | undefined;
	readonly add?: readonly CivilDate[] | undefined;
	readonly remove?: readonly CivilDate[] | undefined;
}

/**
 * Those of the whole country where no region is named. Doubtful are a holiday on a Saturday that another day stands in for, and Good
 * Friday in the Netherlands, which the law on terms names and most people work on.
 * @throws bad-input for a country or region that the library does not have
 */
export function publicHolidays(choice: HolidayChoice, years: Iterable<number>): Holidays {
	const { country, region, add = [], remove = [] } = choice;
	const library = new PublicHolidays();
	if (library.getCountries("en")?.[country] === undefined)
		throw invalid([{ path: "/holidays/country", code: "unknown-id" }]);
	if (region !== undefined && library.getStates(country, "en")?.[region.toUpperCase()] === undefined)
		throw invalid([{ path: "/holidays/region", code: "unknown-id" }]);
	if (region === undefined) library.init(country);
	else library.init(country, region);
	const dates = new Set<CivilDate>();
	const doubtful = new Set<CivilDate>();
	for (const year of years) {
		const found = library.getHolidays(year, "en");
		const isPublic = found.filter(({ type }) => type === "public");
		for (const holiday of isPublic) {
			for (const date of daysOf(holiday)) {
				const replaced = weekday(date) === SATURDAY && isReplaced(holiday, isPublic);
				(replaced ? doubtful : dates).add(date);
			}
		}
		if (country === "NL") for (const { date, rule } of found) if (rule === "easter -2") doubtful.add(date.slice(0, 10));
	}
	for (const date of add) dates.add(date);
	for (const date of remove) {
		dates.delete(date);
		doubtful.delete(date);
	}
	return {
		dates: [...dates].sort(),
		doubtful: [...doubtful].filter((date) => !dates.has(date)).sort(),
		regionsDiffer: region === undefined && Object.keys(library.getStates(country, "en") ?? {}).length > 0,
	};
}

type Holiday = ReturnType<PublicHolidays["getHolidays"]>[number];

/** Civil days of a holiday; one that begins in the evening counts from the next day. */
function daysOf({ date, start, end }: Holiday): CivilDate[] {
	const begins = date.slice(0, 10);
	const inEvening = Number(date.slice(11, 13)) >= 12;
	const count = Math.max(1, Math.round((end.getTime() - start.getTime()) / 86_400_000));
	return Array.from({ length: count }, (_, index) => addDays(begins, index + (inEvening ? 1 : 0)));
}

/** Whether another day stands in for this one: it has the same rule, or one that names this one's. */
function isReplaced(holiday: Holiday, all: readonly Holiday[]): boolean {
	return all.some(
		({ substitute, rule, date }) => substitute === true && date !== holiday.date && rule.includes(holiday.rule),
	);
}
