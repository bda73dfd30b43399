/** A file line by line: what each line gave, and which gave nothing, so that a person sees what was passed over. */
import type { AccountedLines, FormatResult } from "./import-result.ts";

/** So many entries are listed. Our choice: real outputs give fewer. */
const MOST_ENTRIES = 400;
/** So much of a line is shown. Our choice. */
const SHOWN = 120;

/** In order; lines that gave nothing and stand together are one entry. */
export function accountedLines(
	text: string,
	{ readings, identity, warnings, columns }: Pick<FormatResult, "readings" | "identity" | "warnings" | "columns">,
): AccountedLines[] {
	const lines = text.split("\n").map((line) => line.replace(/\r$/, ""));
	if (lines.at(-1) === "") lines.pop();
	const gave = new Map<number, { readonly checks: Set<string>; readonly identity: Set<string> }>();
	const at = (line: number) => {
		const there = gave.get(line) ?? { checks: new Set<string>(), identity: new Set<string>() };
		gave.set(line, there);
		return there;
	};
	for (const { check, lines: from } of readings) for (const line of from) at(line).checks.add(check);
	for (const { line } of warnings) if (line !== null) at(line);
	for (const [member, value] of Object.entries(identity)) {
		const place = value === "" ? -1 : lines.findIndex((line) => line.includes(value));
		if (place >= 0) at(place + 1).identity.add(member);
	}
	// A recorder's table is read by its columns.
	if (columns !== undefined) at(lines.findIndex((line) => line.includes(columns[0]?.name ?? "")) + 1);
	const entries: AccountedLines[] = [];
	let next = 1;
	const passed = (before: number) => {
		if (next < before)
			entries.push({ from: next, to: before - 1, text: shownOf(lines[next - 1]), checks: [], identity: [] });
	};
	for (const [line, found] of [...gave].sort(([one], [other]) => one - other)) {
		if (line < 1 || line > lines.length) continue;
		if (entries.length >= MOST_ENTRIES) return entries;
		passed(line);
		entries.push({
			from: line,
			to: line,
			text: shownOf(lines[line - 1]),
			checks: [...found.checks],
			identity: [...found.identity],
		});
		next = line + 1;
	}
	passed(lines.length + 1);
	return entries;
}

function shownOf(line: string | undefined): string {
	const whole = line ?? "";
	return whole.length > SHOWN ? `${whole.slice(0, SHOWN - 1)}…` : whole;
}
