/**
 * Whether a new failure falls inside the warranty that an order's terms give: the clock, and what speaks on either side. What
 * the terms cover is in their words; whether a failure is of that kind is for both sides to say, so it is asked, not guessed.
 */
import { addMonths, type CivilDate, daysBetween } from "../civil-date.ts";
import { type Sentence, sentence } from "../judged.ts";

export type Answer = "yes" | "no" | "not-known";

export interface WarrantyInput {
	/** Null where the order gives no warranty. */
	readonly months: number | null;
	/** Day on which the owner had the item again; null while that is not known. */
	readonly startsOn: CivilDate | null;
	/** Day on which the failure showed; null where none is looked at. */
	readonly failedOn: CivilDate | null;
	/** It is the fault that was repaired. */
	readonly sameFault: Answer;
	/** It is in a part that was repaired or replaced. */
	readonly samePart: Answer;
	/** Something happened to the item since: a fall, a liquid, work by someone else. */
	readonly eventSince: Answer;
}

export interface Warranty {
	/** The last day: the same day of the month, or the month's last. Null where the clock has no start. */
	readonly endsOn: CivilDate | null;
	readonly leftAtFailureDays: number | null;
	readonly time: "inside" | "outside" | "open";
	readonly for: readonly Sentence[];
	readonly against: readonly Sentence[];
	readonly open: readonly Sentence[];
}

export function warranty(input: WarrantyInput): Warranty {
	const { months, startsOn, failedOn } = input;
	const endsOn = months === null || startsOn === null ? null : addMonths(startsOn, months);
	const time =
		endsOn === null || failedOn === null || startsOn === null
			? "open"
			: failedOn >= startsOn && failedOn <= endsOn
				? "inside"
				: "outside";
	const told = [
		...timeReasons(input, endsOn, time),
		reason(input.sameFault, "same-fault", "for"),
		reason(input.samePart, "same-part", "for"),
		reason(input.eventSince, "event-since", "against"),
	];
	const on = (side: Side) => told.filter((one) => one.side === side).map((one) => one.why);
	return {
		endsOn,
		leftAtFailureDays: endsOn === null || failedOn === null ? null : daysBetween(failedOn, endsOn),
		time,
		for: on("for"),
		against: on("against"),
		open: on("open"),
	};
}

type Side = "for" | "against" | "open";
interface Reason {
	readonly side: Side;
	readonly why: Sentence;
}

function timeReasons({ months, startsOn, failedOn }: WarrantyInput, endsOn: CivilDate | null, time: Warranty["time"]) {
	const one = (side: Side, key: string, values = {}): Reason[] => [{ side, why: sentence(`warranty.${key}`, values) }];
	if (months === null) return one("against", "none-agreed");
	if (startsOn === null || endsOn === null) return one("open", "no-start");
	if (failedOn === null) return one("open", "no-failure");
	if (time === "inside") return one("for", "in-time", { failedOn, endsOn });
	return failedOn < startsOn
		? one("against", "before-start", { failedOn, startsOn })
		: one("against", "after-end", { failedOn, endsOn });
}

/** What an answer speaks for; the opposite answer speaks for the opposite side. */
function reason(answer: Answer, key: string, yesIs: "for" | "against"): Reason {
	const noIs = yesIs === "for" ? "against" : "for";
	const side = answer === "not-known" ? "open" : answer === "yes" ? yesIs : noIs;
	return { side, why: sentence(`warranty.${key}-${answer}`) };
}
