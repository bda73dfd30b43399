/** Any two records of the order laid side by side: a form that needs no script. */
import type { ConsignmentComparison } from "../../operations/comparison/compare-consignment.ts";
import { say } from "../../texts/say.ts";
import { offsetOf, showTime } from "../../texts/shown-time.ts";

export function ChooseRecords({ found }: { readonly found: ConsignmentComparison }) {
	const { records, order, consignment, departure, arrival } = found;
	if (records.length < 3) return null;
	const options = records.map(({ view, statement }) => ({
		id: view.id,
		words: say(`comparison-page.record.${view.stage}`, {
			time: showTime(statement.observed.at, offsetOf(statement.observed.offsetMinutes)),
		}),
	}));
	return (
		<form class="no-print" method="get" action={`/orders/${order.id}/consignments/${consignment.id}/comparison`}>
			<h2>{say("comparison-page.choose-records")}</h2>
			{(
				[
					["from", departure],
					["to", arrival],
				] as const
			).map(([name, chosen]) => (
				<p key={name}>
					<label for={`choose-${name}`}>{say(`comparison-page.choose-records.${name}`)}</label>{" "}
					<select id={`choose-${name}`} name={name}>
						{options.map(({ id, words }) => (
							<option key={id} value={id} selected={id === chosen?.view.id}>
								{words}
							</option>
						))}
					</select>
				</p>
			))}
			<button type="submit">{say("comparison-page.choose-records.do")}</button>
		</form>
	);
}
