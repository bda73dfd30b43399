/**
 * A mail server as a process of its own (`smtp-server`), for tests: it writes what it takes into a folder, one file per mail
 * with the envelope on its first line, and does with each mail what the file `how.json` in that folder says at the moment.
 */
import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { setTimeout as sleep } from "node:timers/promises";
import { SMTPServer, type SMTPServerOptions } from "smtp-server";

interface How {
	/** Answers to RCPT TO and to the text; 250 where none is named. */
	readonly recipient?: { readonly code: number; readonly text: string };
	readonly text?: { readonly code: number; readonly text: string };
	/** Seconds before the answer to the text. */
	readonly answerAfterS?: number;
	/** Seconds before the greeting. */
	readonly greetAfterS?: number;
	/** How many mails `recipient` and `text` meet; all where none is named. */
	readonly times?: number;
	/** Counts what was said to do: the times are counted anew with each. */
	readonly round?: number;
}

const [folder = "", port = "0", user = "", pass = "", tlsFolder = "", tlsFrom = ""] = process.argv.slice(2);
let taken = 0;
let met = 0;
let round = 0;

/** What to do with this mail. */
function how(): How {
	const said = JSON.parse(readFileSync(`${folder}/how.json`, "utf8")) as How;
	if (said.round !== round) [met, round] = [0, said.round ?? 0];
	return said;
}
function refusal(answer: How["text"], { times }: How): Error | null {
	if (answer === undefined || (times !== undefined && met >= times)) return null;
	met += 1;
	return Object.assign(new Error(answer.text), { responseCode: answer.code });
}

/** Notes that something of a mail, or of the way in, came over the line. */
function heard(what: string, isSecure: boolean): void {
	appendFileSync(`${folder}/heard.txt`, `${what} ${isSecure ? "over TLS" : "in plain"}\n`);
}

const options: SMTPServerOptions = {
	authOptional: user === "",
	disabledCommands: tlsFolder === "" ? ["STARTTLS"] : [],
	...(tlsFolder === ""
		? {}
		: { key: readFileSync(`${tlsFolder}/key.pem`), cert: readFileSync(`${tlsFolder}/cert.pem`) }),
	secure: tlsFrom === "start",
	allowInsecureAuth: true,
	onConnect: (_session, callback) => {
		sleep((how().greetAfterS ?? 0) * 1000).then(() => callback());
	},
	onAuth: (auth, session, callback) => {
		heard("password", session.secure);
		if (auth.username === user && auth.password === pass) return callback(null, { user });
		return callback(Object.assign(new Error("no such user"), { responseCode: 535 }));
	},
	onMailFrom: (_address, session, callback) => {
		heard("sender", session.secure);
		callback();
	},
	onRcptTo: (_address, session, callback) => {
		heard("recipient", session.secure);
		callback(refusal(how().recipient, how()));
	},
	onData: (stream, session, callback) => {
		const parts: Buffer[] = [];
		stream.on("data", (part: Buffer) => parts.push(part));
		stream.on("end", () => {
			const refused = refusal(how().text, how());
			if (refused !== null) return callback(refused);
			const { mailFrom, rcptTo } = session.envelope;
			const envelope = {
				from: mailFrom === false ? "" : mailFrom.address,
				to: rcptTo.map(({ address }) => address),
				secure: session.secure,
			};
			taken += 1;
			const file = `${folder}/${String(taken).padStart(4, "0")}-${process.pid}`;
			writeFileSync(`${file}.json`, JSON.stringify(envelope));
			writeFileSync(`${file}.eml`, Buffer.concat(parts));
			return sleep((how().answerAfterS ?? 0) * 1000).then(() => callback());
		});
	},
};
const server = new SMTPServer(options);
server.on("error", () => {});
server.listen(Number(port), "127.0.0.1", () => {
	const address = server.server.address();
	console.log(`listens on ${typeof address === "object" ? address?.port : address}`);
});
