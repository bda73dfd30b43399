/**
 * How scenario (a) ends: the shop and the owner state what they hold, each through their own way in; the carrier is told in
 * time; both agree that the card goes back to the bench. Invented from start to end.
 */
import type { DemoClient } from "./demo-client.ts";
import type { PlayedOrder, Shop } from "./scenario.ts";

/** Gives the owner's link to the place where both settle. */
export async function settleCard(
	shop: Shop,
	played: PlayedOrder,
): Promise<{ readonly url: string; readonly code: string }> {
	const { client } = shop;
	const { orderId, consignmentId } = played;
	const link = await client.giveLink(orderId, null);
	const stated = await link.owner.send("POST", `/api/v1/orders/${orderId}/positions`, {
		kind: "states",
		text: "It computed a whole day at the bench and stops after four minutes here. I changed nothing in my computer.",
		consignmentId,
		recordIds: [played.recordIds.at(-1)],
	});
	await client.send("POST", `/api/v1/orders/${orderId}/positions`, {
		kind: "offers-test",
		text: "We would like to see it on the bench that it left from, before anyone takes it apart.",
		consignmentId,
		checkIds: ["link-width"],
		answers: { positionId: stated.id, stance: "partly-agrees" },
		test: { id: "departure-bench", doneBy: "repairer", dates: ["2026-10-20", "2026-10-21"] },
	});
	await tellTheCarrier(client, consignmentId);
	const path = `/api/v1/orders/${orderId}/settlement`;
	const proposed = await client.send("POST", path, {
		act: "proposes",
		outcome: "repair-under-warranty",
		itemNext: "to-repairer",
		amounts: [{ amount: 24.9, currency: "EUR", from: "repairer", to: "owner" }],
		text: "We pay the way back and test it on the bench that it left from. What is found there decides what follows.",
	});
	const [step] = proposed.steps as readonly { readonly id: string }[];
	await link.owner.send("POST", path, {
		act: "assents",
		proposalId: step?.id,
		text: "Agreed. It stays packed as it came.",
	});
	return link;
}

/** What the sender would write into the places that a draft leaves blank: its address, and the day. */
const FILLED_IN = ["Handelsweg 4, 00000 Musterstadt", "12 October 2026"];

/** The days of an inspection, the notice as drafted and filled in, and that it was sent and received. */
async function tellTheCarrier(client: DemoClient, consignmentId: string): Promise<void> {
	const noted = { inspectionDates: ["2026-10-15", "2026-10-16"], currencyPerSdr: 1.2 };
	await client.send("PUT", `/api/v1/consignments/${consignmentId}/claim`, noted, { "if-match": '"v0"' });
	const draft = await client.send("GET", `/api/v1/consignments/${consignmentId}/notice-draft`);
	const notice = await client.send("POST", `/api/v1/consignments/${consignmentId}/notices`, {
		language: "en",
		text: FILLED_IN.reduce((text, words) => text.replace("__________", words), draft.text as string),
		sentOn: "2026-10-12",
		sentBy: "e-mail",
		proofOfSending: "Sent mail of 12 October 2026, 09:14, to the claims address on the waybill",
	});
	await client.send("POST", `/api/v1/notices/${notice.id}/receipt`, {
		receivedOn: "2026-10-12",
		proofOfReceipt: "Answer of the carrier's mailbox, same day",
	});
}
