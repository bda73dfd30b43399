/**
 * The first stage at the door: is the text JSON that says one thing only? `JSON.parse` keeps the last of two members of
 * one name and rounds numbers that a double cannot hold, silently; both are refused here, all at once.
 */
import { type MemberNode, parse, type ValueNode } from "@humanwhocodes/momoa";
import { type BadMember, escapePointer, fault, invalid } from "../faults.ts";

/** Nesting that is taken; the contract's limit. */
const DEEPEST = 32;

/**
 * The value of a JSON text.
 * @throws Fault malformed-json with line and column; bad-input naming each duplicate member, each number that cannot be
 * held, and nesting that is too deep
 */
export function parseStrictJson(text: string): unknown {
	// Before parsing, since the parsers below recurse.
	if (depthOf(text) > DEEPEST) throw invalid([{ path: "", code: "too-deep", facts: { deepest: DEEPEST } }]);
	const bad: BadMember[] = [];
	try {
		const document = parse(text, { mode: "json", ranges: true });
		inspect(document.body, "", text, bad);
	} catch (error) {
		const { line, column } = error as { line?: number; column?: number };
		throw fault("malformed-json", { facts: { line: line ?? 1, column: column ?? 1 } });
	}
	if (bad.length > 0) throw invalid(bad);
	try {
		return JSON.parse(text);
	} catch {
		// Control characters inside a string are the one thing the syntax tree lets pass.
		throw fault("malformed-json", { facts: { line: 1, column: 1 } });
	}
}

function inspect(node: ValueNode, path: string, text: string, bad: BadMember[]): void {
	if (node.type === "Object") {
		const seen = new Set<string>();
		for (const member of node.members) {
			const name = nameOf(member);
			const memberPath = `${path}/${escapePointer(name)}`;
			if (seen.has(name)) bad.push({ path: memberPath, code: "duplicate-member" });
			seen.add(name);
			inspect(member.value, memberPath, text, bad);
		}
	} else if (node.type === "Array") {
		node.elements.forEach((element, index) => {
			inspect(element.value, `${path}/${index}`, text, bad);
		});
	} else if (node.type === "Number") {
		const digits = text.slice(node.loc.start.offset, node.loc.end.offset);
		const value = Number(digits);
		const held = Number.isFinite(value) && (!/^-?[0-9]+$/.test(digits) || Number.isSafeInteger(value));
		if (!held) bad.push({ path, code: "unsafe-number" });
	}
}

function nameOf(member: MemberNode): string {
	return member.name.type === "String" ? member.name.value : member.name.name;
}

function depthOf(text: string): number {
	let depth = 0;
	let deepest = 0;
	let inString = false;
	for (let index = 0; index < text.length; index += 1) {
		const character = text.charCodeAt(index);
		if (inString) {
			if (character === 0x5c) index += 1;
			else if (character === 0x22) inString = false;
		} else if (character === 0x22) inString = true;
		else if (character === 0x5b || character === 0x7b) {
			depth += 1;
			if (depth > deepest) deepest = depth;
		} else if (character === 0x5d || character === 0x7d) depth -= 1;
	}
	return deepest;
}
