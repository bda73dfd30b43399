/** Every check with both readings, what became of it, and both values on one scale. A filter by query needs no script. */
import type { ComparisonRow } from "../../calculations/comparison/types.ts";
import { type EndOnScale, twoEnds } from "../../charts/two-ends.ts";
import type { ComparisonView } from "../../contract/comparison.ts";
import type { ConsignmentComparison } from "../../operations/comparison/compare-consignment.ts";
import { isTested } from "../../operations/comparison/is-tested.ts";
import { isComparable, isHeldApart, rowName } from "../../operations/comparison/lead-screen.ts";
import type { SealedRecord } from "../../operations/records/record-views.ts";
import { readingWords } from "../../texts/reading-words.ts";
import { say, speak, writeNumber } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";

/** What of the table is shown. */
export const SHOWN = ["all", "changed", "open", "once"] as const;
export type Shown = (typeof SHOWN)[number];

export function CheckTable(props: {
	readonly found: ConsignmentComparison;
	readonly view: ComparisonView;
	readonly shown: Shown;
	/** Address of the page with another choice. */
	readonly href: (shown: Shown) => string;
}) {
	const { found, view, shown } = props;
	const tested = found.comparison.rows.filter((row) => isTested(row.departure) || isTested(row.arrival));
	if (tested.length === 0) return null;
	const rows = tested.filter((row) => isShown(row, shown));
	return (
		<section id="checks">
			<h2>{say("comparison-page.checks")}</h2>
			{!isComparable(found) && <p class="note">{say("comparison-page.checks-apart")}</p>}
			<p class="no-print">
				{say("comparison-page.show")}:{" "}
				{SHOWN.map((choice, index) => (
					<>
						{index > 0 && " · "}
						{choice === shown ? (
							<strong aria-current="true">{say(`comparison-page.show.${choice}`)}</strong>
						) : (
							<a href={props.href(choice)}>{say(`comparison-page.show.${choice}`)}</a>
						)}
					</>
				))}
			</p>
			{rows.length === 0 ? (
				<p>{say("comparison-page.show-none")}</p>
			) : (
				<table class="stacked">
					<thead>
						<tr>
							{(["check", "departure", "arrival", "verdict"] as const).map((column) => (
								<th key={column} scope="col">
									{say(`comparison-page.column.${column}`)}
								</th>
							))}
						</tr>
					</thead>
					<tbody>
						{rows.map((row) => (
							<CheckRow
								key={row.check.id}
								row={row}
								found={found}
								ends={view.checks.find(({ check }) => check === row.check.id)}
							/>
						))}
					</tbody>
				</table>
			)}
			{view.adjustedFor > 1 && <p class="hint">{say("comparison-page.adjusted-for", { count: view.adjustedFor })}</p>}
		</section>
	);
}

function isShown({ comparison, departure, arrival }: ComparisonRow, shown: Shown): boolean {
	const judged = comparison.status === "assessed" ? comparison.result : null;
	switch (shown) {
		case "all":
			return true;
		case "changed":
			return (
				judged?.verdict === "differs" ||
				[judged?.conformity.departure, judged?.conformity.arrival].some((end) => end?.verdict === "proven-bad")
			);
		case "open":
			return judged?.verdict === "inconclusive" || judged?.verdict === "not-comparable";
		case "once":
			return isTested(departure) !== isTested(arrival);
	}
}

function CheckRow({
	row,
	found,
	ends,
}: {
	readonly row: ComparisonRow;
	readonly found: ConsignmentComparison;
	readonly ends: ComparisonView["checks"][number] | undefined;
}) {
	const { comparison } = row;
	const judged = comparison.status === "assessed" ? comparison.result : null;
	const verdict = say(`comparison-page.verdict.${judged?.verdict ?? "not-assessed"}`);
	const changed = judged?.verdict === "differs" ? judged.direction : null;
	const direction = changed === null ? "" : ` ${say(`comparison-page.direction.${changed}`)}`;
	const why = comparison.status === "assessed" ? comparison.result.why : comparison.reason.message;
	const cell = (end: "departure" | "arrival") => (
		<td data-label={say(`comparison-page.column.${end}`)}>
			{readingAt(found[end], row, end)}
			{judged !== null && isTested(row[end]) && (
				<span class="hint conformity">
					{say(`comparison-page.conformity.${judged.conformity[end]?.verdict ?? "none"}`)}
				</span>
			)}
		</td>
	);
	return (
		<>
			<tr>
				<th scope="row">{rowName(row)}</th>
				{cell("departure")}
				{cell("arrival")}
				<td data-label={say("comparison-page.column.verdict")}>
					<strong>
						{verdict}
						{direction}
					</strong>
					<span class="hint conformity">{speak(why)}</span>
					{judged !== null && isHeldApart(judged) && (
						<span class="hint conformity">{say("comparison-page.certain.apart")}</span>
					)}
				</td>
			</tr>
			<OnOneScale row={row} ends={ends} />
		</>
	);
}

/** Both ends drawn, where they may be compared, both have a number and one of them an interval. */
function OnOneScale({
	row,
	ends,
}: {
	readonly row: ComparisonRow;
	readonly ends: ComparisonView["checks"][number] | undefined;
}) {
	const [left, came] = [ends?.departure?.estimate, ends?.arrival?.estimate];
	const apart = row.comparison.result?.verdict === "not-comparable";
	if (!left || !came || apart || row.check.kind === "visual") return null;
	if (left.interval === null && came.interval === null) return null;
	const unit = left.of === "value" ? (row.check.unitSymbol ?? "") : say(`comparison-page.scale.${left.of}`);
	const limits = [row.check.limits, row.departure?.limits, row.arrival?.limits];
	const drawing = twoEnds({
		departure: left,
		arrival: came,
		limits: left.of === "value" ? limits.flatMap((limit) => [limit?.low ?? [], limit?.high ?? []].flat()) : [],
		words: {
			title: say("comparison-page.scale.title", { check: rowName(row), unit }),
			description: say("comparison-page.scale.description", { departure: endWords(left), arrival: endWords(came) }),
			departure: say("comparison-page.left"),
			arrival: say("comparison-page.arrived"),
			tick: (value) => writeNumber(value),
		},
	});
	return (
		<tr class="scale">
			<td colSpan={4} data-label={say("comparison-page.scale")}>
				<Chart drawing={drawing} id={`scale-${row.check.id}`} small={true} />
				<span class="hint conformity">{unit}</span>
			</td>
		</tr>
	);
}

function endWords({ value, interval }: EndOnScale): string {
	const bound = (end: number | null) => (end === null ? "…" : writeNumber(end));
	if (interval === null) return writeNumber(value);
	return say("comparison-page.scale.end", {
		value: writeNumber(value),
		low: bound(interval[0]),
		high: bound(interval[1]),
	});
}

/** What the sealed record says of a check, with the digits as typed. */
function readingAt(record: SealedRecord | null, row: ComparisonRow, end: "departure" | "arrival"): string {
	const compared = row[end];
	const reading = record?.statement.readings.find(
		(candidate) => candidate.check === row.check.id && candidate.condition === compared?.condition,
	);
	if (compared === null || reading === undefined) return say("comparison-page.not-recorded");
	const words = readingWords(reading, row.check.kind);
	if (reading.provenance === "imported") return `${words} (${say("comparison-page.imported")})`;
	return reading.provenance === "reported-to" ? `${words} (${say("comparison-page.reported-reading")})` : words;
}
