/** Reads a sealed statement with its openings: each commitment becomes its value, or null where it was erased. */
import type { JsonValue } from "./canonical.ts";
import type { Opening } from "./commitment.ts";

/**
 * The statement in the given exact bytes, opened.
 * @throws SyntaxError when the bytes are not JSON: sealed bytes always are.
 */
export function openStatement(statementBytes: Uint8Array, openings: readonly Opening[]): JsonValue {
	const values = new Map(openings.map((opening) => [opening.commitment, opening.value]));
	return opened(JSON.parse(Buffer.from(statementBytes).toString("utf8")), values);
}

function opened(value: JsonValue, values: ReadonlyMap<string, JsonValue>): JsonValue {
	if (Array.isArray(value)) return value.map((entry) => opened(entry, values));
	if (value === null || typeof value !== "object") return value;
	const members = Object.entries(value);
	const [first] = members;
	if (members.length === 1 && first?.[0] === "commitment" && typeof first[1] === "string") {
		return values.get(first[1]) ?? null;
	}
	return Object.fromEntries(members.map(([name, entry]) => [name, opened(entry, values)]));
}
