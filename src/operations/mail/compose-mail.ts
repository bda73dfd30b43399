/** What a mail says, from what is known: plain text, a line of subject, attachments. Pure. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { ReportKey } from "../../texts/say.ts";
import { groupsOfFour } from "../../texts/shown-time.ts";
import type { Speaker } from "../../texts/speaker.ts";
import type { CheckpointFacts } from "../log/read-log.ts";

type Stage = "departure" | "arrival" | "bench";
/** What a link is for: a record of a stage, or one of the other scopes. */
export type LinkFor = Stage | "settle" | "reader";

export interface MailFacts {
	readonly orderId: string;
	readonly shop: string;
	/** Maker and model. */
	readonly item: string;
	/** Null where the reader is not known by name. */
	readonly reader: string | null;
	readonly now: Date;
	/** Null while nothing was logged. */
	readonly checkpoint: CheckpointFacts | null;
	readonly about: MailAbout;
}

export type MailAbout =
	| { readonly kind: "link"; readonly for: LinkFor; readonly url: string; readonly until: Date }
	| { readonly kind: "code"; readonly code: string }
	/** `url` null where the link was opened before. */
	| { readonly kind: "reminder"; readonly for: LinkFor; readonly url: string | null; readonly until: Date }
	| {
			readonly kind: "receipt";
			readonly sealedAt: Date;
			readonly fingerprint: string;
			readonly verifyPage: string;
			readonly file: Attachment;
	  }
	| {
			readonly kind: "sealed";
			readonly what: `record-${Stage}` | "position" | "settlement";
			readonly sealedAt: Date;
			readonly fingerprint: string;
			readonly page: string;
			/** Whether the reader gets in by a link alone. */
			readonly byLink: boolean;
	  }
	| {
			readonly kind: "period";
			readonly leg: number;
			readonly what: string;
			readonly date: string;
			readonly leftDays: number;
			readonly article: string;
			/** Whether somebody read the rule in its text. */
			readonly isRead: boolean;
			readonly isSuggested: boolean;
			readonly form: LegClaimView["periods"][number]["form"];
			/** Who can do it by the text of the regime; null where none was read. */
			readonly claimants: LegClaimView["claimants"];
			/** What the reader is on this leg. */
			readonly role: "sender" | "consignee";
			readonly page: string;
			/** Whether the reader gets in by a link alone: the owner. */
			readonly byLink: boolean;
	  };

export interface Attachment {
	readonly fileName: string;
	readonly mediaType: string;
	readonly bytes: Uint8Array;
}

export interface MailText {
	readonly subject: string;
	readonly text: string;
	readonly attachments: readonly Attachment[];
}

/** The mail, in its reader's language. `byHand`: someone copies the text, so nothing is attached by itself. */
export function composeMail(facts: MailFacts, speaker: Speaker, byHand = false): MailText {
	const { about } = facts;
	const { showTime } = speaker;
	const values = { shop: oneLine(facts.shop), item: oneLine(facts.item) };
	const words = (key: ReportKey, more: Readonly<Record<string, string>> = {}) =>
		speaker.say(key, { ...values, ...more });
	const paragraphs = [
		facts.reader === null ? words("mail.hello-nobody") : words("mail.hello", { name: oneLine(facts.reader) }),
		...bodyOf(about, words, showTime, byHand),
		`${words("mail.answer-shop")}\n${words("mail.order", { order: facts.orderId })}`,
		...checkpointOf(facts, words, showTime),
	];
	return {
		subject: oneLine(words(subjectKey(about), about.kind === "period" ? { date: about.date } : {})),
		text: `${paragraphs.join("\n\n")}\n`,
		attachments: about.kind === "receipt" && !byHand ? [about.file] : [],
	};
}

type Words = (key: ReportKey, more?: Readonly<Record<string, string>>) => string;

const FEW_DAYS = ["periods.left-none", "periods.left-one"] as const;

function subjectKey(about: MailAbout): ReportKey {
	return about.kind === "link" ? `mail.subject.link-${about.for}` : `mail.subject.${about.kind}`;
}

function bodyOf(about: MailAbout, words: Words, showTime: Speaker["showTime"], byHand: boolean): string[] {
	switch (about.kind) {
		case "link":
			return [
				words(`mail.link-${about.for}`),
				about.url,
				words("mail.link-code"),
				words("mail.link-until", { time: showTime(about.until) }),
			];
		case "code":
			return [words("mail.code"), about.code, words("mail.code-text")];
		case "reminder":
			return [
				words(`mail.reminder-${about.for}`),
				...(about.url === null ? [words("mail.reminder-open")] : [words("mail.reminder-new"), about.url]),
				words("mail.link-until", { time: showTime(about.until) }),
				words("mail.reminder-done"),
			];
		case "receipt":
			return [
				words(byHand ? "mail.receipt-by-hand" : "mail.receipt", { time: showTime(about.sealedAt) }),
				`${words("mail.fingerprint")}\n${groupsOfFour(about.fingerprint)}`,
				words("mail.receipt-how", { address: about.verifyPage }),
			];
		case "sealed":
			return [
				words(`mail.sealed-${about.what}`, { time: showTime(about.sealedAt) }),
				`${words("mail.fingerprint")}\n${groupsOfFour(about.fingerprint)}`,
				`${words("mail.sealed-where")}\n${about.page}`,
				...(about.byLink ? [words("mail.sealed-how")] : []),
			];
		case "period": {
			const { what, date, leftDays, article, claimants } = about;
			const who = claimants?.who ?? "not-read";
			const left =
				leftDays > 1 ? words("periods.left", { days: String(leftDays) }) : words(FEW_DAYS[leftDays] ?? FEW_DAYS[0]);
			return [
				words("mail.period", { leg: String(about.leg), what, date, left, article }),
				words("mail.period-form", { form: words(`periods.form.${about.form}`) }),
				`${words(`mail.period-you-${about.role}`)} ${words(`mail.period-who-${who}`, { document: claimants?.document ?? "" })}`,
				...(about.byLink ? [words("mail.period-agree")] : []),
				...(about.isRead ? [] : [words("mail.period-from-memory")]),
				...(about.isSuggested ? [words("mail.period-suggested")] : []),
				`${words("mail.period-where")}\n${about.page}`,
				...(about.byLink ? [words("mail.sealed-how")] : []),
			];
		}
	}
}

function checkpointOf({ checkpoint, now }: MailFacts, words: Words, showTime: Speaker["showTime"]): string[] {
	if (checkpoint === null) return [];
	const { origin, size, rootSha256 } = checkpoint;
	const at = { time: showTime(now), origin, size: String(size) };
	return [`${words("mail.checkpoint", at)}\n${groupsOfFour(rootSha256)}\n${words("mail.checkpoint-why")}`];
}

/** A text without line breaks and other control characters, so that nothing someone typed begins a line of its own. */
export function oneLine(text: string): string {
	return text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();
}
