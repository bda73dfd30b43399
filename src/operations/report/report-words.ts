/** Words that several sections of a report share. */
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { ClaimedTime } from "../../records/record-statement.ts";
import { quoted, type Words } from "../../reports/report.ts";
import type { ReportKey } from "../../texts/say.ts";
import { offsetOf } from "../../texts/shown-time.ts";
import type { Speaker } from "../../texts/speaker.ts";
import { localDate, offsetMinutesOf } from "../claims/local-date.ts";
import type { SealedRecord } from "../records/record-views.ts";
import type { ReportFacts } from "./report-facts.ts";

/** A text that a statement holds; null once erased. */
export function told(text: string | null, { say }: Speaker): string {
	return text ?? say("report.erased");
}

/** A text that someone typed, in whatever language it is. */
export function typedText(text: string | null, speaker: Speaker): Words {
	return text === null ? told(null, speaker) : quoted(text);
}

/** A claimed time on its holder's clock. */
export function claimed({ at, offsetMinutes }: ClaimedTime, { showTime }: Speaker): string {
	return showTime(at, offsetOf(offsetMinutes));
}

export function nameOfParty(order: OrderView, partyId: string | null): string {
	return partyId === order.owner.id ? order.owner.name : order.repairer.name;
}

/** `Departure from …`, `Arrival at …`; whether it was only reported stands with it. */
export function titleOf(order: OrderView, { view }: SealedRecord, { say }: Speaker): string {
	const words = say(`spine.${view.stage}` as ReportKey, { name: nameOfParty(order, view.holderId) });
	return view.provenance === "reported-to" ? `${words} (${say("spine.reported")})` : words;
}

export function stateOf({ statement }: SealedRecord, { say }: Speaker): string {
	return say(`arrival.state.${statement.state}` as ReportKey);
}

export function money(
	value: { readonly amount: number; readonly currency: string } | undefined,
	{ writeDigits }: Speaker,
): string | null {
	return value === undefined ? null : `${writeDigits(String(value.amount))} ${value.currency}`;
}

/** A fact under its name; left out where nothing is known. */
export type KnownRow = readonly [ReportKey, Words | null | undefined];

/** Rows of which the value is known. */
export function known({ say }: Speaker, ...rows: readonly KnownRow[]): (readonly [string, Words])[] {
	return rows.flatMap(([key, value]) => (value === null || value === undefined ? [] : [[say(key), value] as const]));
}

/** What was seen of the parcel from outside; null where nothing was entered. */
export function outerDamageWords(seen: string | undefined, { say }: Speaker): string | null {
	return seen === undefined ? null : say(`report.outer-damage.${seen}` as ReportKey);
}

/** Through what something was done, which is all that is known of who did it. */
export function throughWhat(byId: string, { say }: Speaker): string {
	return say(byId.startsWith("lnk_") ? "report.record-by-link" : "report.record-by-account");
}

/** How old an item is, in whole months, on the day on which its newest leg began: a claim asks for the value there and then. */
export function ageWords({ order, legs, asOf, speaker }: ReportFacts): string {
	const { say, showDay } = speaker;
	const { boughtOn } = order.item;
	if (boughtOn === undefined) return say("report.item-age-none");
	const of = (on: string) => ({ boughtOn: showDay(boughtOn), months: wholeMonths(boughtOn, on), on: showDay(on) });
	const begun = legs.flatMap(({ leg, found }) => {
		const on = dayHandedOver(leg, found.departure);
		return on === null ? [] : [{ leg: leg.leg, on }];
	});
	const newest = begun.at(-1);
	if (newest === undefined) return say("report.item-age-of", of(asOf.toISOString().slice(0, 10)));
	return say("report.item-age-handed", { ...of(newest.on), leg: newest.leg });
}

/** As noted of the leg, else as its departure record says, on the clock there; null where neither does. */
function dayHandedOver({ facts }: ConsignmentView, departure: SealedRecord | null): string | null {
	if (facts.dispatchedAt !== undefined) {
		return localDate(new Date(facts.dispatchedAt), offsetMinutesOf(facts.dispatchedAt));
	}
	const observed = departure?.statement.observed;
	return observed === undefined ? null : localDate(new Date(observed.at), observed.offsetMinutes);
}

/** Between two dates, `YYYY-MM-DD`; 0 where the second comes first. */
function wholeMonths(from: string, to: string): number {
	const [years = 0, months = 0] = [0, 1].map((part) => Number(to.split("-")[part]) - Number(from.split("-")[part]));
	return Math.max(0, 12 * years + months - (to.slice(8) < from.slice(8) ? 1 : 0));
}
