/**
 * Dates by which a claim of carriage has to be notified or brought, each with what follows when it passes. General information
 * from the dates given; the earliest date that any reading gives is the safe one.
 */
import { addDays, addMonths, type CivilDate, daysBetween, earliest, latest } from "../civil-date.ts";
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import type { Source, Standing } from "../sources.ts";
import type { ClaimEvent, ClaimRule, Consequence, Damage, Form, OtherReading, Start } from "./claim-rule.ts";
import { countDays, rolled } from "./counting.ts";

export type ClaimEvents = Readonly<Partial<Record<ClaimEvent, CivilDate | undefined>>>;

export interface ClaimPeriodsInput {
	readonly rules: readonly ClaimRule[];
	readonly damage: Damage;
	/** Whether intent, or recklessness with knowledge, is claimed: some times are longer then. */
	readonly wilful?: boolean | undefined;
	readonly events: ClaimEvents;
	/** Null where none were given. */
	readonly holidays: Holidays | null;
}

export interface Holidays {
	readonly dates: readonly CivilDate[];
	/** Days of which it is not settled that they are public holidays. */
	readonly doubtful: readonly CivilDate[];
	/** The country's regions have further ones, and none was named. */
	readonly regionsDiffer: boolean;
}

export interface ClaimPeriod {
	readonly ruleId: string;
	readonly what: Sentence;
	/** Null where no date follows: the rule names none, or an event is missing. */
	readonly endsOn: CivilDate | null;
	/** After an end on a day off; null where the rule read has no such shift. */
	readonly rolledTo: CivilDate | null;
	readonly safeDate: CivilDate | null;
	readonly alternatives: readonly Alternative[];
	readonly form: Form;
	readonly consequence: Consequence;
	readonly article: string;
	readonly readOn: string | null;
	readonly standing: Standing;
	readonly skipped: readonly CivilDate[];
	/** Events of which one has to be given for a date. */
	readonly missing: readonly ClaimEvent[];
	/** When the notice was sent, against the dates above; null without one, or where sending in time is not said to suffice. */
	readonly notice: "by-safe-date" | "by-end" | "after-end" | null;
}

export interface Alternative {
	/** Null where it cannot be told yet. */
	readonly endsOn: CivilDate | null;
	readonly reading: Sentence;
}

export interface ClaimPeriods {
	readonly periods: readonly ClaimPeriod[];
}

export function claimPeriods(input: ClaimPeriodsInput): Judged<ClaimPeriods> {
	if (input.rules.length === 0) return notAssessed("no-rule", sentence("claims.no-rule"));
	const periods = input.rules.map((rule) => periodOf(rule, input));
	const foreign = input.rules.filter(({ damage }) => !damage.includes(input.damage)).map(({ id }) => id);
	const needsHolidays = input.rules.some(
		({ period, rolling }) =>
			(rolling ?? "none") !== "none" || (period.unit === "days" && period.skipping !== undefined),
	);
	return assessed(
		{ periods },
		{
			within: periods.every(({ standing, endsOn }) => standing === "published" || endsOn === null),
			notes: periods.some(({ standing }) => standing !== "published") ? [sentence("claims.from-memory")] : [],
			cautions: [
				sentence("claims.general"),
				sentence("claims.prevails"),
				sentence("claims.outer-limits"),
				sentence("claims.consequences-differ"),
				sentence("claims.seller-apart"),
				...(needsHolidays && input.holidays === null ? [sentence("claims.no-holidays")] : []),
				...(needsHolidays && input.holidays?.regionsDiffer === true ? [sentence("claims.regions-differ")] : []),
				...(foreign.length > 0 ? [sentence("claims.other-damage", { rules: foreign.join(", ") })] : []),
			],
			sources: sourcesOf(input.rules),
		},
	);
}

function periodOf(rule: ClaimRule, input: ClaimPeriodsInput): ClaimPeriod {
	const start = input.damage === "loss" ? (rule.startForLoss ?? rule.start) : rule.start;
	const from = startOf(start, input.events);
	const dates = from === null || !hasDate(rule) ? null : datesOf(rule, from, input);
	const discovered = input.events.discovered;
	// Rules without a number of days ask for action at once: the safe day is that of the event.
	const promptly = rule.period.unit === "promptly" ? (discovered ?? from) : null;
	const safeDate = dates === null ? promptly : safeOf(rule, dates);
	return {
		ruleId: rule.id,
		what: sentence(`claims.what-${rule.id.toLowerCase()}`),
		endsOn: dates?.endsOn ?? null,
		rolledTo: dates?.rolledTo ?? null,
		safeDate,
		alternatives: dates?.alternatives ?? [],
		form: rule.form,
		consequence: rule.consequence,
		article: rule.article,
		readOn: rule.readOn,
		standing: rule.source.standing,
		skipped: dates?.skipped ?? [],
		missing: from !== null || rule.period.unit === "contract" ? [] : eventsOf(start),
		notice: noticeOf(rule, input.events.noticeSent, safeDate, dates?.rolledTo ?? dates?.endsOn ?? null),
	};
}

interface Dates {
	readonly endsOn: CivilDate;
	readonly rolledTo: CivilDate | null;
	readonly skipped: readonly CivilDate[];
	readonly alternatives: readonly Alternative[];
}

const hasDate = ({ period }: ClaimRule) => period.unit !== "promptly" && period.unit !== "contract";

function datesOf(rule: ClaimRule, from: CivilDate, input: ClaimPeriodsInput): Dates {
	const holidays = new Set(input.holidays?.dates ?? []);
	const { endsOn, skipped } = end(rule, from, input, holidays);
	const rolling = rule.rolling ?? "none";
	const rolledTo = rolling === "none" ? null : rolled(endsOn, rolling, holidays);
	const alternatives = [
		...(rule.otherReadings ?? []).flatMap((reading) => readOtherwise(reading, rule, from, endsOn, input)),
		...withDoubtfulHolidays(rule, from, rolledTo ?? endsOn, input),
		...suspended(rule, endsOn, input.events),
	];
	return { endsOn, rolledTo, skipped, alternatives };
}

function end(
	{ period }: ClaimRule,
	from: CivilDate,
	{ wilful, events }: ClaimPeriodsInput,
	holidays: ReadonlySet<CivilDate>,
	sundaysCount = false,
) {
	switch (period.unit) {
		case "days":
			return countDays(from, period.count, period.skipping ?? "none", holidays, sundaysCount);
		case "months":
			return { endsOn: addMonths(from, period.count), skipped: [] };
		case "years": {
			const years = wilful === true ? (period.ifWilful ?? period.count) : period.count;
			return { endsOn: addMonths(from, 12 * years), skipped: [] };
		}
		case "period-again":
			return { endsOn: addDays(from, Math.max(period.least, deliveryDays(events))), skipped: [] };
		default:
			return { endsOn: from, skipped: [] };
	}
}

/** Length of the delivery period, where both its ends are known. */
function deliveryDays({ takenOver, agreedLimit }: ClaimEvents): number {
	return takenOver === undefined || agreedLimit === undefined ? 0 : daysBetween(takenOver, agreedLimit);
}

function readOtherwise(
	reading: OtherReading,
	rule: ClaimRule,
	from: CivilDate,
	endsOn: CivilDate,
	input: ClaimPeriodsInput,
): Alternative[] {
	const { period } = rule;
	const holidays = new Set(input.holidays?.dates ?? []);
	const other = (date: CivilDate) => [{ endsOn: date, reading: sentence(`claims.reading-${reading}`) }];
	switch (reading) {
		case "start-day-counts":
			return other(addDays(endsOn, -1));
		case "sundays-count": {
			const date = end(rule, from, input, holidays, true).endsOn;
			return date === endsOn ? [] : other(date);
		}
		case "day-after-posting-counts":
			return period.unit === "months" ? other(addMonths(addDays(from, 1), period.count)) : [];
		case "saturday-rolls": {
			const date = rolled(endsOn, "weekends-and-holidays", holidays);
			return date === rolled(endsOn, rule.rolling ?? "none", holidays) ? [] : other(date);
		}
		case "at-once-on-discovery": {
			const { discovered } = input.events;
			return discovered === undefined || discovered >= endsOn ? [] : other(discovered);
		}
		case "across-borders":
			return period.unit === "period-again"
				? other(addDays(from, Math.max(period.leastAcrossBorders, deliveryDays(input.events))))
				: [];
		case "status-every-60-days":
			return other(addDays(endsOn, 60));
	}
}

function withDoubtfulHolidays(
	rule: ClaimRule,
	from: CivilDate,
	expected: CivilDate,
	input: ClaimPeriodsInput,
): Alternative[] {
	const doubtful = input.holidays?.doubtful ?? [];
	if (doubtful.length === 0) return [];
	const all = new Set([...(input.holidays?.dates ?? []), ...doubtful]);
	const { endsOn } = end(rule, from, input, all);
	const date = rolled(endsOn, rule.rolling ?? "none", all);
	if (date === expected) return [];
	const between = doubtful.filter((day) => day > from && day <= date).join(", ");
	return [{ endsOn: date, reading: sentence("claims.reading-doubtful-holiday", { dates: between }) }];
}

/** The time stands still from the claim to its refusal; it is shown beside the plain end, which is the safe one. */
function suspended(rule: ClaimRule, endsOn: CivilDate, events: ClaimEvents): Alternative[] {
	const { claimed, rejected, documentsReturned } = events;
	if (rule.suspendedUntil === undefined || claimed === undefined || claimed > endsOn) return [];
	const both = rule.suspendedUntil === "rejected-and-returned";
	const ends = both ? [rejected, documentsReturned] : [rejected];
	const known = ends.filter((date) => date !== undefined);
	const resumes = known.length < ends.length ? null : latest(known);
	return [
		{
			endsOn: resumes === null ? null : addDays(endsOn, daysBetween(claimed, resumes)),
			reading: sentence(both ? "claims.reading-suspended-documents" : "claims.reading-suspended"),
		},
	];
}

/** The earliest date of any reading; for a right that begins, the latest; for a duty of the carrier, its own. */
function safeOf(rule: ClaimRule, { endsOn, alternatives }: Dates): CivilDate | null {
	if (rule.consequence === "carrier-duty") return endsOn;
	const all = [endsOn, ...alternatives.flatMap((one) => (one.endsOn === null ? [] : [one.endsOn]))];
	return rule.consequence === "deemed-lost" ? latest(all) : earliest(all);
}

function startOf(start: Start, events: ClaimEvents): CivilDate | null {
	if ("events" in start) return start.events.map((name) => events[name]).find((date) => date !== undefined) ?? null;
	if (events.agreedLimit !== undefined) return addDays(events.agreedLimit, start.afterLimitDays);
	if (events.takenOver !== undefined && start.afterTakingOverDays !== undefined)
		return addDays(events.takenOver, start.afterTakingOverDays);
	return null;
}

function eventsOf(start: Start): readonly ClaimEvent[] {
	if ("events" in start) return start.events;
	return start.afterTakingOverDays === undefined ? ["agreedLimit"] : ["agreedLimit", "takenOver"];
}

function noticeOf(
	rule: ClaimRule,
	sent: CivilDate | undefined,
	safeDate: CivilDate | null,
	endsOn: CivilDate | null,
): ClaimPeriod["notice"] {
	if (rule.dispatchSuffices !== true || sent === undefined || safeDate === null) return null;
	if (sent <= safeDate) return "by-safe-date";
	return endsOn !== null && sent <= endsOn ? "by-end" : "after-end";
}

function sourcesOf(rules: readonly ClaimRule[]): Source[] {
	const seen = new Set<string>();
	return rules
		.map(({ source }) => source)
		.filter(({ id, locator }) => !seen.has(`${id} ${locator}`) && seen.add(`${id} ${locator}`));
}
