/** Every item class has its own checks, and both the shop's form and the owner's guided record take and seal them. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CheckDefinition } from "../../src/catalogue/checks/check.ts";
import { CATALOGUE_VERSION, checksOf } from "../../src/catalogue/checks/checks.ts";
import { ITEM_CLASSES, type ItemClass } from "../../src/catalogue/codes.ts";
import { collectorsFor } from "../../src/catalogue/collectors.ts";
import { checksWithoutInstruments } from "../../src/operations/records/guided-record.ts";
import { ARRIVAL_STEPS } from "../../src/pages/customer/steps.ts";
import { say, type TextKey } from "../../src/texts/say.ts";
import { entriesIn } from "../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

/** An order about an item of a class, with a leg back to its owner. */
async function legOf(itemClass: ItemClass) {
	const order = {
		contractKind: "repair",
		repairer: { kind: "business", country: "AT", name: "Werkbank Lindental" },
		owner: { kind: "consumer", country: "DE", name: "Mara Quist" },
		item: { class: itemClass, maker: "Ostwind", model: "Orca", serialNumber: "OW-1" },
		terms: {
			reportedFault: "Dead.",
			agreedWork: "Mend.",
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	};
	const made = await shop.ask("POST", "/api/v1/orders", order);
	expect(made.statusCode, made.body).toBe(201);
	const orderId = made.json().id as string;
	const leg = await shop.ask("POST", `/api/v1/orders/${orderId}/consignments`, {
		direction: "to-owner",
		facts: { mode: "road", bookedBy: "consignor" },
	});
	return { orderId, legId: leg.json().id as string };
}

/** A sound answer to a check, as someone types it. */
function answer(check: CheckDefinition): Record<string, string> {
	const name = (part: string) => `check.${check.id}.${part}`;
	switch (check.kind) {
		case "visual":
			return { [name("result")]: "good" };
		case "outcome":
			return { [name("trials")]: "5", [name("successes")]: "5" };
		case "count":
			return { [name("count")]: "0", [name("exposure")]: "1", [name("exposure.unit")]: "h" };
		default: {
			const value = check.limits?.low ?? check.limits?.high ?? 10;
			return { [name("value")]: String(value), [name("value.unit")]: unitOfLimits(check) };
		}
	}
}

/** Limits stand in the reading unit, which is among those that may be typed. */
function unitOfLimits(check: CheckDefinition): string {
	const units = ["V", "s", "percent", "A", "ohm", "kg"] as const;
	return units.find((unit) => check.typedUnits.includes(unit)) ?? check.typedUnits[0] ?? "";
}

const answers = (checks: readonly CheckDefinition[]) => Object.assign({}, ...checks.map(answer));
const asHtml = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
const hidden = (page: string, name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? "";

async function post(url: string, cookie: string, fields: Record<string, string>, from = url) {
	const page = (await shop.app.inject({ method: "GET", url: from, headers: { cookie } })).body;
	return shop.app.inject({
		method: "POST",
		url,
		headers: { cookie, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams({
			formToken: hidden(page, "formToken"),
			version: hidden(page, "version"),
			...fields,
		}).toString(),
	});
}

describe.each(ITEM_CLASSES)("%s", (itemClass) => {
	const checks = checksOf(itemClass);

	it("is filled in on the shop's page, check by check, saved and sealed with the catalogue's version", async () => {
		const { legId } = await legOf(itemClass);
		const made = await shop.ask("POST", `/api/v1/consignments/${legId}/records`, {
			stage: "departure",
			content: {
				observedAt: "2026-03-02T10:00:00+01:00",
				state: "good",
				identity: { serialNumber: "OW-1" },
			},
		});
		const url = `/records/${made.json().id}`;
		const page = await shop.app.inject({ method: "GET", url, headers: { cookie: shop.sessionCookie } });
		expect(page.statusCode).toBe(200);
		for (const { command } of collectorsFor(new Set(checks.map(({ id }) => id))))
			expect(page.body).toContain(asHtml(command));
		for (const check of checks) {
			expect(page.body, check.id).toContain(`check.${check.id}.`);
			if (check.kind === "measured" && check.limits !== undefined)
				expect(page.body, check.id).toContain(asHtml(check.limits.source.locator));
			if (check.stopKey !== undefined) expect(page.body, check.id).toContain(say(check.stopKey as TextKey));
		}
		const content = (await shop.ask("GET", `/api/v1${url}`)).json().content;
		const fields = { "identity.serialNumber": content.identity.serialNumber, state: "good", act: "save" };
		const saved = await post(url, shop.sessionCookie, {
			...fields,
			observedAt: "2026-03-02T10:00",
			clock: "+01:00",
			...answers(checks),
		});
		expect(saved.statusCode, /<div class="error-summary".*?<\/div>/s.exec(saved.body)?.[0]).toBe(303);
		const record = (await shop.ask("GET", `/api/v1${url}`)).json();
		expect(record.content.readings.map((reading: { check: string }) => reading.check).sort()).toEqual(
			checks.map((check) => check.id).sort(),
		);
		const sealed = await shop.ask("POST", `/api/v1${url}/seal`, undefined, { "if-match": `"v${record.version}"` });
		expect(sealed.statusCode, sealed.body).toBe(200);
		const statement = entriesIn(sealed.json()).findLast((entry) => entry.kind === "record-sealed")?.statement;
		expect(JSON.parse(statement?.toString() ?? "{}")).toMatchObject({ catalogueVersion: CATALOGUE_VERSION, itemClass });
	});

	it("is filled in by its owner, who is asked for nothing that needs an instrument", async () => {
		const { orderId, legId } = await legOf(itemClass);
		const recordId = (await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "arrival" })).json().id;
		const link = (await shop.ask("POST", "/api/v1/links", { scope: "record", orderId, recordId })).json();
		const entered = await shop.app.inject({
			method: "POST",
			url: new URL(link.url).pathname,
			headers: { "content-type": "application/x-www-form-urlencoded" },
			payload: new URLSearchParams({ code: link.code }).toString(),
		});
		const cookie = `link=${entered.cookies.find(({ name }) => name === "link")?.value}`;
		const asked = checksWithoutInstruments(itemClass);
		expect(asked.length).toBeGreaterThan(5);
		const file = await shop.app.inject({ method: "GET", url: `/guided/${recordId}/file`, headers: { cookie } });
		const lines = collectorsFor(new Set(checks.map(({ id }) => id)));
		for (const { command } of lines) expect(file.body).toContain(asHtml(command));
		for (const step of ARRIVAL_STEPS.filter((candidate) => candidate.checks !== undefined)) {
			const url = `/guided/${recordId}/${step.id}`;
			const here = asked.filter((check) => step.checks?.(check));
			const saved = await post(url, cookie, { act: "next", ...answers(here) });
			expect(saved.statusCode, `${step.id}: ${saved.body}`).toBe(303);
		}
		const { content } = (await shop.ask("GET", `/api/v1/records/${recordId}`)).json();
		expect(content.readings.map((reading: { check: string }) => reading.check).sort()).toEqual(
			asked.map((check) => check.id).sort(),
		);
	});

	it("is in the catalogue of the API with its figures", async () => {
		const { checks: listed, version } = (await shop.ask("GET", `/api/v1/catalogue/${itemClass}`)).json();
		expect(version).toBe(CATALOGUE_VERSION);
		expect(listed.map((check: { id: string }) => check.id)).toEqual(checks.map((check) => check.id));
	});
});

it("says what a file names of people and networks, before and after it is kept, and keeps a file for people to read", async () => {
	const { legId } = await legOf("graphics-card");
	const made = await shop.ask("POST", `/api/v1/consignments/${legId}/records`, { stage: "departure" });
	const url = `/records/${made.json().id}`;
	const log =
		"Aug 29 20:09:52 werkbank kernel: eth0: link at 192.0.2.44\nAug 29 20:09:53 werkbank kernel: PCIe Bus Error: severity=\n";
	const preview = await shop.app.inject({ method: "POST", url: "/api/v1/imports/preview", payload: Buffer.from(log) });
	expect(preview.statusCode, preview.body).toBe(200);
	expect(preview.json().personal).toEqual([
		{ kind: "host-name", text: "werkbank", line: 1 },
		{ kind: "ip-address", text: "192.0.2.44", line: 1 },
	]);
	const taken = await post(url, shop.sessionCookie, { act: "save", "file.paste": log });
	expect(taken.body).toContain("The file also names a computer (werkbank), a network address (192.0.2.44).");
});
