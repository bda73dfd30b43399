/** Where a settlement sends the item: the leg that was opened for it, or, for the shop, the way to open one. */
import type { OrderView } from "../../contract/orders.ts";
import type { RecordView } from "../../contract/records.ts";
import type { SettlementStepView } from "../../contract/settlement.ts";
import { say } from "../../texts/say.ts";
import { Form, Submit } from "../components/form.tsx";

export function NextLeg(props: {
	readonly order: OrderView;
	readonly records: readonly RecordView[];
	readonly itemNext: SettlementStepView["itemNext"];
	/** Null for who cannot open a leg. */
	readonly formToken: string | null;
}) {
	const { order, itemNext, formToken } = props;
	if (itemNext !== "to-owner" && itemNext !== "to-repairer") return null;
	const hasLeft = (legId: string) =>
		props.records.some(
			({ consignmentId, stage, sealed }) => consignmentId === legId && stage === "departure" && sealed !== null,
		);
	const last = order.consignments.at(-1);
	const waiting = last !== undefined && last.direction === itemNext && !hasLeft(last.id) ? last : null;
	return (
		<>
			<p>{say("settling.next-leg")}</p>
			{waiting !== null && (
				<p>
					{formToken === null ? (
						say("settling.next-leg-waits", { leg: waiting.leg })
					) : (
						<a href={`/orders/${order.id}`}>{say("settling.next-leg-waits", { leg: waiting.leg })}</a>
					)}
				</p>
			)}
			{waiting === null && formToken !== null && (
				<Form action={`/orders/${order.id}/consignments`} formToken={formToken}>
					<Submit name="direction" value={itemNext} label={say(`settling.open-leg-${itemNext}`)} />
				</Form>
			)}
		</>
	);
}
