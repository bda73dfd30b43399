/** Scenario (b): a laptop mainboard with checks of the shop's own; everything arrives as it left. Invented. */
import { addLeg, looked, openOn, type PlayedOrder, type Shop, starts, takeIn, typed } from "./scenario.ts";

const OWN_CHECK = {
	name: "Input current on the bench supply, plugged in and off, 19.5 V",
	kind: "measured",
	unit: "mA",
	comparability: "stated-uncertainty",
	betterIs: "lower",
	limitHigh: 0.05,
	equivalenceMargin: 0.01,
};

export async function playLaptopBoard(shop: Shop): Promise<PlayedOrder> {
	const { client } = shop;
	const order = await takeIn(
		shop,
		{ kind: "business", country: "AT", name: "Buchhaltung Beispiel KG", email: "it@example.com" },
		{
			class: "module",
			maker: "Kestrel",
			model: "K14 mainboard",
			serialNumber: "K14-7781",
			massKg: 0.35,
			lengthM: 0.28,
			widthM: 0.2,
			heightM: 0.012,
			cell: "coin",
		},
		{ reportedFault: "Does not charge.", agreedWork: "Mend the charging circuit." },
	);
	const leg = await addLeg(shop, order.id, "to-owner", {
		bookedBy: "consignor",
		carrier: "Paketdienst Mitte",
		dispatchedAt: "2026-10-20T14:00:00+02:00",
		deliveredAt: "2026-10-22T09:15:00+02:00",
		inHandAt: "2026-10-22T09:15:00+02:00",
		manner: "handed-over",
	});
	const identity = { serialNumber: "K14-7781", maker: "Kestrel", model: "K14 mainboard" };
	const seen = [
		looked("visual-parts", true),
		looked("visual-cracks", true),
		looked("visual-liquid-marks", true),
		looked("visual-connectors", true),
	];
	const departure = await openOn(shop, leg.id, { stage: "departure", depth: "full" });
	await client.fillAndSeal(departure, {
		observedAt: "2026-10-20T10:20:00+02:00",
		state: "good",
		identity,
		setUp: { benchId: shop.benchId, host: "shop's own chassis of the same model" },
		readings: [
			...seen,
			{ check: "mass", values: [typed("351", "g")], instrumentId: shop.scaleId },
			starts("cold", 10, 10),
			starts("warm", 5, 5),
			{ check: "own-1", definition: OWN_CHECK, values: [typed("31,2", "mA")], instrumentId: shop.meterId },
		],
		statement: "Charging circuit mended; charges and runs on both.",
		recordedBy: "bench 1",
	});
	const arrival = await openOn(shop, leg.id, { stage: "arrival" });
	const { owner, ...link } = await client.giveLink(order.id, arrival);
	await owner.fillAndSeal(arrival, {
		observedAt: "2026-10-22T13:40:00+02:00",
		state: "good",
		identity: { serialNumber: "K14-7781" },
		setUp: { host: "the laptop it belongs to", platforms: 1 },
		readings: [...seen, starts("cold", 3, 3), starts("warm", 3, 3)],
		parcel: { outerDamage: "none-seen", sealsIntact: true },
		firstPowerOn: { firstAttemptEver: true, workDoneBefore: false },
		statement: "Put in, charges, runs.",
	});
	return {
		title: "A laptop mainboard that arrived as it left",
		orderId: order.id,
		consignmentId: leg.id,
		recordIds: [departure, arrival],
		link,
	};
}
