/**
 * Gives one mail to the shop's mail server: SMTP, RFC 5321. What matters is what is known afterwards: taken, refused, not
 * taken, or not clear. From the moment at which the text was begun until the server's answer to it, nothing is known.
 */
import { Readable } from "node:stream";
import SMTPConnection from "nodemailer/lib/smtp-connection";
import { tlsFailure } from "./tls-failure.ts";

export interface MailServer {
	readonly host: string;
	readonly port: number;
	/**
	 * TLS from the first byte on (RFC 8314), by STARTTLS (RFC 3207), or none. Never "where the server has it": whoever can
	 * change what the server says would take that away.
	 */
	readonly tls: "from-start" | "starttls" | "none";
	/** Roots that are trusted in place of those that come with Node.js. */
	readonly caPem: string | null;
	readonly credentials: { readonly user: string; readonly pass: string } | null;
}

export interface SendOutcome {
	/** `again`: not taken, and worth another try. */
	readonly state: "sent" | "refused" | "again" | "unclear";
	/** The server's last answer, or what happened, in one line. */
	readonly answer: string;
}

export interface Envelope {
	readonly from: string;
	readonly to: string;
}

/** For how long one mail may take. Our choice; shorter than a mail counts as being sent (`send-due-mail.ts`). */
const WAIT_S = 60;
/** At a stop: for how long the answer to a text that was begun is still waited for. Our choice. */
const STOP_WAIT_S = 10;
/** Answers are kept up to this length. Our choice. */
const ANSWER_MOST = 500;

/** @param stop ends the try at once */
export async function sendBySmtp(
	server: MailServer,
	envelope: Envelope,
	bytes: Uint8Array,
	stop: AbortSignal,
	waitS = WAIT_S,
): Promise<SendOutcome> {
	const { host, port, tls, caPem, credentials } = server;
	const connection = new SMTPConnection({
		host,
		port,
		secure: tls === "from-start",
		requireTLS: tls === "starttls",
		ignoreTLS: tls === "none",
		tls: caPem === null ? {} : { ca: caPem },
		logger: false,
	});
	let begun = false;
	const message = Readable.from(
		(function* () {
			begun = true;
			yield bytes;
		})(),
		{ objectMode: false },
	);
	const timers: NodeJS.Timeout[] = [];
	let atStop = () => {};
	const broken = new Promise<never>((_resolve, reject) => {
		const after = (seconds: number, why: string) => {
			timers.push(setTimeout(() => reject(new Error(why)), seconds * 1000));
		};
		after(waitS, `no answer within ${waitS} s`);
		atStop = () => after(begun ? STOP_WAIT_S : 0, "the service was stopped");
		if (stop.aborted) atStop();
		else stop.addEventListener("abort", atStop, { once: true });
		connection.once("error", reject);
	});
	try {
		const given = giveTo(connection, credentials, envelope, message);
		// Whichever comes second has nobody who waits for it.
		given.catch(() => {});
		broken.catch(() => {});
		return { state: "sent", answer: oneLineOf(await Promise.race([given, broken])) };
	} catch (error) {
		return outcomeOf(error as SMTPConnection.SMTPError, begun);
	} finally {
		for (const timer of timers) clearTimeout(timer);
		stop.removeEventListener("abort", atStop);
		connection.close();
	}
}

/** The server's answer to the text. */
async function giveTo(
	connection: SMTPConnection,
	credentials: MailServer["credentials"],
	envelope: Envelope,
	message: Readable,
): Promise<string> {
	await new Promise<void>((done, failed) => {
		connection.connect((error) => (error ? failed(error) : done()));
	});
	if (credentials !== null) {
		await new Promise<void>((done, failed) => {
			connection.login({ credentials }, (error) => (error ? failed(error) : done()));
		});
	}
	return new Promise((done, failed) => {
		connection.send({ from: envelope.from, to: envelope.to }, message, (error, info) =>
			error ? failed(error) : done(info.response),
		);
	});
}

function outcomeOf(error: SMTPConnection.SMTPError, begun: boolean): SendOutcome {
	const { responseCode, command = "", response, message } = error;
	const failure = begun ? null : tlsFailure(error);
	// Worth another try: a shop mends its server's certificate, or its settings.
	if (failure !== null) return { state: "again", answer: oneLineOf(`${failure} (${message})`) };
	if (responseCode === undefined) return { state: begun ? "unclear" : "again", answer: oneLineOf(message) };
	// A refusal of this mail, not of the shop's way in: RFC 5321, 4.2.1, 5yz is permanent.
	if (["MAIL FROM", "RCPT TO", "DATA"].includes(command) && responseCode >= 500) {
		return { state: "refused", answer: oneLineOf(response ?? message) };
	}
	return { state: "again", answer: oneLineOf(message) };
}

function oneLineOf(text: string): string {
	return text.replace(/\s+/g, " ").trim().slice(0, ANSWER_MOST);
}
