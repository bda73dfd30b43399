/** A mail's text to copy, and the way into the mail program of this device. */
import type { MailTextView } from "../../../contract/mail.ts";
import { say } from "../../../texts/say.ts";
import { safeUrl } from "../../safe-url.ts";
import { MailAddress } from "./mail-address.tsx";

export function MailText({ mail, attachment }: { readonly mail: MailTextView; readonly attachment?: string }) {
	const lines = mail.text.split("\n").length;
	return (
		<>
			<dl class="facts">
				<dt>{say("mail.text-to")}</dt>
				<dd>
					<MailAddress address={mail.to} />
				</dd>
			</dl>
			<div class="field">
				<label for="mail-subject">{say("mail.text-subject")}</label>
				<input id="mail-subject" class="long" readOnly value={mail.subject} />
			</div>
			<div class="field">
				<label for="mail-body">{say("mail.text-body")}</label>
				<textarea id="mail-body" readOnly rows={Math.min(lines + 6, 30)}>
					{mail.text}
				</textarea>
			</div>
			{attachment !== undefined && (
				<p>
					{say("mail.text-attach")} <a href={attachment}>{attachment.split("/").slice(-2).join(" ")}</a>
				</p>
			)}
			<p>
				<a class="button" href={safeUrl(mailtoOf(mail))}>
					{say("mail.text-open")}
				</a>
			</p>
		</>
	);
}

/** RFC 6068: line breaks are CR LF, everything percent-encoded. */
export function mailtoOf({ to, subject, text }: MailTextView): string {
	const body = encodeURIComponent(text.replaceAll("\n", "\r\n"));
	return `mailto:${encodeURIComponent(to ?? "").replace("%40", "@")}?subject=${encodeURIComponent(subject)}&body=${body}`;
}
