/** What a sealed record says, opened: for its receipt page. Text that was erased says so. */
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import type { ExhibitFileView } from "../../contract/pictures.ts";
import type { OpenedStatement, StatementReading } from "../../records/record-statement.ts";
import { readingWords } from "../../texts/reading-words.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { ExhibitThumb } from "../pictures/exhibit-thumb.tsx";
import { checkName } from "../record-form/check-control.tsx";
import { viewWords } from "../record-form/photos.tsx";

export function StatementFacts({
	statement,
	checks,
	recordId,
	files,
}: {
	readonly statement: OpenedStatement;
	readonly checks: readonly CheckDefinition[];
	readonly recordId: string;
	readonly files: readonly ExhibitFileView[];
}) {
	const text = (value: string | null | undefined) => (value === null ? say("record.erased") : value);
	const facts: [string, string | null | undefined][] = [
		[say("arrival.serial-number"), statement.identity.serialNumber],
		[say("arrival.maker"), statement.identity.maker],
		[say("arrival.model"), statement.identity.model],
		[say("record.uuid"), statement.identity.uuid],
		[say("record.firmware"), statement.identity.firmware],
		[say("arrival.host"), statement.setUp.host],
		[say("arrival.supply"), statement.setUp.supply],
		[say("record.load"), statement.setUp.load],
		[say("record.reported-words"), statement.reported?.words],
		[say("record.said"), statement.statement],
		[say("record.by"), statement.recordedBy],
	];
	return (
		<>
			<h2>{say(`record.state.${statement.state}` as TextKey)}</h2>
			<dl class="facts">
				{facts
					.filter(([, value]) => value !== undefined)
					.map(([name, value]) => (
						<>
							<dt key={name}>{name}</dt>
							<dd>{text(value)}</dd>
						</>
					))}
			</dl>
			<h2>{say("record.checks")}</h2>
			<table class="stacked">
				<thead>
					<tr>
						<th scope="col">{say("record.check")}</th>
						<th scope="col">{say("record.result")}</th>
						<th scope="col">{say("record.how")}</th>
					</tr>
				</thead>
				<tbody>
					{statement.readings.map((reading) => (
						<tr key={`${reading.check} ${reading.condition}`}>
							<th scope="row">{nameOf(reading, checks)}</th>
							<td data-label={say("record.result")}>{resultWords(reading, checks)}</td>
							<td data-label={say("record.how")}>
								{reading.notTested?.reason === "not-recorded"
									? "–"
									: say(`record.provenance.${reading.provenance}` as TextKey)}
							</td>
						</tr>
					))}
				</tbody>
			</table>
			{statement.exhibits.length > 0 && (
				<>
					<h2>{say("record.exhibits")}</h2>
					<ul class="thumbs">
						{statement.exhibits.map((exhibit) => (
							<li key={`${exhibit.sha256} ${exhibit.view}`}>
								<ExhibitThumb
									recordId={recordId}
									sha256={exhibit.sha256}
									title={viewWords(exhibit.view)}
									fileName={text(exhibit.fileName) ?? exhibit.sha256.slice(0, 12)}
									file={files.find((file) => file.sha256 === exhibit.sha256)}
								/>
							</li>
						))}
					</ul>
				</>
			)}
		</>
	);
}

function nameOf(reading: StatementReading<string | null>, checks: readonly CheckDefinition[]): string {
	const check = checks.find((candidate) => candidate.id === reading.check);
	return reading.definition?.name ?? (check === undefined ? reading.check : checkName(check));
}

/** The result in words; what was looked at once is as it should be, or not. */
function resultWords(reading: StatementReading<string | null>, checks: readonly CheckDefinition[]): string {
	const visual = checks.find((check) => check.id === reading.check)?.kind === "visual";
	if (!visual || reading.trials === undefined) return readingWords(reading);
	return say(reading.successes === reading.trials ? "arrival.check.good" : "arrival.check.bad");
}
