/** A refused member in the words of whoever fills in a page: what to enter, never how a request names it. */
import type { BadMember } from "../../faults.ts";
import { badMemberWords } from "../../texts/fault-words.ts";
import { say, type TextKey } from "../../texts/say.ts";

/** The patterns of the contract that a form's field can miss, as the shapes write them. */
const OF_PATTERN: Readonly<Record<string, TextKey>> = {
	"/^[A-Z]{2}$/": "form.bad.country",
	"/^[A-Z]{3}$/": "form.bad.currency",
	"/^[A-Za-z0-9]{1,5}$/": "form.bad.region",
	"/^[0-9]{6}$/": "form.bad.code",
};
/** Ids of ours: a page offers them as a list. */
const ID_PATTERN = /^\/\^[a-z]{3}_/;
/** Reasons of the shapes that name members of a request. */
const OF_REASON: Readonly<Record<string, TextKey>> = {
	"the year must lie between 1970 and 2200": "form.bad.year",
	"U+0000 cannot be stored": "arrival.bad.text",
	"the text holds half of a surrogate pair": "arrival.bad.text",
	"a test is named where one is asked for or offered, and nowhere else": "form.bad.test-named",
};

/** Message and mend in one. */
export function pageWords({ path, code, facts = {} }: BadMember): string {
	const fact = (name: string) => String(facts[name] ?? "");
	switch (code) {
		case "wrong-type":
			return wrongType(path, fact("expected"));
		case "too-small":
			return tooSmall(path, fact("least"), fact("of"));
		case "too-big":
			return tooBig(path, fact("most"), fact("of"));
		case "not-in-list":
		case "no-such-record":
		case "unknown-class":
			return say("arrival.bad.choice");
		case "unknown-id":
			return say(/holidays\/(country|region)$/.test(path) ? "form.bad.no-holidays" : "arrival.bad.choice");
		case "wrong-format":
			return wrongFormat(fact("format"), fact("pattern"));
		case "wrong-form":
			return say("form.bad.incomplete");
		case "unknown-member":
			return say("form.bad.not-asked");
		case "null-character":
		case "lone-surrogate":
			return say("arrival.bad.text");
		case "not-a-report":
			return say("form.bad.not-a-report");
		case "refused":
			return refused(fact("why"));
		default: {
			const { message, mend } = badMemberWords(code, facts);
			return `${message} ${mend}`;
		}
	}
}

function wrongType(path: string, expected: string): string {
	if (expected === "int") return say("arrival.bad.whole");
	if (expected === "number") {
		if (path.endsWith("/amount")) return say("form.bad.amount");
		return `${say("arrival.bad.number")} ${say("form.bad.thousands")}`;
	}
	return say(expected === "string" ? "form.bad.words" : "arrival.bad.choice");
}

function tooSmall(path: string, least: string, of: string): string {
	if (of === "string" || of === "array" || of === "set") {
		if (of === "string" && least !== "1") return say("form.bad.too-short", { least });
		if (of === "string") return Object.values(badMemberWords("missing")).join(" ");
		return say("form.bad.too-few", { least });
	}
	if (of === "number-beyond") return say("form.bad.above", { least });
	return say("arrival.bad.too-small", { minimum: least + unitOf(path) });
}

function tooBig(path: string, most: string, of: string): string {
	if (of === "string") return say("arrival.bad.too-long", { maximum: most });
	if (of === "array" || of === "set") return say("form.bad.too-many", { most });
	if (of === "number-beyond") return say("form.bad.below", { most: most + unitOf(path) });
	return say("arrival.bad.too-large", { maximum: most + unitOf(path) });
}

/** A page may ask in millimetres what a request says in metres, so a bound says its own unit. */
function unitOf(path: string): string {
	return /[a-z]M$/.test(path) ? " m" : /[a-z]Kg$/.test(path) ? " kg" : "";
}

function wrongFormat(format: string, pattern: string): string {
	if (format === "date") return say("form.bad.date");
	if (format === "datetime") return say("arrival.bad.time");
	if (format === "email") return say("form.bad.e-mail");
	if (ID_PATTERN.test(pattern)) return say("arrival.bad.choice");
	return say(OF_PATTERN[pattern] ?? "form.bad.as-hinted");
}

/** A shape's own reason, as a sentence. */
function refused(why: string): string {
	const key = OF_REASON[why];
	if (key !== undefined) return say(key);
	return `${why.slice(0, 1).toUpperCase()}${why.slice(1)}.`;
}
