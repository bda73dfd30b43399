/** Counting days as the regimes do. The day of the event is never counted; days are whole days at the place of delivery. */
import { addDays, type CivilDate, SATURDAY, SUNDAY, weekday } from "../civil-date.ts";
import type { Rolling, Skipping } from "./claim-rule.ts";

export interface Counted {
	readonly endsOn: CivilDate;
	/** Days that were passed over, in order. */
	readonly skipped: readonly CivilDate[];
}

/** The last of `count` counted days after `start`. */
export function countDays(
	start: CivilDate,
	count: number,
	skipping: Skipping,
	holidays: ReadonlySet<CivilDate>,
	sundaysCount = false,
): Counted {
	const skipped: CivilDate[] = [];
	let endsOn = start;
	for (let left = count; left > 0; ) {
		endsOn = addDays(endsOn, 1);
		const isSunday = weekday(endsOn) === SUNDAY && !sundaysCount;
		const isSaturday = weekday(endsOn) === SATURDAY && skipping === "weekends-and-holidays";
		if (skipping !== "none" && (isSunday || isSaturday || holidays.has(endsOn))) skipped.push(endsOn);
		else left -= 1;
	}
	return { endsOn, skipped };
}

/** The end moved to the next day that is not off. */
export function rolled(end: CivilDate, rolling: Rolling, holidays: ReadonlySet<CivilDate>): CivilDate {
	let date = end;
	while (
		rolling !== "none" &&
		(weekday(date) === SUNDAY ||
			(weekday(date) === SATURDAY && rolling === "weekends-and-holidays") ||
			holidays.has(date))
	)
		date = addDays(date, 1);
	return date;
}
