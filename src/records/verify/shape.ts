/** Reads the members of a parsed value, each with the form it must have; what has another is refused with its place. */
import { bytesOfBase64 } from "./base64.ts";
import { type JsonNode, shown } from "./canonical-json.ts";
import { Unreadable, type Why, why } from "./finding.ts";

/** Refuses what stands at `where`. */
export function refuse(where: string, reason: Why, expected?: string, found?: string): never {
	throw new Unreadable({
		where: where === "" ? "/" : where,
		why: reason,
		...(expected === undefined ? {} : { expected: shown(expected) }),
		...(found === undefined ? {} : { found: shown(found) }),
	});
}

/** The members of an object that has all of `required`, may have `optional`, and has no other. */
export function membersOf(
	node: JsonNode,
	where: string,
	required: readonly string[],
	optional: readonly string[] = [],
): (name: string) => JsonNode {
	if (node.type !== "object") refuse(where, why("verify.form-object"));
	for (const name of node.members.keys()) {
		if (!required.includes(name) && !optional.includes(name)) {
			refuse(`${where}/${escaped(name)}`, why("verify.form-unknown"));
		}
	}
	for (const name of required) if (!node.members.has(name)) refuse(`${where}/${name}`, why("verify.form-missing"));
	return (name) => node.members.get(name) as JsonNode;
}

export function itemsOf(node: JsonNode, where: string): readonly JsonNode[] {
	if (node.type !== "array") refuse(where, why("verify.form-list"));
	return node.items;
}

/** A text; one that does not match `pattern` is refused with `sentence`. */
export function textOf(node: JsonNode, where: string, pattern = /^/, sentence = "verify.form-text"): string {
	if (node.type !== "text") refuse(where, why("verify.form-text"));
	if (!pattern.test(node.text)) refuse(where, why(sentence), undefined, node.text);
	return node.text;
}

/** The one text that can stand here. */
export function constantOf<T extends string>(node: JsonNode, where: string, constant: T): T {
	const text = textOf(node, where);
	if (text !== constant) refuse(where, why("verify.form-constant"), constant, text);
	return constant;
}

/** Lower-case hex of so many bytes. */
export function hexOf(node: JsonNode, where: string, byteCount: number): string {
	const digits = byteCount * 2;
	const text = textOf(node, where);
	if (!/^[0-9a-f]*$/.test(text) || text.length !== digits) {
		refuse(where, why("verify.form-hex", { digits }), undefined, text);
	}
	return text;
}

/** The bytes of a text in base64: standard alphabet, padded, the one form that encodes to itself. */
export function base64Of(node: JsonNode, where: string): Uint8Array {
	const bytes = bytesOfBase64(textOf(node, where));
	if (bytes === null) refuse(where, why("verify.form-base64"));
	return bytes;
}

/** A whole number from 0. */
export function countOf(node: JsonNode, where: string): number {
	if (node.type !== "number" || !Number.isSafeInteger(node.number) || node.number < 0) {
		refuse(where, why("verify.form-count"), undefined, node.type === "number" ? String(node.number) : undefined);
	}
	return node.number;
}

/** A plain member of a statement as text; null where there is none. */
export function plainText(node: JsonNode | undefined): string | null {
	return node?.type === "text" ? node.text : null;
}

/** A member name as a step of a JSON Pointer (RFC 6901). */
export function escaped(name: string): string {
	return shown(name).replaceAll("~", "~0").replaceAll("/", "~1");
}
