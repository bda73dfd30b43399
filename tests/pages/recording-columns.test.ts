/** The page that says how a recorder's file is read: all that is wrong is told at once, and what was chosen stays. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { type TestApp, testApp } from "../setup/test-app.ts";
import { customerScene } from "./customer-scene.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

it("tells all faults at once and keeps what was chosen", async () => {
	const scene = await customerScene(shop);
	const brought = await shop.app.inject({
		method: "POST",
		url: `/api/v1/consignments/${scene.legId}/transit-recordings?fileName=trip.csv`,
		headers: { authorization: `Bearer ${shop.token}`, "content-type": "text/csv" },
		payload: `time [s],z [g]\n${Array.from({ length: 40 }, (_, row) => `${row / 1000},1.00\n`).join("")}`,
	});
	expect(brought.statusCode, brought.body).toBe(201);
	const list = `/orders/${scene.orderId}/consignments/${scene.legId}/recordings`;
	const url = `${list}/${brought.json().recording.id}/columns`;
	const headers = { cookie: shop.sessionCookie };
	const page = await shop.app.inject({ method: "GET", url, headers });
	const formToken = /name="formToken" value="([^"]+)"/.exec(page.body)?.[1] ?? "";
	const form = {
		formToken,
		time: "1",
		timeUnit: "s",
		z: "2",
		accelerationUnit: "Gn",
		clockMinutes: "often",
		device: "recorder",
	};
	const again = await shop.app.inject({
		method: "POST",
		url,
		headers: { ...headers, "content-type": "application/x-www-form-urlencoded" },
		payload: new URLSearchParams(form).toString(),
	});
	expect(again.statusCode).toBe(400);
	for (const field of ["place", "unitsConfirmed", "clockMinutes"])
		expect(again.body, field).toContain(`id="${field}-error"`);
	expect(again.body).toContain('value="often"');
});
