/**
 * The dates of a claim as a calendar (RFC 5545): one all-day event on each safe date, with a reminder three days and one day
 * before. Lines end in CRLF and are folded at 75 octets (section 3.1); commas, semicolons and line ends in texts are escaped
 * (section 3.3.11). No name of a person stands in it.
 */
import { addDays } from "../../calculations/civil-date.ts";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { watchedPeriods } from "./watched-periods.ts";

/** Days before a date at which a calendar reminds. Source: our choice. */
const REMIND_DAYS = [3, 1];

export function claimCalendar(claim: LegClaimView, now: Date): string {
	const stamp = `${now.toISOString().slice(0, 19).replaceAll(/[-:]/g, "")}Z`;
	return [
		"BEGIN:VCALENDAR",
		"VERSION:2.0",
		"PRODID:-//handover-risk//claim periods//EN",
		"CALSCALE:GREGORIAN",
		...watchedPeriods(claim).flatMap((period) => (period.safeDate === null ? [] : eventOf(claim, period, stamp))),
		"END:VCALENDAR",
	]
		.map((line) => `${folded(line)}\r\n`)
		.join("");
}

function eventOf(claim: LegClaimView, period: LegClaimView["periods"][number], stamp: string): string[] {
	const on = period.safeDate as string;
	const isRead = period.standing === "published";
	const title = say(isRead ? "periods.event" : "periods.event-recalled", { what: period.what });
	const about = [
		period.article,
		say(`periods.consequence.${period.consequence}` as TextKey),
		say(`periods.form.${period.form}` as TextKey),
		period.readOn === null ? say("periods.not-read") : say("periods.read-on", { date: period.readOn }),
		say("claims.general"),
	].join("\n");
	return [
		"BEGIN:VEVENT",
		`UID:${claim.consignmentId}-${period.ruleId}@handover-risk`,
		`DTSTAMP:${stamp}`,
		`SEQUENCE:${claim.version}`,
		`DTSTART;VALUE=DATE:${on.replaceAll("-", "")}`,
		`DTEND;VALUE=DATE:${addDays(on, 1).replaceAll("-", "")}`,
		`SUMMARY:${escaped(title)}`,
		`DESCRIPTION:${escaped(about)}`,
		"TRANSP:TRANSPARENT",
		...REMIND_DAYS.flatMap((days) => [
			"BEGIN:VALARM",
			"ACTION:DISPLAY",
			`TRIGGER:-P${days}D`,
			`DESCRIPTION:${escaped(title)}`,
			"END:VALARM",
		]),
		"END:VEVENT",
	];
}

function escaped(text: string): string {
	return text.replaceAll(/[\\;,]/g, (sign) => `\\${sign}`).replaceAll("\n", "\\n");
}

/** Continued on lines that begin with a space, 75 octets at most each, no character cut. */
function folded(line: string): string {
	const lines = [""];
	let octets = 0;
	for (const character of line) {
		const size = Buffer.byteLength(character, "utf8");
		if (octets + size > 75) {
			lines.push(" ");
			octets = 1;
		}
		lines[lines.length - 1] += character;
		octets += size;
	}
	return lines.join("\r\n");
}
