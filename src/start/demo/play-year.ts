/**
 * Plays the invented year through the API: 400 orders, each with its pack, its record of departure, the owner's link and,
 * where somebody answered, the record of the arrival. Light ones: a few checks each, no photos. The arrivals are sealed by
 * the shop's account, which their receipts say, since nobody else is there.
 */
import type { Json } from "./demo-client.ts";
import { type InventedOrder, inventedYear } from "./invented-year.ts";
import { addLeg, openOn, type Shop, starts, takeIn, typed } from "./scenario.ts";

/** Orders played at once. */
const AT_ONCE = 6;
const BOXES = { small: [0.38, 0.22, 0.15], large: [0.46, 0.3, 0.24] } as const;

export async function playYear(shop: Shop, orders: readonly InventedOrder[] = inventedYear()): Promise<number> {
	const waiting = orders.values();
	await Promise.all(
		Array.from({ length: AT_ONCE }, async () => {
			for (const order of waiting) await playOrder(shop, order);
		}),
	);
	return orders.length;
}

async function playOrder(shop: Shop, invented: InventedOrder): Promise<void> {
	const { client } = shop;
	const { number, sentOn, outcome } = invented;
	const serialNumber = `BL5-${String(number).padStart(5, "0")}`;
	const order = await takeIn(
		shop,
		{ kind: "consumer", country: "DE", name: `Owner ${number} of the invented year` },
		{ class: "graphics-card", maker: "Borealis", model: "Lumen 5", serialNumber, massKg: 1.1, cell: "none" },
		{ reportedFault: "No picture.", agreedWork: "Mend it and test it under load." },
	);
	const seen = { padsShifted: invented.padsShifted, cornersCrushed: invented.cornersCrushed };
	const leg = await addLeg(shop, order.id, "to-owner", {
		bookedBy: "consignor",
		carrier: invented.carrier,
		dispatchedAt: `${sentOn}T15:00:00+01:00`,
		...Object.fromEntries(Object.entries(seen).filter(([, one]) => one !== null)),
	});
	await client.send("POST", `/api/v1/consignments/${leg.id}/packaging-assessments`, packOf(invented));
	const departure = await openOn(shop, leg.id, { stage: "departure" });
	await client.fillAndSeal(departure, {
		observedAt: `${sentOn}T11:00:00+01:00`,
		state: "good",
		identity: { serialNumber },
		readings: [
			starts("cold", 3, 3),
			{ check: "aer-events", condition: "load", count: 0, exposure: typed("1", "h") },
			...(invented.soakHours === 0
				? []
				: [
						{
							check: "memory-errors",
							condition: "load",
							count: 0,
							exposure: typed(String(invented.soakHours), "h"),
						},
					]),
		],
	});
	const arrival = await openOn(shop, leg.id, { stage: "arrival" });
	await client.send("POST", "/api/v1/links", { scope: "record", orderId: order.id, recordId: arrival });
	if (outcome === "silent") return;
	await client.fillAndSeal(arrival, arrivalOf(invented, serialNumber));
}

function arrivalOf({ sentOn, outcome, tagTripped, newErrors }: InventedOrder, serialNumber: string): Json {
	const states = { "as-left": "good", changed: "intermittent", dead: "does-not-start", untested: "not-tested" };
	const well = { "as-left": 3, changed: 2, dead: 0 };
	const arrivedOn = new Date(Date.parse(sentOn) + 3 * 86_400_000).toISOString().slice(0, 10);
	return {
		observedAt: `${arrivedOn}T18:00:00+01:00`,
		state: states[outcome as keyof typeof states],
		identity: { serialNumber },
		parcel: { outerDamage: "not-looked", ...(tagTripped === null ? {} : { indicatorTripped: tagTripped }) },
		readings: [
			...(outcome === "untested" ? [] : [starts("cold", 3, well[outcome as keyof typeof well])]),
			...(newErrors === null
				? []
				: [{ check: "aer-events", condition: "load", count: newErrors ? 9 : 0, exposure: typed("1", "h") }]),
		],
	};
}

function packOf({ box, foam }: InventedOrder): Json {
	const [innerLengthM, innerWidthM, innerHeightM] = BOXES[box];
	const face = { layers: [{ foam: { id: foam }, thicknessM: 0.05, fullFace: true }] };
	return {
		item: { class: "graphics-card", massKg: 1.1, lengthM: 0.27, widthM: 0.11, heightM: 0.04, cell: "none" },
		pack: {
			box: { innerLengthM, innerWidthM, innerHeightM, reused: false },
			faces: { top: face, bottom: face, left: face, right: face, front: face, back: face },
			bagLayers: [{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" }],
		},
		route: { dropBasis: "din-55439", mode: "road", transitDays: 2 },
	};
}
