/**
 * A JSON text as a tree with line numbers and the characters of every number. Duplicate members are refused, since two
 * values for one name say nothing; so is a fragment. Lines that a tool printed before the first brace are passed over
 * with a warning.
 */
import { type MemberNode, parse, type ValueNode } from "@humanwhocodes/momoa";
import { ImportRefusal, type ImportWarning, warning } from "./import-result.ts";

export interface JsonNode {
	readonly kind: "object" | "array" | "string" | "number" | "boolean" | "null";
	/** Text of a string, digits of a number, `true`, `false` or `null`; empty for the others. */
	readonly raw: string;
	readonly line: number;
	readonly members: ReadonlyMap<string, JsonNode>;
	readonly elements: readonly JsonNode[];
}

/** Nesting that is taken; real files stay below 10. Source: our choice. */
const DEEPEST = 32;
/** Characters that are taken; real files stay below 200,000. Source: our choice. */
const LONGEST = 2 * 1024 * 1024;
/** Lines of talk before the JSON. Source: our choice. */
const MOST_TALK = 10;

/** @throws ImportRefusal with the line of what is wrong */
export function readJson(text: string, warnings: ImportWarning[]): JsonNode {
	const { json, skipped } = withoutTalk(text);
	if (json.length > LONGEST) throw new ImportRefusal("too-long", null, { most: LONGEST });
	if (skipped > 0) warnings.push(warning("lines-before", 1, { count: skipped }));
	const deep = tooDeepAt(json);
	if (deep !== null) throw new ImportRefusal("json-too-deep", skipped + deep);
	let body: ValueNode;
	try {
		body = parse(json, { mode: "json", ranges: true }).body;
		// Control characters inside a string are the one thing that the syntax tree lets pass.
		JSON.parse(json);
	} catch (fault) {
		const { line, column } = fault as { line?: number; column?: number };
		throw new ImportRefusal("json-broken", skipped + (line ?? 1), { column: column ?? 1 });
	}
	return nodeOf(body, json, skipped);
}

/** Whether a text is JSON as a whole, or meant to be. */
export function looksLikeJson(text: string): boolean {
	return /^[[{]/.test(withoutTalk(text.slice(0, 8192)).json.trimStart());
}

/** A node below another; undefined where there is none. */
export function jsonAt(node: JsonNode | undefined, ...path: readonly string[]): JsonNode | undefined {
	return path.reduce<JsonNode | undefined>((found, name) => found?.members.get(name), node);
}

/** The text of a string, undefined for anything else. */
export function jsonText(node: JsonNode | undefined): string | undefined {
	return node?.kind === "string" ? node.raw : undefined;
}

function withoutTalk(text: string): { json: string; skipped: number } {
	const lines = text.split("\n", MOST_TALK + 1);
	const skipped = lines.findIndex((line) => /^\s*[[{]/.test(line));
	if (skipped <= 0) return { json: text, skipped: 0 };
	const start = lines.slice(0, skipped).reduce((sum, line) => sum + line.length + 1, 0);
	return { json: text.slice(start), skipped };
}

function nodeOf(node: ValueNode, text: string, skipped: number): JsonNode {
	const line = node.loc.start.line + skipped;
	const base = { raw: "", line, members: new Map<string, JsonNode>(), elements: [] };
	switch (node.type) {
		case "Object": {
			const members = new Map<string, JsonNode>();
			for (const member of node.members) {
				const name = nameOf(member);
				if (members.has(name))
					throw new ImportRefusal("json-duplicate", member.loc.start.line + skipped, { name: name.slice(0, 60) });
				members.set(name, nodeOf(member.value, text, skipped));
			}
			return { ...base, kind: "object", members };
		}
		case "Array":
			return {
				...base,
				kind: "array",
				elements: node.elements.map((element) => nodeOf(element.value, text, skipped)),
			};
		case "String":
			return { ...base, kind: "string", raw: node.value };
		case "Number":
			return { ...base, kind: "number", raw: text.slice(node.loc.start.offset, node.loc.end.offset) };
		case "Boolean":
			return { ...base, kind: "boolean", raw: String(node.value) };
		default:
			return { ...base, kind: "null", raw: "null" };
	}
}

function nameOf(member: MemberNode): string {
	return member.name.type === "String" ? member.name.value : member.name.name;
}

/** The line at which brackets nest too deep, told before parsing, since the parser recurses. */
function tooDeepAt(text: string): number | null {
	let depth = 0;
	let line = 1;
	let inString = false;
	for (let index = 0; index < text.length; index += 1) {
		const character = text[index];
		if (character === "\n") line += 1;
		if (inString) {
			if (character === "\\") index += 1;
			else if (character === '"') inString = false;
		} else if (character === '"') inString = true;
		else if (character === "[" || character === "{") {
			depth += 1;
			if (depth > DEEPEST) return line;
		} else if (character === "]" || character === "}") depth -= 1;
	}
	return null;
}
