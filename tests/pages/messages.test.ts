/** The messages of an order's page: what can be written, what is refused beside its field, and the text in the mail program. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { formTokenOf } from "../../src/access/secrets.ts";
import { safeUrl } from "../../src/pages/safe-url.ts";
import { mailtoOf } from "../../src/pages/shop/messages/mail-text.tsx";
import { type MailScene, mailScene, OWNER_MAIL } from "../operations/mail/mail-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
let scene: MailScene;
beforeAll(async () => {
	shop = await testApp({ canMail: true });
	scene = await mailScene(shop);
});
afterAll(() => shop.close());

const page = async () =>
	(await shop.app.inject({ url: `/orders/${scene.orderId}`, headers: { cookie: shop.sessionCookie } })).body;
const post = (path: string, form: Record<string, string>) =>
	shop.app.inject({
		method: "POST",
		url: `/orders/${scene.orderId}/${path}`,
		headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({
			...form,
			formToken: formTokenOf(shop.sessionCookie.split("=")[1] ?? ""),
		}).toString(),
	});

it("offers what there is to write, queues it, and lists it", async () => {
	const link = await scene.makeLink();
	const before = await page();
	for (const option of [`link ${link.id}`, `code ${link.id}`, `reminder ${link.id}`, `receipt ${scene.departureId}`]) {
		expect(before).toContain(`value="${option}"`);
	}
	expect((await post("mails", { act: "send", matter: `receipt ${scene.departureId}`, to: "" })).statusCode).toBe(303);
	expect((await post("mails", { act: "remind", remind: link.id, afterDays: "9" })).statusCode).toBe(303);
	const after = await page();
	expect(after).toContain("waits since");
	expect(after).toContain("will be written");
	expect(after).toContain(OWNER_MAIL);
});

it("says beside the field what is wrong, and keeps what was typed", async () => {
	const refused = await post("mails", { act: "send", matter: `receipt ${scene.departureId}`, to: "mära@x.example" });
	expect(refused.statusCode).toBe(400);
	expect(refused.body).toContain('id="to-error"');
	expect(refused.body).toContain('value="mära@x.example"');
	const days = await post("mails", { act: "remind", remind: "lnk_none", afterDays: "0" });
	expect(days.statusCode).toBe(400);
	expect(days.body).toContain('id="afterDays-error"');
});

it("shows a text once, with the way into the mail program", async () => {
	const shown = await post("mails", { act: "show", matter: `receipt ${scene.departureId}` });
	expect(shown.body).toContain(`href="mailto:${OWNER_MAIL}?subject=`);
	expect(shown.body).toContain(`/api/v1/records/${scene.departureId}/receipt`);
	// RFC 6068, 5: line breaks in the body are %0D%0A; nothing that was typed adds a field.
	const href = mailtoOf({ to: "a@x.example", subject: "one & two?cc=b@x.example", text: "one\ntwo" });
	expect(href).toBe("mailto:a@x.example?subject=one%20%26%20two%3Fcc%3Db%40x.example&body=one%0D%0Atwo");
	expect(safeUrl(href)).toBe(href);
	expect(safeUrl("javascript:alert(1)")).toBe("#");
});
