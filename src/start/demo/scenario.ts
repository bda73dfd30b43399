/** What every scenario uses: the shop, its instruments and benches, and the way an order begins. */
import type { DemoClient, Json, Made } from "./demo-client.ts";

export interface Shop {
	readonly client: DemoClient;
	readonly benchId: string;
	/** A good bench meter, and a scale. */
	readonly meterId: string;
	readonly scaleId: string;
}

/** An order that was played to its end, with the leg to look at. */
export interface PlayedOrder {
	readonly title: string;
	readonly orderId: string;
	readonly consignmentId: string;
	/** Sealed records whose receipts the parties keep. */
	readonly recordIds: readonly string[];
	/** The owner's link, where there was one. */
	readonly link: { readonly url: string; readonly code: string } | null;
	/** The owner's link to where both settle, where they did. */
	readonly settling?: { readonly url: string; readonly code: string };
}

const REPAIRER = { kind: "business", country: "DE", name: "Werkbank Nord" };

/** Takes an order in. */
export async function takeIn(
	shop: Shop,
	owner: Json,
	item: Json,
	terms: { readonly reportedFault: string; readonly agreedWork: string },
): Promise<Made> {
	return shop.client.send("POST", "/api/v1/orders", {
		contractKind: "repair",
		repairer: REPAIRER,
		owner,
		item,
		terms: {
			...terms,
			warranty: { months: 6, covers: "the repaired fault and the parts put in" },
			carrierContract: { toRepairer: "owner", toOwner: "repairer" },
		},
	});
}

/** Adds a leg. */
export async function addLeg(
	shop: Shop,
	orderId: string,
	direction: "to-repairer" | "to-owner",
	facts: Json,
): Promise<Made> {
	return shop.client.send("POST", `/api/v1/orders/${orderId}/consignments`, {
		direction,
		facts: { mode: "road", ...facts },
	});
}

/** Opens a draft on a leg. */
export async function openOn(shop: Shop, consignmentId: string, record: Json): Promise<string> {
	return (await shop.client.send("POST", `/api/v1/consignments/${consignmentId}/records`, record)).id;
}

/** A quantity as someone typed it. */
export function typed(digits: string, unit: string): Json {
	return { value: Number(digits.replace(",", ".")), unit, typed: digits };
}

/** A point that was looked at. */
export function looked(check: string, asItShould: boolean): Json {
	return { check, trials: 1, successes: asItShould ? 1 : 0 };
}

/** Starts, all counted. */
export function starts(kind: "cold" | "warm", trials: number, successes: number): Json {
	return { check: `starts-${kind}`, condition: kind, trials, successes };
}
