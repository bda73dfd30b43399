/** Times and figures as pages and reports write them. */
import type { Language } from "./language.ts";

const MONTHS: Readonly<Record<Language, readonly string[]>> = {
	en: ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
	de: "Januar Februar März April Mai Juni Juli August September Oktober November Dezember".split(" "),
	fr: "janvier février mars avril mai juin juillet août septembre octobre novembre décembre".split(" "),
};

/**
 * An instant on a clock that is `offset` from UTC (such as `+01:00`), the difference written beside it. Every language
 * has day, name of the month, year: no order of figures can be mistaken.
 */
export function showTime(time: string | Date, offset = "+00:00", language: Language = "en"): string {
	const local = new Date(new Date(time).getTime() + minutesOf(offset) * 60_000);
	if (Number.isNaN(local.getTime())) return String(time);
	const [date = "", clock = ""] = local.toISOString().split("T");
	const [year, month, day] = date.split("-");
	const zone = minutesOf(offset) === 0 ? "UTC" : `UTC${offset.replace("-", "−")}`;
	const named = `${dayOf(Number(day), language)} ${MONTHS[language][Number(month) - 1]} ${year}`;
	return `${named}, ${clock.slice(0, 5)} (${zone})`;
}

/** A civil date, `YYYY-MM-DD`, as a person writes it. */
export function showDay(date: string, language: Language = "en"): string {
	const [year, month, day] = date.split("-");
	const name = MONTHS[language][Number(month) - 1];
	return name === undefined ? date : `${dayOf(Number(day), language)} ${name} ${year}`;
}

function dayOf(day: number, language: Language): string {
	if (language === "de") return `${day}.`;
	return language === "fr" && day === 1 ? "1er" : String(day);
}

/** Minutes of an offset such as `+05:30`. */
export function minutesOf(offset: string): number {
	const parts = /^([+-])(\d\d):(\d\d)$/.exec(offset);
	if (parts === null) return 0;
	return (Number(parts[2]) * 60 + Number(parts[3])) * (parts[1] === "-" ? -1 : 1);
}

/** An offset in minutes in the form `+05:30`. */
export function offsetOf(minutes: number): string {
	const size = Math.abs(minutes);
	const two = (value: number) => String(Math.trunc(value)).padStart(2, "0");
	return `${minutes < 0 ? "-" : "+"}${two(size / 60)}:${two(size % 60)}`;
}

/** A fingerprint in groups of four, so that people can compare it. */
export function groupsOfFour(hex: string): string {
	return hex.match(/.{1,4}/g)?.join(" ") ?? "";
}
