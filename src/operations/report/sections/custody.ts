/** Where the item was between any two records, and on which of these stretches a change lies. */
import { paragraph, type Section, table } from "../../../reports/report.ts";
import type { ReportKey } from "../../../texts/say.ts";
import { isSealedLate, lateSealNote, sealedLateWords } from "../../records/sealed-late.ts";
import type { ReportFacts } from "../report-facts.ts";
import { claimed, nameOfParty, stateOf, titleOf } from "../report-words.ts";

export function custody(report: ReportFacts): Section {
	const { line, records, order, speaker } = report;
	const { say, showTime, between } = speaker;
	const rows = line.recordIds.flatMap((id, place) => {
		const record = records.find(({ view }) => view.id === id);
		if (record === undefined) return [];
		const { observed } = record.statement;
		const next = line.recordIds[place + 1];
		return [
			[
				claimed(observed, speaker),
				say("report.custody-seen", { what: titleOf(order, record, speaker), state: stateOf(record, speaker) }),
				[
					say("report.custody-sealed", { index: String(record.entry.index), time: showTime(record.entry.time) }),
					sealedLateWords({ seenAt: observed.at, sealedAt: record.entry.time }, speaker),
				]
					.filter((words) => words !== null)
					.join(between),
			],
			...line.spans.flatMap((span, at) =>
				span.afterRecordId === id && span.beforeRecordId === next ? [spanRow(report, at)] : [],
			),
		];
	});
	const head = [say("report.custody-when"), say("report.custody-what"), say("report.custody-by")];
	return {
		title: say("report.custody"),
		blocks: [
			paragraph(say("report.custody-text")),
			...(records.some(({ statement, entry }) => isSealedLate({ seenAt: statement.observed.at, sealedAt: entry.time }))
				? [paragraph(lateSealNote(speaker))]
				: []),
			rows.length === 0 ? paragraph(say("report.none")) : table(head, [3, 5, 3], rows),
		],
	};
}

function spanRow({ line, order, speaker }: ReportFacts, at: number): string[] {
	const { say } = speaker;
	const span = line.spans[at];
	if (span === undefined) return [];
	const words = say(`spine.span-${span.kind}` as ReportKey, { name: nameOfParty(order, span.holderId) });
	const changed = line.changes.some((change) => change.kind === "lost" && change.spans.includes(at));
	return ["↓", changed ? say("report.custody-changed", { span: words }) : words, ""];
}
