/** A mail as it goes over the wire: RFC 5322 with MIME, UTF-8. */
import MailComposer from "nodemailer/lib/mail-composer";
import type { MailText } from "./compose-mail.ts";

export interface Sender {
	/** Shown name, empty where there is none. */
	readonly name: string;
	/** In its sendable form. */
	readonly address: string;
}

/** @param to in its sendable form */
export function mailBytes(
	mail: MailText,
	{ id, from, to, date }: { readonly id: string; readonly from: Sender; readonly to: string; readonly date: Date },
): Promise<Buffer> {
	const composer = new MailComposer({
		from,
		to: { name: "", address: to },
		subject: mail.subject,
		text: mail.text,
		date,
		// The same at each try, so that a reader's program can tell two copies of one mail.
		messageId: `<${id}@${from.address.slice(from.address.lastIndexOf("@") + 1)}>`,
		// RFC 3834: no programme answers it.
		headers: { "Auto-Submitted": "auto-generated" },
		attachments: mail.attachments.map(({ fileName, mediaType, bytes }) => ({
			filename: fileName,
			contentType: mediaType,
			content: Buffer.from(bytes),
		})),
		disableFileAccess: true,
		disableUrlAccess: true,
	});
	return new Promise((resolve, reject) => {
		composer.compile().build((error, bytes) => (error === null ? resolve(bytes) : reject(error)));
	});
}
