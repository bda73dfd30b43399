/** Scenario (c): another meter makes a resistance look different; it is not compared. Invented. */
import { addLeg, looked, openOn, type PlayedOrder, type Shop, starts, takeIn, typed } from "./scenario.ts";

export async function playOtherMeter(shop: Shop): Promise<PlayedOrder> {
	const { client } = shop;
	const order = await takeIn(
		shop,
		{ kind: "consumer", country: "FR", language: "fr", name: "Chloé Exemple", email: "chloe@example.net" },
		{
			class: "graphics-card",
			maker: "Tarn",
			model: "Ridge 3",
			serialNumber: "TR3-5512",
			massKg: 0.9,
			lengthM: 0.24,
			widthM: 0.11,
			heightM: 0.04,
		},
		{ reportedFault: "No picture.", agreedWork: "Mend the output stage." },
	);
	const leg = await addLeg(shop, order.id, "to-owner", {
		bookedBy: "consignor",
		carrier: "Paketdienst Mitte",
		dispatchedAt: "2026-10-27T15:00:00+01:00",
		deliveredAt: "2026-10-30T12:00:00+01:00",
		inHandAt: "2026-10-30T12:00:00+01:00",
		manner: "handed-over",
	});
	const departure = await openOn(shop, leg.id, { stage: "departure", depth: "full" });
	await client.fillAndSeal(departure, {
		observedAt: "2026-10-27T11:00:00+01:00",
		state: "good",
		identity: { serialNumber: "TR3-5512", maker: "Tarn", model: "Ridge 3" },
		setUp: { benchId: shop.benchId },
		readings: [
			looked("visual-parts", true),
			starts("cold", 6, 6),
			{
				check: "resistance-memory-rail",
				condition: "cold",
				values: [typed("62,5", "ohm")],
				instrumentId: shop.meterId,
				leadsNulled: true,
			},
		],
		recordedBy: "bench 1",
	});
	const arrival = await openOn(shop, leg.id, { stage: "arrival" });
	const { owner, ...link } = await client.giveLink(order.id, arrival);
	await owner.fillAndSeal(arrival, {
		observedAt: "2026-10-31T10:30:00+01:00",
		state: "good",
		identity: { serialNumber: "TR3-5512" },
		setUp: { host: "own computer", platforms: 1 },
		ownInstruments: [
			{ id: "meter-1", label: "my own multimeter", unit: "ohm", percentOfReading: 0.8, counts: 2, resolution: 0.1 },
		],
		readings: [
			looked("visual-parts", true),
			starts("cold", 3, 3),
			{ check: "resistance-memory-rail", condition: "cold", values: [typed("48,3", "ohm")], instrumentId: "meter-1" },
		],
		parcel: { outerDamage: "none-seen" },
		firstPowerOn: { firstAttemptEver: true, workDoneBefore: false },
		statement: "Works. My meter shows 48 ohm where the record says 62; is something wrong?",
	});
	return {
		title: "Another meter reads another resistance",
		orderId: order.id,
		consignmentId: leg.id,
		recordIds: [departure, arrival],
		link,
	};
}
