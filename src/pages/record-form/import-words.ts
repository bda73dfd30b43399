/** What became of a diagnostic output beside what was taken: values left where they are, gaps, and what it names of people. */
import type { ImportPreview } from "../../contract/imports.ts";
import { isTextKey, say } from "../../texts/say.ts";

/** So many things are named one by one. Source: our choice. */
const NAMED = 8;

/** Sentences about a file that was read; `taken` are the checks whose readings the draft has from it. */
export function importWords(preview: ImportPreview, taken: readonly string[]): string[] {
	const { readings, personal } = preview;
	const left = readings.filter(({ check, value }) => value !== null && !taken.includes(check));
	const gaps = readings.filter(({ value }) => value === null);
	const people = personal.map(({ kind, text }) => say(`import.personal.${kind}`, { text }));
	return [
		...sentence("import.not-taken", [...new Set(left.map(({ check }) => checkInWords(check)))]),
		...sentence("import.no-value", [
			...new Set(gaps.map(({ check, nullReason }) => `${checkInWords(check)} (${reasonOf(nullReason ?? "")})`)),
		]),
		...sentence("import.personal", people),
	];
}

function sentence(
	key: "import.not-taken" | "import.no-value" | "import.personal",
	things: readonly string[],
): string[] {
	if (things.length === 0) return [];
	const more = things.length - NAMED;
	const named = [...things.slice(0, NAMED), ...(more > 0 ? [say("import.more", { count: more })] : [])];
	return [say(key, { found: named.join(", ") })];
}

/** The name of a check, or its id where it is in no catalogue. */
export function checkInWords(check: string): string {
	const key = `checks.${check}`;
	return isTextKey(key) ? say(key) : check;
}

function reasonOf(code: string): string {
	const key = `import.null.${code}`;
	return isTextKey(key) ? say(key) : code;
}
