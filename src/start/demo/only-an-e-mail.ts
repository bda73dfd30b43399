/** Scenario (d): the owner only writes an e-mail that it does not start. The shop records what it was told. Invented. */
import { demoFile } from "./demo-client.ts";
import { addLeg, looked, openOn, type PlayedOrder, type Shop, starts, takeIn } from "./scenario.ts";

export async function playOnlyAnEMail(shop: Shop): Promise<PlayedOrder> {
	const { client } = shop;
	const order = await takeIn(
		shop,
		{ kind: "consumer", country: "DE", name: "Noor Beispiel", email: "noor@example.org" },
		{
			class: "graphics-card",
			maker: "Borealis",
			model: "Lumen 5",
			serialNumber: "BL5-10077",
			massKg: 1.1,
			lengthM: 0.25,
			widthM: 0.11,
			heightM: 0.04,
		},
		{ reportedFault: "Crashes in games.", agreedWork: "Renew the thermal interface; test under load." },
	);
	const leg = await addLeg(shop, order.id, "to-owner", {
		bookedBy: "consignor",
		carrier: "Eilbote Süd",
		dispatchedAt: "2026-11-06T16:30:00+01:00",
		deliveredAt: "2026-11-10T10:05:00+01:00",
		manner: "left",
	});
	const departure = await openOn(shop, leg.id, { stage: "departure" });
	await client.fillAndSeal(departure, {
		observedAt: "2026-11-06T12:00:00+01:00",
		state: "good",
		identity: { serialNumber: "BL5-10077", maker: "Borealis", model: "Lumen 5" },
		setUp: { benchId: shop.benchId },
		readings: [looked("visual-parts", true), starts("cold", 10, 10)],
		recordedBy: "bench 1",
	});
	const told = await openOn(shop, leg.id, { stage: "arrival", provenance: "reported-to" });
	const message = await demoFile("outputs/e-mail-does-not-start.txt");
	const { sha256 } = await client.sendFile(`/api/v1/records/${told}/exhibits?fileName=message.txt`, message);
	await client.fillAndSeal(told, {
		observedAt: "2026-11-12T19:42:00+01:00",
		state: "does-not-start",
		identity: { marks: ["not stated by the owner"] },
		reported: {
			words: message.toString("utf8").split("\n\n").slice(1).join("\n\n").trim(),
			channel: "e-mail",
			receivedAt: "2026-11-12T19:42:10+01:00",
			bySender: "Noor Beispiel",
		},
		exhibits: [{ sha256, view: "message" }],
		recordedBy: "bench 1",
	});
	return {
		title: "An owner who only wrote an e-mail",
		orderId: order.id,
		consignmentId: leg.id,
		recordIds: [departure, told],
		link: null,
	};
}
