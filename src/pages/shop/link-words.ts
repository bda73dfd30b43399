/** What a link of an order is for; where it is for one record, which, so that two are told apart. */
import type { LinkView } from "../../contract/access.ts";
import type { RecordView } from "../../contract/records.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import { say, type TextKey } from "../../texts/say.ts";

export function linkWords(found: OrderLine, link: LinkView): string {
	const records = [...found.records.map(({ view }) => view), ...found.drafts];
	const record = records.find(({ id }) => id === link.recordId);
	return record === undefined ? say(`shop.scope.${link.scope}` as TextKey) : recordWords(found, record);
}

/** The stage of a record and its leg. */
export function recordWords({ order }: OrderLine, { stage, consignmentId }: RecordView): string {
	const what = say(`record.title-${stage}` as TextKey);
	const leg = order.consignments.find(({ id }) => id === consignmentId)?.leg;
	return leg === undefined ? what : say("shop.record-of-leg", { what, leg });
}
