/**
 * Mails through a mail server process on this machine (`smtp-server`), read back with Python's `email`. What is claimed is
 * RFC 5321: a mail counts as taken with the answer 250 to its text, 4yz may be tried again, 5yz not (4.2.1). Pauses, tries
 * and waits are our own choice, tested as such.
 */
import { setTimeout as sleep } from "node:timers/promises";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { holdRestoredMails } from "../../../src/database/mail.ts";
import {
	type GiveToServer,
	type Mailing,
	MOST_TRIES,
	sendDueMail,
} from "../../../src/operations/mail/send-due-mail.ts";
import { type MailServer, sendBySmtp } from "../../../src/operations/mail/smtp-sender.ts";
import { startMailing } from "../../../src/start/mailing.ts";
import { type MailServerProcess, mailServer } from "../../setup/mail-server.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { type MailScene, mailScene, OWNER_MAIL, urlIn } from "./mail-scene.ts";

const FROM = { name: "Werkbank Lindental", address: "post@lindental.example" };
const never = new AbortController().signal;

let shop: TestApp;
let scene: MailScene;
let server: MailServerProcess;
beforeAll(async () => {
	[shop, server] = await Promise.all([testApp({ canMail: true }), mailServer()]);
});
afterAll(() => Promise.all([shop.close(), server.remove()]));
beforeEach(async () => {
	scene = await mailScene(shop);
	server.clear();
});
afterEach(async () => {
	await shop.db.database.query("DELETE FROM mail");
});

const serverOf = (over: Partial<MailServer> = {}): MailServer => ({
	host: "127.0.0.1",
	port: server.port,
	tls: "none",
	caPem: null,
	credentials: null,
	...over,
});
const through =
	(waitS = 20, over: Partial<MailServer> = {}): GiveToServer =>
	(envelope, bytes, stop) =>
		sendBySmtp(serverOf(over), envelope, bytes, stop, waitS);
const look = (over: Partial<Mailing> = {}, leaseS?: number) =>
	sendDueMail(shop.deps, { from: FROM, give: through(), ...over }, never, leaseS);
const makeDue = () => shop.db.database.query("UPDATE mail SET next_try_at = clock_timestamp() WHERE state = 'queued'");
const only = async () => {
	const { mails } = await scene.mails();
	expect(mails).toHaveLength(1);
	return mails[0] as (typeof mails)[0];
};

describe("a link's address", () => {
	it("is made when the mail is written, works with the code that was shown, and stands nowhere in the database", async () => {
		const link = await scene.makeLink();
		await scene.queue({ kind: "link", linkId: link.id });
		const rows = JSON.stringify(await shop.db.database.query("SELECT to_jsonb(m) FROM mail m"));
		expect(await look()).toBe("sent");
		expect(await look()).toBe("nothing-due");
		const [mail] = server.taken();
		expect(mail).toMatchObject({
			from: "Werkbank Lindental <post@lindental.example>",
			to: OWNER_MAIL,
			defects: [],
			envelope: { from: FROM.address, to: [OWNER_MAIL] },
			messageId: `<${(await only()).id}@lindental.example>`,
		});
		const url = urlIn(mail?.text ?? "");
		expect(url).not.toBe(link.url);
		expect(mail?.text).not.toContain(link.code);
		const after = JSON.stringify(await shop.db.database.query("SELECT to_jsonb(m), to_jsonb(l) FROM mail m, link l"));
		for (const secret of [
			OWNER_MAIL,
			"Mara",
			link.code,
			url.split("/").at(-1) ?? "",
			link.url.split("/").at(-1) ?? "",
		]) {
			expect(`${rows}${after}`.includes(`"${secret}`), secret).toBe(false);
			expect(`${rows}${after}`.includes(Buffer.from(secret).toString("hex")), secret).toBe(false);
		}
		expect((await scene.enter(link.url, link.code)).status).toBe(404);
		expect((await scene.enter(url, link.code)).status).toBe(200);
		expect(await only()).toMatchObject({ state: "sent", to: OWNER_MAIL, attempts: 1 });
	});

	it("is not made anew once the link was used, withdrawn or is over; the mail is dropped and says why", async () => {
		const used = await scene.makeLink();
		const withdrawn = await scene.makeLink();
		for (const { id } of [used, withdrawn]) await scene.queue({ kind: "link", linkId: id });
		expect((await scene.enter(used.url, used.code)).status).toBe(200);
		await shop.ask("DELETE", `/api/v1/links/${withdrawn.id}`);
		expect([await look(), await look(), await look()]).toEqual(["dropped", "dropped", "nothing-due"]);
		const { mails } = await scene.mails();
		expect(mails.map(({ state, reason }) => [state, reason])).toEqual([
			["dropped", "link-used"],
			["dropped", "link-over"],
		]);
		expect(server.taken()).toEqual([]);
	});

	it("carries the log's newest checkpoint", async () => {
		await scene.queue({ kind: "link", linkId: (await scene.makeLink()).id });
		const note = (await shop.ask("GET", "/api/v1/log/checkpoint")).body.split("\n");
		await look();
		const text = server.taken()[0]?.text ?? "";
		expect(text).toContain(`the signed log ${note[0]} had ${note[1]} entries`);
		expect(text.replaceAll(" ", "")).toContain(Buffer.from(note[2] ?? "", "base64").toString("hex"));
	});
});

describe("a server that", () => {
	it("is down and then up gets each mail once", async () => {
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		await server.stop();
		expect(await look()).toBe("again");
		expect(await look()).toBe("nothing-due");
		expect(await only()).toMatchObject({ state: "queued", attempts: 1 });
		await server.start();
		await makeDue();
		expect(await look()).toBe("sent");
		expect(server.taken()).toHaveLength(1);
	});

	it.each(["recipient", "text"])(
		"says 4yz to the %s and then takes it, gets it once, and the newest address works",
		async (place) => {
			server.answer({ [place]: { code: 451, text: "4.7.1 try again later" }, times: 1 });
			const link = await scene.makeLink();
			await scene.queue({ kind: "link", linkId: link.id });
			expect(await look()).toBe("again");
			expect((await only()).answer).toContain("451 4.7.1 try again later");
			await makeDue();
			expect(await look()).toBe("sent");
			const taken = server.taken();
			expect(taken).toHaveLength(1);
			expect((await scene.enter(urlIn(taken[0]?.text ?? ""), link.code)).status).toBe(200);
		},
	);

	it.each(["recipient", "text"])(
		"says 5yz to the %s is not asked again, and the page has its answer",
		async (place) => {
			server.answer({ [place]: { code: 550, text: `5.1.1 <${OWNER_MAIL}> unknown` } });
			await scene.queue({ kind: "receipt", recordId: scene.departureId });
			expect(await look()).toBe("refused");
			await makeDue();
			expect(await look()).toBe("nothing-due");
			expect(await only()).toMatchObject({ state: "refused", answer: `550 5.1.1 <${OWNER_MAIL}> unknown` });
			// The answer names a person, so it is under the person's key.
			const [row] = await shop.db.database.query<{ personal: Buffer }>("SELECT personal FROM mail");
			expect(row?.personal.includes("unknown")).toBe(false);
		},
	);

	it("does not greet in time is tried again", async () => {
		server.answer({ greetAfterS: 5 });
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		expect(await look({ give: through(0.5) })).toBe("again");
		expect((await only()).answer).toBe("no answer within 0.5 s");
	});

	it("takes the text and answers too late leaves it unclear; it is not sent again by itself", async () => {
		server.answer({ answerAfterS: 3 });
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		expect(await look({ give: through(0.7) })).toBe("unclear");
		await makeDue();
		expect(await look()).toBe("nothing-due");
		expect(await only()).toMatchObject({ state: "unclear" });
		// It did arrive: to send it again would have been twice.
		expect(server.taken()).toHaveLength(1);
	});

	it("is never there is given up, after pauses that double up to two hours", async () => {
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		const give: GiveToServer = async () => ({ state: "again", answer: "gone" });
		const pauses: number[] = [];
		for (let attempt = 1; attempt <= MOST_TRIES; attempt += 1) {
			expect(await look({ give })).toBe("again");
			const [row] = await shop.db.database.query<{ pause: number }>(
				"SELECT round(extract(epoch FROM next_try_at - clock_timestamp()))::int AS pause FROM mail",
			);
			pauses.push(row?.pause ?? 0);
			await makeDue();
		}
		expect(await look({ give })).toBe("nothing-due");
		expect(await only()).toMatchObject({ state: "given-up", attempts: MOST_TRIES });
		for (const [place, expected] of [60, 120, 240, 480, 960, 1920, 3840, 7200, 7200].entries()) {
			expect(Math.abs((pauses[place] ?? 0) - expected)).toBeLessThanOrEqual(2);
		}
	});
});

describe("credentials", () => {
	const credentials = { user: "bench", pass: "an invented secret" };
	it("let in; wrong ones are tried again, and nothing of them is kept", async () => {
		const strict = await mailServer(credentials);
		try {
			await scene.queue({ kind: "receipt", recordId: scene.departureId });
			const to = (pass: string) => through(20, { port: strict.port, credentials: { ...credentials, pass } });
			expect(await look({ give: to("another") })).toBe("again");
			expect((await only()).answer).toMatch(/535 /);
			await makeDue();
			expect(await look({ give: to(credentials.pass) })).toBe("sent");
			expect(strict.taken()).toHaveLength(1);
		} finally {
			await strict.remove();
		}
	});
});

describe("never twice", () => {
	it("four instances that look at the same moment send each mail once", async () => {
		for (let count = 0; count < 12; count += 1)
			await scene.queue({ kind: "receipt", recordId: scene.departureId, to: `reader-${count}@quist.example` });
		const run = async () => {
			while ((await look()) !== "nothing-due");
		};
		await Promise.all([run(), run(), run(), run()]);
		// Those that an instance had locked were passed over by another, which then found nothing due.
		await run();
		const ids = server.taken().map(({ messageId }) => messageId);
		expect(ids).toHaveLength(12);
		expect(new Set(ids).size).toBe(12);
	});

	it("asked for twice before it was sent, one mail goes; asked for again afterwards, another", async () => {
		const asked = { kind: "receipt", recordId: scene.departureId };
		const path = `/api/v1/orders/${scene.orderId}/mails`;
		const answers = await Promise.all([shop.ask("POST", path, asked), shop.ask("POST", path, asked)]);
		expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 409]);
		while ((await look()) !== "nothing-due");
		expect((await shop.ask("POST", path, asked)).statusCode).toBe(201);
		while ((await look()) !== "nothing-due");
		expect(server.taken()).toHaveLength(2);
	});

	it("what a process was sending when it ended is unclear after its time, and stays so", async () => {
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		void look({ give: () => new Promise(() => {}) }, 1);
		while ((await only()).state !== "sending") await sleep(20);
		expect(await look()).toBe("nothing-due");
		await sleep(1100);
		expect(await look()).toBe("nothing-due");
		expect(await only()).toMatchObject({ state: "unclear", attempts: 1 });
		expect(server.taken()).toEqual([]);
	});

	it("a process that was only slow says afterwards what came of it", async () => {
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		let answer: (() => void) | undefined;
		const slow = look(
			{
				give: () =>
					new Promise((resolve) => {
						answer = () => resolve({ state: "sent", answer: "250 taken" });
					}),
			},
			0,
		);
		while (answer === undefined) await sleep(20);
		expect(await look()).toBe("nothing-due");
		expect(await only()).toMatchObject({ state: "unclear" });
		answer();
		await slow;
		expect(await only()).toMatchObject({ state: "sent", answer: "250 taken" });
	});

	it("after a restore what was due at the backup is unclear, and what is for later stays", async () => {
		const link = await scene.makeLink();
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		await scene.queue({ kind: "reminder", linkId: link.id, afterDays: 5 });
		expect(await holdRestoredMails(shop.db.database)).toBe(1);
		expect((await scene.mails()).mails.map(({ state }) => state)).toEqual(["unclear", "queued"]);
	});

	it("sent again by the shop it is a mail of its own", async () => {
		const first = await scene.queue({ kind: "receipt", recordId: scene.departureId });
		const again = () => shop.ask("POST", `/api/v1/orders/${scene.orderId}/mails/${first.id}/again`);
		expect((await again()).statusCode).toBe(409);
		await look({ give: async () => ({ state: "unclear", answer: "connection lost" }) });
		expect((await again()).statusCode).toBe(201);
		expect(await look()).toBe("sent");
		const { mails } = await scene.mails();
		expect(mails.map(({ state }) => state)).toEqual(["unclear", "sent"]);
		expect(server.taken().map(({ messageId }) => messageId)).toEqual([`<${mails[1]?.id}@lindental.example>`]);
	});
});

it("a stop waits for the answer to a text that was begun, and leaves nothing running", async () => {
	server.answer({ answerAfterS: 1 });
	await scene.queue({ kind: "receipt", recordId: scene.departureId });
	const stop = startMailing(shop.deps, { from: FROM, give: through() }, 0.05);
	while (server.taken().length === 0) await sleep(20);
	await stop();
	expect(await only()).toMatchObject({ state: "sent" });
});
