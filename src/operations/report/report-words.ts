/** Words that several sections of a report share. */
import type { OrderView } from "../../contract/orders.ts";
import type { ClaimedTime } from "../../records/record-statement.ts";
import { quoted, type Words } from "../../reports/report.ts";
import type { ReportKey } from "../../texts/say.ts";
import { offsetOf } from "../../texts/shown-time.ts";
import type { Speaker } from "../../texts/speaker.ts";
import type { SealedRecord } from "../records/record-views.ts";

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

/** How old an item is on a day: in whole months, as a claim asks. */
export function ageWords(boughtOn: string | undefined, on: Date, { say }: Speaker): string {
	if (boughtOn === undefined) return say("report.item-age-none");
	const day = on.toISOString().slice(0, 10);
	return say("report.item-age-of", { boughtOn, months: wholeMonths(boughtOn, day), on: day });
}

/** Between two dates, `YYYY-MM-DD`; 0 where the second comes first. */
function wholeMonths(from: string, to: string): number {
	const [years = 0, months = 0] = [0, 1].map((part) => Number(to.split("-")[part]) - Number(from.split("-")[part]));
	return Math.max(0, 12 * years + months - (to.slice(8) < from.slice(8) ? 1 : 0));
}
