/**
 * The line to the mail server: RFC 3207 (STARTTLS) and RFC 8314, 3.3 (TLS from the first byte), names by RFC 9525, against a
 * mail server process with certificates that `openssl` made under an authority of its own. What a server heard shows what went
 * over the line, so that a mail that was "not sent" did not tell an address either.
 */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { sendDueMail } from "../../../src/operations/mail/send-due-mail.ts";
import { type MailServer, sendBySmtp } from "../../../src/operations/mail/smtp-sender.ts";
import { mailingOf } from "../../../src/start/mailing.ts";
import { readSettings } from "../../../src/start/settings.ts";
import { type MailCertificates, mailCertificates } from "../../setup/mail-certificates.ts";
import { type MailServerProcess, mailServer } from "../../setup/mail-server.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { type MailScene, mailScene, OWNER_MAIL } from "./mail-scene.ts";

const CREDENTIALS = { user: "bench", pass: "an invented secret" };
const never = new AbortController().signal;

let certificates: MailCertificates;
let shop: TestApp;
let scene: MailScene;
let servers: Record<
	"starttls" | "fromStart" | "otherName" | "selfSigned" | "selfSignedFromStart" | "plain",
	MailServerProcess
>;
beforeAll(async () => {
	certificates = mailCertificates();
	const right = certificates.of("localhost", "authority");
	const alone = certificates.of("localhost", "itself");
	shop = await testApp({ canMail: true });
	servers = {
		starttls: await mailServer({ ...CREDENTIALS, tlsFolder: right }),
		fromStart: await mailServer({ ...CREDENTIALS, tlsFolder: right, fromStart: true }),
		otherName: await mailServer({ tlsFolder: certificates.of("mail.lindental.example", "authority") }),
		selfSigned: await mailServer({ tlsFolder: alone }),
		selfSignedFromStart: await mailServer({ tlsFolder: alone, fromStart: true }),
		plain: await mailServer(CREDENTIALS),
	};
});
afterAll(async () => {
	await Promise.all([shop.close(), ...Object.values(servers).map((server) => server.remove())]);
	certificates.remove();
});
beforeEach(async () => {
	scene = await mailScene(shop);
	await scene.queue({ kind: "receipt", recordId: scene.departureId });
});
afterEach(async () => {
	await shop.db.database.query("DELETE FROM mail");
	for (const server of Object.values(servers)) server.clear();
});

/** One try, and what the shop reads of it afterwards. */
async function tried(name: keyof typeof servers, over: Partial<MailServer>) {
	const server: MailServer = {
		host: "localhost",
		port: servers[name].port,
		tls: "starttls",
		caPem: certificates.caPem,
		credentials: null,
		...over,
	};
	const outcome = await sendDueMail(
		shop.deps,
		{
			from: { name: "Werkbank Lindental", address: "post@lindental.example" },
			give: (envelope, bytes, stop) => sendBySmtp(server, envelope, bytes, stop, 20),
		},
		never,
	);
	const [mail] = (await scene.mails()).mails;
	return { outcome, state: mail?.state, answer: mail?.answer ?? "", nextTryAt: mail?.nextTryAt ?? null };
}

describe("a server with a certificate of the authority that the shop names", () => {
	it.each([
		["by STARTTLS", "starttls", "starttls"],
		["from the first byte on", "fromStart", "from-start"],
	] as const)("%s gets the mail, and everything over TLS", async (_, name, tls) => {
		expect(await tried(name, { tls, credentials: CREDENTIALS })).toMatchObject({ outcome: "sent", state: "sent" });
		const [mail] = servers[name].taken();
		expect(mail).toMatchObject({ to: OWNER_MAIL, envelope: { secure: true }, defects: [] });
		expect(servers[name].heard()).toEqual(["password over TLS", "sender over TLS", "recipient over TLS"]);
	});
});

describe("nothing is said, and the mail waits to be tried again with a reason, where", () => {
	const own = (over: Partial<MailServer> = {}) => ({ caPem: null, ...over });
	it.each([
		["the certificate is for another name", "otherName", {}, "is for another name"],
		[
			"the shop's address of the server is not the name in it",
			"starttls",
			{ host: "127.0.0.1" },
			"is for another name",
		],
		["it is signed by itself", "selfSigned", own(), "from nobody whom this machine trusts"],
		["it is signed by itself, from the first byte", "selfSignedFromStart", own({ tls: "from-start" }), "from nobody"],
		["it is signed by itself and another root is named", "selfSigned", {}, "from nobody whom this machine trusts"],
		["its authority is not named", "starttls", own(), "The root of an authority of your own is named in SMTP_CA"],
		["the server offers no STARTTLS", "plain", {}, "takes no encrypted line (STARTTLS)"],
		["it does not begin with TLS", "plain", { tls: "from-start" }, "does not begin with TLS at this port"],
	] as const)("%s", async (_, name, over, reason) => {
		const after = await tried(name, { credentials: CREDENTIALS, ...over });
		expect(after).toMatchObject({ outcome: "again", state: "queued", nextTryAt: expect.any(String) });
		expect(after.answer).toContain(reason);
		expect(servers[name].heard()).toEqual([]);
		expect(servers[name].taken()).toEqual([]);
	});
});

it("a mail that a wrong certificate held back goes once the certificate is trusted", async () => {
	expect((await tried("starttls", { caPem: null })).outcome).toBe("again");
	await shop.db.database.query("UPDATE mail SET next_try_at = clock_timestamp()");
	expect((await tried("starttls", { credentials: CREDENTIALS })).outcome).toBe("sent");
	expect(servers.starttls.taken()).toHaveLength(1);
});

it("where the shop says that the line needs no protection, none is tried, though the server offers it", async () => {
	expect(await tried("selfSigned", { tls: "none" })).toMatchObject({ outcome: "sent", state: "sent" });
	expect(servers.selfSigned.taken()[0]).toMatchObject({ to: OWNER_MAIL, envelope: { secure: false } });
});

it("roots are read when the service starts; a file that holds none stops the start with its name", async () => {
	const folder = certificates.of("localhost", "authority");
	const settings = (SMTP_CA: string) => readSettings({ SMTP_URL: "smtp://x", MAIL_FROM: "a@b.example", SMTP_CA });
	expect(await mailingOf(settings(certificates.caPath))).not.toBeNull();
	for (const file of [`${folder}/key.pem`, `${folder}/none.pem`])
		await expect(mailingOf(settings(file))).rejects.toThrow(`setting SMTP_CA: ${file}: `);
});
