/** The custody line: records in observed order, the spans between them, drafts at the end. The spine of an order's pages. */
import type { CustodyLine, CustodySpan } from "../../calculations/comparison/types.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordView } from "../../contract/records.ts";
import { isSealedLate, lateSealNote, sealedLateWords } from "../../operations/records/sealed-late.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { showClaimed } from "../shop/days.ts";

export interface SpineRecord {
	readonly view: RecordView;
	readonly statement: OpenedStatement;
}

export function CustodySpine(props: {
	readonly order: OrderView;
	readonly line: CustodyLine;
	readonly records: readonly SpineRecord[];
	readonly drafts: readonly RecordView[];
	/** Address of a record's page for the reader at hand. */
	readonly href: (record: RecordView) => string | null;
}) {
	const { order, line, records } = props;
	return (
		<nav aria-label={say("spine.label")}>
			<h2>{say("spine.label")}</h2>
			<details class="folded">
				<summary>{say("spine.summary", { count: line.recordIds.length + props.drafts.length })}</summary>
				{line.recordIds.length + props.drafts.length === 0 && <p class="hint">{say("spine.empty")}</p>}
				<ol class="custody">
					{line.recordIds.map((id, index) => {
						const record = records.find((candidate) => candidate.view.id === id);
						const next = line.recordIds[index + 1];
						const spans = line.spans.flatMap((span, place) =>
							span.afterRecordId === id && span.beforeRecordId === next ? [place] : [],
						);
						return (
							<>
								{record !== undefined && <Node key={id} record={record} order={order} href={props.href(record.view)} />}
								{spans.map((place) => (
									<Span
										key={place}
										span={line.spans[place] as CustodySpan}
										order={order}
										changed={changedIn(line, place)}
										first={!changedIn(line, place - 1)}
									/>
								))}
							</>
						);
					})}
					{props.drafts.map((draft) => (
						<li key={draft.id} class="node draft">
							<Title record={draft} order={order} href={props.href(draft)} />
							<span class="when">{say("spine.draft")}</span>
						</li>
					))}
				</ol>
				{records.some((record) => isSealedLate(seenAndSealed(record))) && <p class="hint">{lateSealNote()}</p>}
			</details>
		</nav>
	);
}

function seenAndSealed({ view, statement }: SpineRecord) {
	return { seenAt: statement.observed.at, sealedAt: view.sealed?.at ?? statement.observed.at };
}

function Node({
	record,
	order,
	href,
}: {
	readonly record: SpineRecord;
	readonly order: OrderView;
	readonly href: string | null;
}) {
	const { view, statement } = record;
	const late = view.sealed === null ? null : sealedLateWords(seenAndSealed(record));
	return (
		<li class="node">
			<Title record={view} order={order} href={href} />
			<span class="found">{say(`arrival.state.${statement.state}` as TextKey)}</span>
			<span class="when">{say("spine.observed", { time: showClaimed(statement.observed) })}</span>
			{view.sealed !== null && <span class="when">{say("spine.sealed", { time: showTime(view.sealed.at) })}</span>}
			{late !== null && <span class="when">{late}</span>}
		</li>
	);
}

function Title({
	record,
	order,
	href,
}: {
	readonly record: RecordView;
	readonly order: OrderView;
	readonly href: string | null;
}) {
	const name = order.owner.id === record.holderId ? order.owner.name : order.repairer.name;
	const words = say(`spine.${record.stage}` as TextKey, { name });
	return (
		<strong>
			{href === null ? words : <a href={href}>{words}</a>}
			{record.provenance === "reported-to" && ` (${say("spine.reported")})`}
		</strong>
	);
}

function Span({
	span,
	order,
	changed,
	first,
}: {
	readonly span: CustodySpan;
	readonly order: OrderView;
	readonly changed: boolean;
	/** The first of a stretch, which carries the words. */
	readonly first: boolean;
}) {
	const name = span.holderId === order.owner.id ? order.owner.name : order.repairer.name;
	const hours = (Date.parse(span.endsAt) - Date.parse(span.startsAt)) / 3_600_000;
	const length =
		hours >= 48
			? say("spine.days", { count: Math.round(hours / 24) })
			: say("spine.hours", { count: Math.round(hours) });
	return (
		<li class={`span ${span.kind}${changed ? " changed" : ""}`}>
			{say(`spine.span-${span.kind}` as TextKey, { name })}, {length}
			{changed && first && <strong> {say("spine.changed")}</strong>}
		</li>
	);
}

/** Whether something was lost somewhere in this span or in those around it that no record tells apart. */
function changedIn(line: CustodyLine, place: number): boolean {
	return line.changes.some((change) => change.kind === "lost" && change.spans.includes(place));
}
