/** What an order waits for and what it has come to, in words. */
import type { SettlementStepView } from "../../contract/settlement.ts";
import type { OrderAttention } from "../../operations/orders/order-attention.ts";
import { amountsWords } from "../../operations/settling/settling-words.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { showDay } from "./days.ts";

/** What the order waits for, then what was settled; empty where it is neither. */
export function standingWords(found: OrderAttention): string[] {
	const { settled } = found;
	return [
		...waitsWords(found),
		...arrivedWords(found),
		...(settled === null ? [] : [settledWords(settled.at, settled.outcome)]),
	];
}

function waitsWords({ drafts, lacksArrival, lacksDeparture, arrivedWorse, isProposed }: OrderAttention): string[] {
	return [
		...(drafts > 0 ? [say("shop.waits-drafts", { count: drafts })] : []),
		...(lacksArrival ? [say("shop.waits-arrival")] : []),
		...(lacksDeparture ? [say("shop.waits-departure")] : []),
		...(arrivedWorse === null && isProposed ? [say("shop.waits-proposal")] : []),
	];
}

/** Said at the head of the order's own page. */
export function OrderStanding(props: {
	readonly attention: OrderAttention | null;
	/** The proposal that both sides agreed on. */
	readonly settled: SettlementStepView | null;
}) {
	const { attention, settled } = props;
	if (attention === null) return null;
	const waits = waitsWords(attention);
	const arrived = arrivedWords(attention);
	if (attention.settled !== null && settled !== null) {
		arrived.push(
			[
				settledWords(attention.settled.at, attention.settled.outcome),
				...(settled.amounts.length === 0 ? [] : [amountsWords(settled.amounts)]),
				...(settled.itemNext === null
					? []
					: [say("shop.settled-item", { next: say(`settling.item.${settled.itemNext}`) })]),
			].join("; "),
		);
	}
	if (waits.length > 0) arrived.push(say("shop.waits", { things: waits.join("; ") }));
	if (arrived.length === 0) return null;
	return <p class="note">{arrived.map((words) => `${words}.`).join(" ")}</p>;
}

function arrivedWords({ arrivedWorse, isProposed, settled }: OrderAttention): string[] {
	if (arrivedWorse === null) return [];
	const state = say(`shop.arrived.${arrivedWorse.state}` as TextKey);
	const arrived = arrivedWorse.isReported ? `${state} (${say("shop.arrived-reported")})` : state;
	if (settled !== null) return [arrived];
	return [say(isProposed ? "shop.settled-proposed" : "shop.settled-not", { arrived })];
}

function settledWords(at: string, outcome: string): string {
	return say("shop.settled-on", { day: showDay(at), outcome: say(`settling.outcome.${outcome}` as TextKey) });
}
