/** A diagnostic output line by line: what was understood of it, what was warned of, what names someone, and what gave nothing. */
import type { ImportPreview } from "../../contract/imports.ts";
import { isTextKey, say } from "../../texts/say.ts";
import { checkInWords } from "./import-words.ts";

export interface ReadFile {
	readonly fileName: string;
	readonly preview: ImportPreview;
	/** Checks whose readings the draft took. */
	readonly taken: readonly string[];
}

export function FileLines({ file }: { readonly file: ReadFile }) {
	const { preview, fileName } = file;
	return (
		<details class="file-lines" open>
			<summary>{say("import.lines", { file: fileName })}</summary>
			<table class="stacked">
				<thead>
					<tr>
						<th scope="col">{say("import.lines-line")}</th>
						<th scope="col">{say("import.lines-text")}</th>
						<th scope="col">{say("import.lines-what")}</th>
					</tr>
				</thead>
				<tbody>
					{preview.lines.map((entry) => {
						const said = wordsOf(entry, file);
						const lines = entry.from === entry.to ? String(entry.from) : `${entry.from} – ${entry.to}`;
						return (
							<tr key={entry.from} class={said.length === 0 ? "passed-over" : undefined}>
								<th scope="row">{lines}</th>
								<td data-label={say("import.lines-text")}>
									<code>{entry.text}</code>
									{entry.from !== entry.to && " …"}
								</td>
								<td data-label={say("import.lines-what")}>
									{said.length === 0 ? say("import.lines-nothing") : said.join(" ")}
								</td>
							</tr>
						);
					})}
				</tbody>
			</table>
		</details>
	);
}

function wordsOf(
	{ from, to, checks, identity }: ImportPreview["lines"][number],
	{ preview, taken }: ReadFile,
): string[] {
	const inIt = (line: number | null) => line !== null && line >= from && line <= to;
	const people = preview.personal.filter(({ line }) => inIt(line));
	const names = (list: readonly string[]) => list.map(checkInWords).join(", ");
	const used = checks.filter((check) => taken.includes(check));
	const left = checks.filter((check) => !taken.includes(check));
	return [
		...(used.length === 0 ? [] : [say("import.lines-taken", { checks: names(used) })]),
		...(left.length === 0 ? [] : [say("import.lines-left", { checks: names(left) })]),
		...(identity.length === 0 ? [] : [say("import.lines-identity", { members: identity.map(memberName).join(", ") })]),
		...preview.warnings.filter(({ line }) => inIt(line)).map(({ message }) => message),
		...(people.length === 0
			? []
			: [
					say("import.lines-personal", {
						found: people.map(({ kind, text }) => say(`import.personal.${kind}`, { text })).join(", "),
					}),
				]),
	];
}

/** A member of the identity in words; one that no form has keeps its code. */
function memberName(member: string): string {
	const key = `record.member.${member}`;
	return isTextKey(key) ? say(key) : member;
}
