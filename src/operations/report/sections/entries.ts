/** Every act that the log holds of the order, one row each: drafts that were opened or discarded too. */
import { type Block, paragraph, subheading, table } from "../../../reports/report.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { ReportFacts } from "../report-facts.ts";
import { throughWhat } from "../report-words.ts";

export function entryBlocks({ entries, speaker }: ReportFacts): Block[] {
	const { say, showTime, colon } = speaker;
	if (entries.length === 0) return [];
	const head = [
		say("report.entries-number"),
		say("report.entries-what"),
		say("report.entries-when"),
		say("report.entries-by"),
	];
	const rows = entries.map(({ index, kind, subject, time, byId }) => [
		String(index),
		`${say(`verify.kind.${kind}` as ReportKey)}${colon}${subject}`,
		showTime(time),
		throughWhat(byId, speaker),
	]);
	return [
		subheading(say("report.entries")),
		paragraph(say("report.entries-text")),
		table(head, [1.2, 5.5, 3.4, 3], rows),
	];
}
