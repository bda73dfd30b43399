/** What each kind of mail says and when it is needless. Texts are composed through the API where one copies them, and sent to a server that only keeps them. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { queueNotices } from "../../../src/operations/mail/notice-mails.ts";
import { concernsOwner, queuePeriods } from "../../../src/operations/mail/period-mails.ts";
import { type GiveToServer, sendDueMail } from "../../../src/operations/mail/send-due-mail.ts";
import type { Envelope } from "../../../src/operations/mail/smtp-sender.ts";
import { verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { type ReadMail, readMailBytes } from "../../setup/mail-server.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { ENGLISH_WORDS } from "../../texts/english-words.ts";
import { type MailScene, mailScene, OWNER_MAIL, SHOP_MAIL, urlIn } from "./mail-scene.ts";

const FROM = { name: "", address: "post@lindental.example" };
const never = new AbortController().signal;
let shop: TestApp;
let scene: MailScene;
let taken: { readonly envelope: Envelope; readonly bytes: Uint8Array }[] = [];
const give: GiveToServer = async (envelope, bytes) => {
	taken.push({ envelope, bytes });
	return { state: "sent", answer: "250 kept" };
};
beforeAll(async () => {
	shop = await testApp({ canMail: true });
	await queueNotices(shop.deps);
});
afterAll(() => shop.close());
beforeEach(async () => {
	scene = await mailScene(shop);
	await shop.db.database.query("UPDATE mail_progress SET log_size = (SELECT max(index) + 1 FROM entry_projection)");
	taken = [];
});
afterEach(() => shop.db.database.query("DELETE FROM mail"));

const send = async (deps = shop.deps) => {
	while ((await sendDueMail(deps, { from: FROM, give }, never)) !== "nothing-due");
	return readMailBytes(taken.map(({ bytes }) => bytes));
};
/** Without those of orders of the tests before, whose dates are as near. */
const ofOrder = (mails: readonly ReadMail[]) => mails.filter(({ text }) => text.includes(scene.orderId));
const ask = async (path: string, body: object) => shop.ask("POST", `/api/v1/orders/${scene.orderId}/${path}`, body);
const states = async () => (await scene.mails()).mails.map(({ state, reason }) => reason ?? state);

describe("the code of a link", () => {
	it("goes by mail only to another address than the link, and is made anew then", async () => {
		const link = await scene.makeLink();
		for (const to of [OWNER_MAIL, OWNER_MAIL.toUpperCase()]) {
			const refused = await ask("mails", { kind: "code", linkId: link.id, to });
			expect(refused.statusCode).toBe(400);
			expect(refused.json().errors).toMatchObject([{ path: "/to" }]);
		}
		await scene.queue({ kind: "code", linkId: link.id, to: "other@quist.example" });
		expect((await ask("mails", { kind: "link", linkId: link.id, to: "Other@quist.example" })).statusCode).toBe(400);
		const second = await scene.makeLink();
		await scene.queue({ kind: "code", linkId: second.id, to: "Third@quist.example" });
		expect((await ask("mails", { kind: "link", linkId: second.id, to: "third@quist.example" })).statusCode).toBe(400);
		const [mail] = await send();
		expect(taken[0]?.envelope.to).toBe("other@quist.example");
		expect(mail?.text).not.toMatch(/\/l\//);
		const code = /^\d{6}$/m.exec(mail?.text ?? "")?.[0] ?? "";
		if (code !== link.code) expect((await scene.enter(link.url, link.code)).status).toBe(401);
		expect((await scene.enter(link.url, code)).status).toBe(200);
	});
});

describe("a reminder", () => {
	it("is queued once for later, and brings the address anew where the link was not opened", async () => {
		const link = await scene.makeLink();
		const input = { kind: "reminder", linkId: link.id, afterDays: 7 };
		const queued = await scene.queue(input);
		const days = (Date.parse(queued.nextTryAt ?? "") - Date.parse(queued.askedAt)) / 86_400_000;
		// An hour more or less where a clock changed on the way.
		expect(Math.abs(days - 7)).toBeLessThan(0.05);
		expect((await ask("mails", input)).statusCode).toBe(409);
		expect(await send()).toEqual([]);
		await shop.db.database.query("UPDATE mail SET next_try_at = clock_timestamp()");
		const [mail] = await send();
		expect((await scene.enter(urlIn(mail?.text ?? ""), link.code)).status).toBe(200);
	});
	it("names no address where the link was opened, and is dropped where it was answered", async () => {
		const link = await scene.makeLink();
		const { cookie } = await scene.enter(link.url, link.code);
		await scene.queue({ kind: "reminder", linkId: link.id });
		const [mail] = await send();
		expect(urlIn(mail?.text ?? "")).toBe("");
		expect(mail?.text).toContain("You have opened it before");
		await scene.seal(scene.recordId, cookie);
		await scene.queue({ kind: "reminder", linkId: link.id });
		await send();
		expect(await states()).toEqual(["sent", "answered"]);
	});
});

it("a receipt is attached whole, and verifies", async () => {
	await scene.queue({ kind: "receipt", recordId: scene.departureId });
	const [mail] = await send();
	expect(mail?.attachments).toMatchObject([
		{ name: `handover-receipt-${scene.departureId}.json`, type: "application/json" },
	]);
	const { outcome, checks } = verifyReceipt(Buffer.from(mail?.attachments[0]?.base64 ?? "", "base64"));
	expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
	expect(outcome).toBe("verified");
	expect(mail?.text).toContain("Hello Mara Quist,");
	const draft = await ask("mails", { kind: "receipt", recordId: scene.recordId });
	expect(draft.json().errors).toMatchObject([{ path: "/recordId" }]);
});

describe("what the other side sealed", () => {
	const notices = async () => {
		await Promise.all([queueNotices(shop.deps), queueNotices(shop.deps), queueNotices(shop.deps)]);
		return send();
	};
	it("is told to the shop and to the owner, each of the other's, once, although three instances look", async () => {
		const link = await scene.makeLink();
		const { cookie } = await scene.enter(link.url, link.code);
		await scene.seal(scene.recordId, cookie);
		const bench = await shop.ask("POST", `/api/v1/orders/${scene.orderId}/records`, {
			stage: "bench",
			content: { observedAt: "2026-03-03T10:00:00+01:00", state: "good", identity: { serialNumber: "OW24-7731-C" } },
		});
		await scene.seal(bench.json().id);
		const position = await shop.ask("POST", `/api/v1/orders/${scene.orderId}/positions`, {
			kind: "states",
			text: "We tested it for a day.",
		});
		expect(position.statusCode, position.body).toBe(201);
		const told = await notices();
		expect(told.map(({ to }) => to)).toEqual([SHOP_MAIL, OWNER_MAIL, OWNER_MAIL]);
		const fingerprint = (await shop.ask("GET", `/api/v1/records/${scene.recordId}`)).json().sealed.fingerprint;
		expect(told[0]?.text.replaceAll(" ", "")).toContain(fingerprint);
		expect(told[1]?.text).toContain("on the bench");
		expect(told[2]?.text).toContain(`http://localhost/orders/${scene.orderId}/positions`);
		expect(await notices()).toHaveLength(3);
	});
	it("is not told where the shop chose so, nor what was sealed before there was a mail server", async () => {
		const answer = await shop.ask("PUT", `/api/v1/orders/${scene.orderId}/mail-choice`, {
			toOwner: false,
			toRepairer: true,
			periods: true,
		});
		expect(answer.statusCode).toBe(204);
		await scene.seal(scene.recordId);
		expect(await notices()).toEqual([]);
		await shop.db.database.query("DELETE FROM mail_progress");
		expect(await notices()).toEqual([]);
	});
});

/** A leg of the owner's card with dates by the HGB, of which the notice of hidden damage comes first. */
async function legWithDates() {
	const put = (path: string, body: object, version: string) =>
		shop.ask("PUT", `/api/v1/consignments/${scene.legId}${path}`, body, { "if-match": version });
	const facts = { mode: "road", bookedBy: "consignor", deliveredAt: "2026-03-02T10:00:00+01:00" };
	expect((await put("", facts, '"v1"')).statusCode).toBe(200);
	const claim = (await put("/claim", { regime: "de-hgb", damage: "not-apparent" }, '"v0"')).json();
	const next = claim.periods.find(({ ruleId }: { ruleId: string }) => ruleId === "DE-HGB438-2");
	const at = (days: number) => ({
		...shop.deps,
		now: () => new Date(Date.parse(`${next.safeDate}T09:00:00Z`) - days * 86_400_000),
	});
	return { put, claim, next, at };
}

it("a date of a claim is told to both sides three days before, once; a notice ends with its sending, an action does not", async () => {
	const { put, claim, next, at } = await legWithDates();
	await queuePeriods(at(4));
	expect(await send(at(4))).toEqual([]);
	for (let look = 0; look < 2; look += 1) await queuePeriods(at(3));
	const mails = await send(at(3));
	expect(mails.map(({ to }) => to).sort()).toEqual([SHOP_MAIL, OWNER_MAIL].sort());
	for (const { text } of mails) {
		expect(text).toContain(`By ${next.safeDate} (3 days left)`);
		expect(text).toContain("not legal advice");
	}
	// What was queued is dropped where the carrier was told meanwhile.
	await shop.db.database.query("DELETE FROM mail");
	await queuePeriods(at(1));
	const noted = { regime: "de-hgb", damage: "not-apparent", dates: { noticeSent: "2026-03-04" } };
	expect((await put("/claim", noted, '"v1"')).statusCode).toBe(200);
	await send(at(1));
	expect(await states()).toEqual(["passed", "passed"]);
	await shop.db.database.query("DELETE FROM mail");
	await queuePeriods(at(1));
	expect(await states()).toEqual([]);
	// HGB § 439: the notice does not end the time for an action.
	const action = claim.periods.find(({ form }: { form: string }) => form === "court-action");
	const before = new Date(Date.parse(`${action.safeDate}T09:00:00Z`) - 3 * 86_400_000);
	await queuePeriods({ ...shop.deps, now: () => before });
	expect(await states()).toHaveLength(2);
});

describe("a date of a claim, told to the owner,", () => {
	const toOwner = (mails: readonly ReadMail[]) => ofOrder(mails).filter(({ to }) => to === OWNER_MAIL);
	const addresses = (mails: readonly ReadMail[]) => ofOrder(mails).map(({ to }) => to);
	it("says who can do it, in which form, what the owner is on the leg, and where it stands; no link's secret", async () => {
		const { at } = await legWithDates();
		await queuePeriods(at(2));
		const [mail, second] = toOwner(await send(at(2)));
		expect(second).toBeUndefined();
		for (const part of [
			"On this leg you are the consignee",
			"sender and consignee can each do it",
			"Form: Text that names its sender on a lasting medium; an e-mail is enough.",
			"Agree with Werkbank Lindental which of you does it",
			"not legal advice",
			`http://localhost/orders/${scene.orderId}/consignments/${scene.legId}/claim`,
			"A device on which you opened our link shows it. Without one, ask Werkbank Lindental for a link.",
		])
			expect(mail?.text).toContain(part);
		expect(urlIn(mail?.text ?? "")).toBe("");
	});
	it("is not told where the shop chose so, nor where no address is known; the shop still hears of it", async () => {
		const { at } = await legWithDates();
		const choice = { toOwner: true, toRepairer: true, periods: true, periodsToOwner: false };
		await shop.ask("PUT", `/api/v1/orders/${scene.orderId}/mail-choice`, choice);
		await queuePeriods(at(2));
		expect(addresses(await send(at(2)))).toEqual([SHOP_MAIL]);
		scene = await mailScene(shop, { owner: { email: undefined } });
		const other = await legWithDates();
		await queuePeriods(other.at(2));
		expect(addresses(await send(other.at(2)))).toEqual([SHOP_MAIL]);
	});
	it("is not told once both sides agreed, before or after it was queued; told again once that is reopened", async () => {
		const { at } = await legWithDates();
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "settle", orderId: scene.orderId })).json();
		const { cookie } = await scene.enter(link.url, link.code);
		const path = `/api/v1/orders/${scene.orderId}/settlement`;
		const step = async (payload: object, headers: object) => {
			const answer = await shop.app.inject({ method: "POST", url: path, payload, headers: { ...headers } });
			expect(answer.statusCode, answer.body).toBe(201);
			return answer.json();
		};
		const shopSays = { authorization: `Bearer ${shop.token}` };
		await queuePeriods(at(2));
		const proposal = { act: "proposes", itemNext: "stays" };
		const agree = async (outcome: string) => {
			const { steps } = await step({ ...proposal, outcome }, shopSays);
			const proposalId = steps.at(-1).id;
			await step({ act: "assents", proposalId }, { cookie });
			return proposalId;
		};
		const proposalId = await agree("refund");
		expect(addresses(await send(at(2)))).toEqual([SHOP_MAIL]);
		await shop.db.database.query("DELETE FROM mail");
		await queuePeriods(at(2));
		taken = [];
		// What they agreed between them ends no claim against the carrier: the shop hears of it all the same.
		expect(addresses(await send(at(2)))).toEqual([SHOP_MAIL]);
		await step({ act: "reopens", proposalId }, shopSays);
		await queuePeriods(at(2));
		expect(toOwner(await send(at(2)))).toHaveLength(1);
		// To claim from the carrier is what the date is for.
		await shop.db.database.query("DELETE FROM mail");
		taken = [];
		await agree("claim-against-carrier");
		await queuePeriods(at(2));
		expect(toOwner(await send(at(2)))).toHaveLength(1);
	});
});

it("a date is told on its last day, and not after it", async () => {
	const { at } = await legWithDates();
	await queuePeriods(at(-1));
	expect(await states()).toEqual([]);
	await queuePeriods(at(0));
	expect(await states()).toEqual(["queued", "queued"]);
});

it("the dates of a leg that cannot be read keep no other's from being told", async () => {
	const { at } = await legWithDates();
	scene = await mailScene(shop);
	await legWithDates();
	const failed: { readonly leg: string }[] = [];
	let asked = 0;
	const now = () => {
		asked += 1;
		if (asked === 1) throw new Error("no clock");
		return at(2).now();
	};
	const log = { ...shop.deps.log, error: (facts: { leg: string }) => failed.push(facts) };
	await queuePeriods({ ...shop.deps, now, log: log as unknown as typeof shop.deps.log });
	expect(failed).toHaveLength(1);
	expect(asked).toBeGreaterThan(1);
});

it("a date concerns the owner who sends; who receives, unless the text gives the claim or the inquiry to the sender alone", () => {
	const order = { owner: { id: "pty_o" } } as unknown as Parameters<typeof concernsOwner>[0];
	const of = (consignorId: string, form: string, consequence = "presumption", who = "sender-unless-waived") => {
		const claim = { consignorId, claimants: { who } } as unknown as Parameters<typeof concernsOwner>[1];
		return concernsOwner(order, claim, { form, consequence } as unknown as Parameters<typeof concernsOwner>[2]);
	};
	expect(["writing", "inquiry", "court-action"].map((form) => of("pty_o", form))).toEqual([true, true, true]);
	expect(of("pty_s", "writing")).toBe(true);
	expect(of("pty_s", "inquiry", "presumption", "sender-or-consignee")).toBe(false);
	for (const form of ["court-action", "written-claim-with-amount"]) {
		expect(of("pty_s", form)).toBe(false);
		expect(of("pty_s", form, "presumption", "sender-or-consignee")).toBe(true);
	}
	expect(of("pty_s", "writing", "time-bar")).toBe(false);
});

describe("the owner's language", () => {
	it.each([
		["de", "Bitte halten Sie den Zustand bei der Ankunft fest", "Guten Tag Mara Quist,", "Spätestens"],
		["fr", "veuillez noter l’état à l’arrivée", "Bonjour Mara Quist,", "Au plus tard le"],
	])("%s is that of every mail to the owner; the shop's are in English", async (language, subject, hello, by) => {
		scene = await mailScene(shop, { owner: { language } });
		const link = await scene.makeLink();
		await scene.queue({ kind: "receipt", recordId: scene.departureId });
		await scene.queue({ kind: "reminder", linkId: link.id });
		await scene.queue({ kind: "link", linkId: link.id });
		await scene.queue({ kind: "code", linkId: link.id, to: "other@quist.example" });
		const { at } = await legWithDates();
		await queuePeriods(at(2));
		const mails = ofOrder(await send(at(2)));
		const toShop = mails.filter(({ to }) => to === SHOP_MAIL);
		const toOwner = mails.filter(({ to }) => to !== SHOP_MAIL);
		expect(toOwner).toHaveLength(5);
		expect(toShop).toHaveLength(1);
		for (const { text, subject: said, defects } of toOwner) {
			expect(text).toContain(hello);
			expect(
				ENGLISH_WORDS.exec(`${said}\n${text}`.replace(/https?:\S+|\(German Commercial Code[^)]*\)/g, "")),
			).toBeNull();
			expect(defects).toEqual([]);
		}
		expect(toOwner.map((mail) => mail.subject).join("\n")).toContain(subject);
		expect(toOwner.map(({ text }) => text).join("\n")).toContain(by);
		expect(toShop[0]?.text).toContain("Hello Werkbank Lindental,");
		const order = (await shop.ask("GET", `/api/v1/orders/${scene.orderId}`)).json();
		expect(order.owner.language).toBe(language);
	});
});

it("an erasure drops what waits, and takes addresses and the server's answers away", async () => {
	const link = await scene.makeLink();
	await scene.queue({ kind: "code", linkId: link.id, to: "other@quist.example" });
	await shop.ask("POST", `/api/v1/parties/${scene.ownerId}/erase`, { confirm: scene.ownerId });
	expect(await send()).toEqual([]);
	expect((await scene.mails()).mails).toMatchObject([{ state: "dropped", reason: "erased", to: null, answer: null }]);
	expect((await ask("mails", { kind: "receipt", recordId: scene.departureId })).statusCode).toBe(400);
});

it("without a mail server nothing is queued, and the texts are there to copy", async () => {
	const other = await testApp();
	try {
		const there = await mailScene(other);
		const link = await there.makeLink();
		const path = `/api/v1/orders/${there.orderId}`;
		expect((await other.ask("POST", `${path}/mails`, { kind: "link", linkId: link.id })).statusCode).toBe(409);
		const text = (await other.ask("POST", `${path}/mail-text`, { kind: "link", linkId: link.id })).json();
		expect(text).toMatchObject({ to: OWNER_MAIL, subject: expect.stringContaining("Werkbank Lindental") });
		expect((await there.enter(urlIn(text.text), link.code)).status).toBe(200);
		const gone = await other.ask("POST", `${path}/mail-text`, { kind: "link", linkId: link.id });
		expect(gone.statusCode).toBe(400);
	} finally {
		await other.close();
	}
});

it("a reading link is for someone of whom no address is known, so one is asked for, and no name is said", async () => {
	const link = (await shop.ask("POST", "/api/v1/links", { scope: "reader", orderId: scene.orderId })).json();
	expect((await ask("mails", { kind: "link", linkId: link.id })).statusCode).toBe(400);
	await scene.queue({ kind: "link", linkId: link.id, to: "clerk@claims.example" });
	const mails: ReadMail[] = await send();
	expect(taken[0]?.envelope.to).toBe("clerk@claims.example");
	expect(mails[0]?.text).not.toContain("Mara");
});
