/** The warranty of an order: its clock from the legs, and a failure looked at against it. Nothing of the question is kept. */
import type { Caller } from "../../access/caller.ts";
import { daysBetween } from "../../calculations/civil-date.ts";
import { warranty } from "../../calculations/claims/warranty.ts";
import { WARRANTY_FLOORS } from "../../catalogue/warranty-floors.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { WarrantyQuery, WarrantyView } from "../../contract/warranty.ts";
import { say, speak, type TextKey } from "../../texts/say.ts";
import { localDate, offsetMinutesOf } from "../claims/local-date.ts";
import type { Deps } from "../deps.ts";
import { readOrder } from "../orders/read-orders.ts";

export async function readWarranty(
	deps: Deps,
	caller: Caller,
	orderId: string,
	asked: WarrantyQuery,
): Promise<WarrantyView> {
	const order = await readOrder(deps, caller, orderId);
	const { months = null, covers = null } = order.terms.warranty ?? {};
	const start = startOf(order);
	const failedOn = asked.failedOn ?? null;
	const judged = speak(
		warranty({
			months,
			startsOn: start.on,
			failedOn,
			sameFault: asked.sameFault ?? "not-known",
			samePart: asked.samePart ?? "not-known",
			eventSince: asked.eventSince ?? "not-known",
		}),
	);
	const today = localDate(deps.now(), start.offsetMinutes);
	return {
		orderId: order.id,
		months,
		covers,
		startsOn: start.on,
		startBasis: start.basis,
		endsOn: judged.endsOn,
		leftDays: judged.endsOn === null ? null : daysBetween(today, judged.endsOn),
		failedOn,
		leftAtFailureDays: judged.leftAtFailureDays,
		time: judged.time,
		for: [...judged.for],
		against: [...judged.against],
		open: [...judged.open],
		floors: WARRANTY_FLOORS.filter(
			(floor) =>
				floor.country === order.owner.country &&
				floor.contractKinds.includes(order.contractKind) &&
				(!floor.consumersOnly || order.owner.kind === "consumer"),
		).map(({ id, source, readOn }) => ({
			text: say(`warranty.floor-${id}` as TextKey),
			document: source.document,
			locator: source.locator,
			standing: source.standing,
			readOn,
		})),
	};
}

/** The clock starts when the owner has the item again, at the first leg back of which that is noted. Our choice: terms seldom say. */
function startOf(order: OrderView): {
	readonly on: string | null;
	readonly basis: WarrantyView["startBasis"];
	readonly offsetMinutes: number;
} {
	for (const { direction, facts } of order.consignments) {
		const time = facts.inHandAt ?? facts.deliveredAt;
		if (direction === "to-owner" && time !== undefined) {
			return {
				on: time.slice(0, 10),
				basis: facts.inHandAt === undefined ? "delivered" : "in-hand",
				offsetMinutes: offsetMinutesOf(time),
			};
		}
	}
	return { on: null, basis: "not-known", offsetMinutes: 0 };
}
