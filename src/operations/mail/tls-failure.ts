/** Why no protected line to the mail server came about, in words for the shop: nothing of the mail was sent over it. */
import type SMTPConnection from "nodemailer/lib/smtp-connection";
import { say, type TextKey } from "../../texts/say.ts";

/** What Node.js and OpenSSL say of a certificate, from the narrower to the wider. */
const SAID: readonly (readonly [RegExp, TextKey])[] = [
	[/does not match certificate's altnames/i, "mail.tls.other-name"],
	[/has expired|not yet valid/i, "mail.tls.out-of-time"],
	[/self-signed|local issuer|verify the first|unable to (get|verify)/i, "mail.tls.not-trusted"],
	[/wrong version number|packet length too long/i, "mail.tls.speaks-plain"],
];

/** Null where it was something else. */
export function tlsFailure(error: SMTPConnection.SMTPError): string | null {
	const found = SAID.find(([pattern]) => pattern.test(error.message));
	if (found !== undefined) return say(found[1], {});
	const isRefusal = error.code === "ETLS" || error.command === "STARTTLS" || /STARTTLS/.test(error.message);
	return isRefusal ? say("mail.tls.not-offered", {}) : null;
}
