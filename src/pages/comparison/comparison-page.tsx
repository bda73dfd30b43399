/** Both ends of a leg side by side, the same page for both sides. First what a worried person needs; then every check. */
import type { ComparisonRow } from "../../calculations/comparison/types.ts";
import type { ConsignmentComparison } from "../../operations/comparison/compare-consignment.ts";
import { isComparable, isTested, leadScreen, rowName } from "../../operations/comparison/lead-screen.ts";
import type { SealedRecord } from "../../operations/records/record-views.ts";
import { isTextKey, say, speak, type TextKey } from "../../texts/say.ts";
import { CustodySpine } from "../components/custody-spine.tsx";
import { ErasedNote } from "../components/erased-note.tsx";
import { PlatformNote } from "../customer/platform-note.tsx";
import { Layout } from "../layout.tsx";
import { readingWords } from "../record-form/reading-words.ts";
import { groupsOfFour, offsetOf, showTime } from "../record-form/shown-time.ts";

export function ComparisonPage({ found }: { readonly found: ConsignmentComparison }) {
	const { order, departure, arrival, comparison } = found;
	const both = departure !== null && arrival !== null;
	return (
		<Layout title={say("comparison-page.title")}>
			<p class="step-of">
				{order.item.maker} {order.item.model}
			</p>
			{order.owner.erasedAt !== undefined && <ErasedNote at={order.owner.erasedAt} />}
			{both ? (
				<p class="lead">{say(`comparison-page.lead.${comparison.outcome}`)}</p>
			) : (
				<div class="note">
					<h2>{say("comparison-page.not-yet-title")}</h2>
					<p>{say("comparison-page.not-yet")}</p>
				</div>
			)}
			<div class="two-ends">
				<End title={say("comparison-page.left")} record={departure} />
				<End title={say("comparison-page.arrived")} record={arrival} />
			</div>
			{both && <FirstScreen found={found} />}
			{both && <PlatformNote content={arrival.statement} />}
			{both && <Identity found={found} />}
			{both && <Checks found={found} />}
			<Links found={found} />
			{both && <Untested found={found} />}
			<section>
				<CustodySpine order={order} line={found.line} records={found.records} drafts={[]} href={() => null} />
				<p class="hint">{say("comparison-page.custody-text")}</p>
				<p class="no-print">
					<a href={`/orders/${order.id}/consignments/${found.consignment.id}/pack`}>{say("pack.shipped-title")}</a>
				</p>
				<Fingerprints found={found} />
			</section>
			<p class="note">{say("comparison-page.disclaimer")}</p>
			<p class="hint">{say("comparison-page.both-see")}</p>
			<p class="hint no-print">{say("comparison-page.print")}</p>
		</Layout>
	);
}

function End({ title, record }: { readonly title: string; readonly record: SealedRecord | null }) {
	if (record === null) {
		return (
			<section>
				<h2>{title}</h2>
				<p>{say("comparison-page.none-sealed")}</p>
			</section>
		);
	}
	const { statement, view } = record;
	const { at, offsetMinutes } = statement.observed;
	return (
		<section>
			<h2>{title}</h2>
			<p>
				<strong>{say(`arrival.state.${statement.state}` as TextKey)}</strong>
			</p>
			<p class="hint">{say("comparison-page.seen", { time: showTime(at, offsetOf(offsetMinutes)) })}</p>
			{view.provenance === "reported-to" && <p>{say("comparison-page.reported")}</p>}
			{statement.reported?.words && <blockquote>{statement.reported.words}</blockquote>}
			{statement.statement && <blockquote>{statement.statement}</blockquote>}
		</section>
	);
}

/** Which bytes were compared: whoever holds a receipt can check that they are these. */
function Fingerprints({ found }: { readonly found: ConsignmentComparison }) {
	const ends = [
		["comparison-page.left", found.departure],
		["comparison-page.arrived", found.arrival],
	] as const;
	return (
		<dl class="facts">
			{ends.map(([title, record]) => (
				<>
					<dt>
						{say(title)}, {say("comparison-page.fingerprint")}
					</dt>
					<dd class="fingerprint">{groupsOfFour(record?.view.sealed?.fingerprint ?? "")}</dd>
				</>
			))}
		</dl>
	);
}

function FirstScreen({ found }: { readonly found: ConsignmentComparison }) {
	const findings = leadScreen(found, (at, offsetMinutes) => showTime(at, offsetOf(offsetMinutes)));
	return (
		<>
			<Sentences title="comparison-page.certain" none="comparison-page.certain-none" sentences={findings.certain} />
			<Sentences
				title="comparison-page.uncertain"
				none="comparison-page.uncertain-none"
				sentences={findings.uncertain}
			/>
			<Sentences title="comparison-page.between" none="comparison-page.between-none" sentences={findings.placed} />
			<Sentences title="comparison-page.next" none="comparison-page.between-none" sentences={findings.next} />
			{findings.elsewhere.length > 0 && (
				<Sentences
					title="comparison-page.elsewhere"
					none="comparison-page.between-none"
					sentences={findings.elsewhere}
				/>
			)}
		</>
	);
}

function Sentences({
	title,
	none,
	sentences,
}: {
	readonly title: TextKey;
	readonly none: TextKey;
	readonly sentences: readonly string[];
}) {
	return (
		<section>
			<h2>{say(title)}</h2>
			{sentences.length === 0 ? (
				<p>{say(none)}</p>
			) : (
				<ul>
					{sentences.map((sentence) => (
						<li key={sentence}>{sentence}</li>
					))}
				</ul>
			)}
		</section>
	);
}

function Identity({ found }: { readonly found: ConsignmentComparison }) {
	const { identity } = found.comparison;
	const rows = [
		["agree", identity.agree],
		["differ", identity.differ],
		["read-alike", identity.readAlike],
		["not-seen", identity.notSeen],
	] as const;
	return (
		<section>
			<h2>{say("comparison-page.identity")}</h2>
			<dl class="facts">
				{rows
					.filter(([, marks]) => marks.length > 0)
					.map(([kind, marks]) => (
						<>
							<dt>{say(`comparison-page.identity.${kind}`)}</dt>
							<dd>{marks.map(markWords).join(", ")}</dd>
						</>
					))}
			</dl>
		</section>
	);
}

/** A mark by name; a natural mark is named by its own description. */
function markWords(mark: string): string {
	const key = `comparison-page.identity.${mark}`;
	return isTextKey(key) ? say(key) : mark;
}

function Checks({ found }: { readonly found: ConsignmentComparison }) {
	const rows = found.comparison.rows.filter((row) => isTested(row.departure) || isTested(row.arrival));
	if (rows.length === 0) return null;
	return (
		<section>
			<h2>{say("comparison-page.checks")}</h2>
			{!isComparable(found) && <p class="note">{say("comparison-page.checks-apart")}</p>}
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
						<CheckRow key={row.check.id} row={row} found={found} />
					))}
				</tbody>
			</table>
		</section>
	);
}

function CheckRow({ row, found }: { readonly row: ComparisonRow; readonly found: ConsignmentComparison }) {
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
			</td>
		</tr>
	);
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

function Links({ found }: { readonly found: ConsignmentComparison }) {
	const { departure, arrival } = found.link;
	if (departure === null && arrival === null) return null;
	const words = (judged: typeof departure) => {
		if (judged === null) return say("comparison-page.not-recorded");
		return speak(judged.status === "assessed" ? judged.result.why : judged.reason.message);
	};
	return (
		<section>
			<h2>{say("comparison-page.link")}</h2>
			<dl class="facts">
				<dt>{say("comparison-page.left")}</dt>
				<dd>{words(departure)}</dd>
				<dt>{say("comparison-page.arrived")}</dt>
				<dd>{words(arrival)}</dd>
			</dl>
		</section>
	);
}

function Untested({ found }: { readonly found: ConsignmentComparison }) {
	const untested = (end: "departure" | "arrival") =>
		found.comparison.rows
			.filter((row) => !isTested(row[end]))
			.map((row) => {
				const reason = row[end]?.notTested;
				const why =
					reason === undefined || reason === "not-recorded"
						? ""
						: ` (${say(`arrival.not-tested.${reason}` as TextKey)})`;
				return `${rowName(row)}${why}`;
			});
	return (
		<section>
			<h2>{say("comparison-page.untested")}</h2>
			<p>{say("comparison-page.untested-text")}</p>
			{(["departure", "arrival"] as const).map((end) => (
				<div key={end}>
					<h3>{say(`comparison-page.untested.${end}`)}</h3>
					<p>{untested(end).join("; ") || say("comparison-page.untested-none")}</p>
				</div>
			))}
		</section>
	);
}
