/** One step towards a settlement, and what a proposal says. */
import type { OrderView } from "../../contract/orders.ts";
import type { SettlementStepView } from "../../contract/settlement.ts";
import { amountsWords, stepTitle } from "../../operations/settling/settling-words.ts";
import { say } from "../../texts/say.ts";
import { SealedLine, Words } from "./sealed-line.tsx";
import { nameOf } from "./settling-layout.tsx";

export function SettlementStep(props: {
	readonly order: OrderView;
	readonly steps: readonly SettlementStepView[];
	/** Which of them. */
	readonly place: number;
}) {
	const { order, steps, place } = props;
	const step = steps[place];
	if (step === undefined) return null;
	return (
		<>
			<h2>{stepTitle(steps, place, (partyId) => nameOf(order, partyId))}</h2>
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
			<dd>{amountsWords(step.amounts)}</dd>
			<dt>{say("settling.item-next")}</dt>
			<dd>{say(`settling.item.${step.itemNext}`)}</dd>
		</dl>
	);
}
