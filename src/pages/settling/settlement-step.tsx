/** One step towards a settlement, and what a proposal says. */
import type { OrderView } from "../../contract/orders.ts";
import type { SettlementStepView } from "../../contract/settlement.ts";
import { say } from "../../texts/say.ts";
import { SealedLine, Words } from "./sealed-line.tsx";
import { nameOf } from "./settling-layout.tsx";

export function SettlementStep(props: {
	readonly order: OrderView;
	readonly step: SettlementStepView;
	readonly number: number;
	/** Number of the step that this one is about. */
	readonly about: number;
}) {
	const { order, step } = props;
	const what = say(`settling.act.${step.act}`, { name: nameOf(order, step.partyId), number: props.about });
	return (
		<>
			<h2>{say("settling.step", { number: props.number, what })}</h2>
			{step.state !== null && (
				<p>
					<strong>{say(`settling.state.${step.state}`)}</strong>
				</p>
			)}
			{step.act === "proposes" && <ProposalFacts step={step} />}
			{step.text !== null && <Words text={step.text} />}
			<SealedLine orderId={order.id} sealed={step} />
		</>
	);
}

export function ProposalFacts({ step }: { readonly step: SettlementStepView }) {
	if (step.outcome === null || step.itemNext === null) return null;
	return (
		<dl class="facts">
			<dt>{say("settling.outcome")}</dt>
			<dd>{say(`settling.outcome.${step.outcome}`)}</dd>
			<dt>{say("settling.amounts")}</dt>
			<dd>
				{step.amounts.length === 0
					? say("settling.amount-none")
					: step.amounts
							.map(({ amount, currency, from, to }) =>
								say("settling.amount", {
									amount: amount.toFixed(2),
									currency,
									from: say(`settling.payer.${from}`),
									to: say(`settling.payer.${to}`),
								}),
							)
							.join("; ")}
			</dd>
			<dt>{say("settling.item-next")}</dt>
			<dd>{say(`settling.item.${step.itemNext}`)}</dd>
		</dl>
	);
}
