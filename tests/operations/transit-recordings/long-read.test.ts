/** Reading in the background: one at a time, how far, how it ends, and what is said of one that an instance left behind. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { readsOf } from "../../../src/database/recording-reads.ts";
import { invalid } from "../../../src/faults.ts";
import { pendingOf, readInBackground } from "../../../src/operations/transit-recordings/long-read.ts";
import { customerScene } from "../../pages/customer-scene.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { inventedTable, READING } from "./invented-trip.ts";

let shop: TestApp;
let id: string;
beforeAll(async () => {
	shop = await testApp();
	const { legId } = await customerScene(shop);
	const brought = await shop.app.inject({
		method: "POST",
		url: `/api/v1/consignments/${legId}/transit-recordings?fileName=trip.csv`,
		headers: { authorization: `Bearer ${shop.token}`, "content-type": "text/csv" },
		payload: inventedTable({ rateHz: 2000, lengthS: 1, impacts: [] }),
	});
	id = brought.json().recording.id;
});
afterAll(async () => shop?.close());

const reading = READING as unknown as Parameters<typeof readInBackground>[2];
const pending = async (later = 0) =>
	pendingOf((await readsOf(shop.deps.database, [id]))[0], new Date(Date.now() + later));

it("says how far it is, is not begun twice, and says why it ended", async () => {
	let end: (error: Error) => void = () => {};
	await readInBackground(shop.deps, id, reading, (told) => {
		told(1234);
		return new Promise((_resolve, reject) => {
			end = reject;
		});
	});
	await expect.poll(() => pending()).toEqual({ status: "being-read", bytesRead: 1234, why: null });
	await expect(readInBackground(shop.deps, id, reading, async () => {})).rejects.toThrow("already-there");
	end(invalid([{ path: "/file", code: "import-refused-at", facts: { line: 7, why: "It is cut." } }]));
	await expect.poll(async () => (await pending())?.status).toBe("refused");
	expect((await pending())?.why).toContain("7");
	// As the API shows it.
	expect((await shop.ask("GET", `/api/v1/transit-recordings/${id}`)).json().pending.status).toBe("refused");
});
it("one that fell silent is told, and begun again", async () => {
	await readInBackground(shop.deps, id, reading, () => new Promise(() => {}));
	expect((await pending(61_000))?.status).toBe("stopped");
	const later = { ...shop.deps, now: () => new Date(Date.now() + 61_000) };
	await readInBackground(later, id, reading, () => new Promise(() => {}));
	expect((await pending(61_000))?.status).toBe("being-read");
});
