/**
 * Reads JSON that must stand in the one form of RFC 8785: no space, members sorted by UTF-16 code units, the shortest
 * escapes, numbers as ECMAScript writes them, UTF-8. Every deviation is an error with its byte offset, so text that is
 * read would be written again byte for byte. Refused beyond the RFC: duplicate members, lone surrogates, numbers that a
 * double cannot hold, nesting over 64, more than a million values.
 */
import { Unreadable, type Why, why } from "./finding.ts";

interface Span {
	/** The bytes of the value: from `start` up to, not including, `end`. */
	readonly start: number;
	readonly end: number;
}
export type JsonNode = Span &
	(
		| { readonly type: "object"; readonly members: ReadonlyMap<string, JsonNode> }
		| { readonly type: "array"; readonly items: readonly JsonNode[] }
		| { readonly type: "text"; readonly text: string }
		| { readonly type: "number"; readonly number: number }
		| { readonly type: "literal"; readonly literal: "null" | "true" | "false" }
	);

const DEEPEST = 64;
const MOST_VALUES = 1_000_000;

const QUOTE = 0x22;
const COMMA = 0x2c;
const COLON = 0x3a;
const BACKSLASH = 0x5c;
const SPACE = 0x20;
/** Character after the backslash → what it stands for. */
const SHORT_ESCAPES: Readonly<Record<string, string>> = {
	'"': '"',
	"\\": "\\",
	b: "\b",
	f: "\f",
	n: "\n",
	r: "\r",
	t: "\t",
};
const NUMBER = /^-?[0-9.eE+-]*/;

/** The value in the bytes. @throws Unreadable with the byte offset of the first deviation */
export function parseCanonical(bytes: Uint8Array): JsonNode {
	const reader = new Reader(bytes);
	const node = reader.value(0);
	if (node.end < bytes.length) reader.refuse(node.end, why("verify.json-more"));
	return node;
}

class Reader {
	readonly bytes: Uint8Array;
	private at = 0;
	private values = 0;
	private readonly utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

	constructor(bytes: Uint8Array) {
		this.bytes = bytes;
	}

	refuse(offset: number, reason: Why, expected?: string, found?: string): never {
		throw new Unreadable({
			where: `byte ${offset}`,
			why: reason,
			...(expected === undefined ? {} : { expected }),
			...(found === undefined ? {} : { found }),
		});
	}

	value(depth: number): JsonNode {
		if (depth > DEEPEST) this.refuse(this.at, why("verify.json-deep", { deepest: DEEPEST }));
		this.values += 1;
		if (this.values > MOST_VALUES) this.refuse(this.at, why("verify.json-many", { most: MOST_VALUES }));
		switch (this.bytes[this.at]) {
			case 0x7b:
				return this.object(depth);
			case 0x5b:
				return this.array(depth);
			case QUOTE:
				return this.text();
			case 0x6e:
				return this.literal("null");
			case 0x74:
				return this.literal("true");
			case 0x66:
				return this.literal("false");
			default:
				return this.number();
		}
	}

	private object(depth: number): JsonNode {
		const start = this.at;
		const members = new Map<string, JsonNode>();
		let last: string | null = null;
		this.at += 1;
		while (!this.ends(0x7d, members.size, COMMA)) {
			const nameAt = this.at;
			const name = this.text().text;
			if (members.has(name)) this.refuse(nameAt, why("verify.json-twice", { name: shown(name) }));
			if (last !== null && name < last) {
				this.refuse(nameAt, why("verify.json-unsorted", { name: shown(name), before: shown(last) }));
			}
			this.expect(COLON);
			members.set(name, this.value(depth + 1));
			last = name;
		}
		return { type: "object", members, start, end: this.at };
	}

	private array(depth: number): JsonNode {
		const start = this.at;
		const items: JsonNode[] = [];
		this.at += 1;
		while (!this.ends(0x5d, items.length, COMMA)) items.push(this.value(depth + 1));
		return { type: "array", items, start, end: this.at };
	}

	/** Takes the closing bracket, or the comma before the next part. */
	private ends(bracket: number, parts: number, comma: number): boolean {
		if (this.bytes[this.at] === bracket) {
			this.at += 1;
			return true;
		}
		if (parts > 0) this.expect(comma);
		return false;
	}

	private expect(byte: number): void {
		if (this.bytes[this.at] !== byte) this.refuseByte(String.fromCharCode(byte));
		this.at += 1;
	}

	private refuseByte(expected?: string): never {
		const byte = this.bytes[this.at];
		if (byte === undefined) this.refuse(this.at, why("verify.json-end"), expected);
		const found =
			byte > SPACE && byte < 0x7f ? String.fromCharCode(byte) : `0x${byte.toString(16).padStart(2, "0").toUpperCase()}`;
		this.refuse(this.at, why("verify.json-unexpected"), expected, found);
	}

	private text(): JsonNode & { readonly type: "text" } {
		const start = this.at;
		this.expect(QUOTE);
		const parts: string[] = [];
		for (;;) {
			const from = this.at;
			let byte = this.bytes[this.at];
			while (byte !== undefined && byte !== QUOTE && byte !== BACKSLASH && byte >= SPACE) {
				this.at += 1;
				byte = this.bytes[this.at];
			}
			if (this.at > from) parts.push(this.decoded(from, this.at));
			if (byte === QUOTE) break;
			if (byte !== BACKSLASH) this.refuseByte('"');
			parts.push(this.escape());
		}
		this.at += 1;
		return { type: "text", text: parts.join(""), start, end: this.at };
	}

	private decoded(from: number, to: number): string {
		try {
			return this.utf8.decode(this.bytes.subarray(from, to));
		} catch {
			return this.refuse(firstBadUtf8(this.bytes, from, to), why("verify.json-utf8"));
		}
	}

	private escape(): string {
		const start = this.at;
		const letter = String.fromCharCode(this.bytes[start + 1] ?? 0);
		const short = SHORT_ESCAPES[letter];
		if (short !== undefined) {
			this.at += 2;
			return short;
		}
		const written = String.fromCharCode(...this.bytes.subarray(start, start + 6));
		const code = /^\\u00[01][0-9a-f]$/.test(written) ? Number.parseInt(written.slice(2), 16) : -1;
		const character = String.fromCharCode(code);
		if (code < 0 || Object.values(SHORT_ESCAPES).includes(character)) {
			this.refuse(start, why("verify.json-escape"), undefined, shown(written));
		}
		this.at += 6;
		return character;
	}

	private literal(literal: "null" | "true" | "false"): JsonNode {
		const start = this.at;
		for (const character of literal) this.expect(character.charCodeAt(0));
		return { type: "literal", literal, start, end: this.at };
	}

	private number(): JsonNode {
		const start = this.at;
		// No number in canonical form is longer than 25 characters.
		const ahead = String.fromCharCode(...this.bytes.subarray(start, start + 40));
		const token = NUMBER.exec(ahead)?.[0] ?? "";
		if (token === "") this.refuseByte();
		const number = Number(token);
		if (!Number.isFinite(number)) this.refuse(start, why("verify.json-number"), undefined, token);
		const canonical = String(number === 0 ? 0 : number);
		if (token !== canonical) this.refuse(start, why("verify.json-number"), canonical, token);
		this.at += token.length;
		return { type: "number", number, start, end: this.at };
	}
}

/** Where bytes stop being UTF-8. Called only when they do. */
function firstBadUtf8(bytes: Uint8Array, from: number, to: number): number {
	const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
	let at = from;
	while (at < to) {
		const first = bytes[at] ?? 0;
		const length = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
		try {
			utf8.decode(bytes.subarray(at, Math.min(at + length, to)));
		} catch {
			return at;
		}
		at += length;
	}
	return from;
}

/** A text for a message: not endless, and without control characters. */
export function shown(text: string): string {
	const plain = text.replace(/\p{C}/gu, "\u{fffd}");
	return plain.length > 80 ? `${plain.slice(0, 80)}…` : plain;
}
