/** One statement, with its number, what it is about, what it answers and where it is answered. */
import type { OrderView } from "../../contract/orders.ts";
import type { PositionView } from "../../contract/positions.ts";
import type { RecordView } from "../../contract/records.ts";
import { checksWords, testWords } from "../../operations/settling/settling-words.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { SealedLine, Words } from "./sealed-line.tsx";
import { nameOf } from "./settling-layout.tsx";

export function PositionSection(props: {
	readonly order: OrderView;
	readonly position: PositionView;
	readonly records: readonly RecordView[];
	/** Numbers of the statements that answer this one. */
	readonly answeredIn: readonly number[];
}) {
	const { order, position, records } = props;
	const { answers } = position;
	const test = testWords(position);
	const leg = order.consignments.find(({ id }) => id === position.consignmentId);
	const named = records.filter(({ id }) => position.recordIds.includes(id)).map((record) => recordName(order, record));
	return (
		<section class="leg" id={`statement-${position.number}`}>
			<h2>
				{say("settling.statement", { number: position.number, name: nameOf(order, position.partyId) })}{" "}
				{say(`settling.kind.${position.kind}`)}
			</h2>
			{answers !== null && (
				<p>
					<a href={`#statement-${answers.number}`}>
						{say("settling.answers", { number: answers.number, stance: say(`settling.stance.${answers.stance}`) })}
					</a>
				</p>
			)}
			<Words text={position.text} />
			{test !== null && <p>{test}</p>}
			<p class="hint">
				{leg !== undefined && `${say("settling.about-leg", { leg: leg.leg })} `}
				{named.length > 0 && `${say("settling.about-records", { records: named.join("; ") })} `}
				{checksWords(position)}{" "}
				{props.answeredIn.length > 0 && say("settling.answered-in", { numbers: props.answeredIn.join(", ") })}
			</p>
			<SealedLine orderId={order.id} sealed={position} />
		</section>
	);
}

export function recordName(order: OrderView, record: RecordView): string {
	const stage = say(`spine.${record.stage}`, { name: nameOf(order, record.holderId) });
	return record.sealed === null ? stage : `${stage}, ${showTime(record.sealed.at)}`;
}
