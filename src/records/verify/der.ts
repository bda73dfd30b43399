/** Reads DER (X.690) as far as a time stamp needs it. Lengths must be definite and the shortest. */
import { Unreadable, why } from "./finding.ts";

export interface DerNode {
	/** Identifier octet: class, constructed bit, number (below 31). */
	readonly tag: number;
	/** Identifier, length and content. */
	readonly bytes: Uint8Array;
	readonly content: Uint8Array;
}

export const TAG = {
	integer: 0x02,
	octets: 0x04,
	objectId: 0x06,
	bits: 0x03,
	generalizedTime: 0x18,
	sequence: 0x30,
	set: 0x31,
	context0: 0xa0,
} as const;

/** The nodes that stand one after the other. @throws Unreadable */
export function derNodes(bytes: Uint8Array): DerNode[] {
	const nodes: DerNode[] = [];
	let at = 0;
	while (at < bytes.length) {
		const start = at;
		const tag = bytes[at] ?? 0;
		let length = bytes[at + 1] ?? 0x80;
		at += 2;
		if (length > 0x80) {
			const octets = length - 0x80;
			if (octets > 4 || at + octets > bytes.length) refuseDer();
			length = 0;
			for (let index = 0; index < octets; index += 1) length = length * 256 + (bytes[at + index] ?? 0);
			if (length < 0x80 || length < 256 ** (octets - 1)) refuseDer();
			at += octets;
		} else if (length === 0x80) refuseDer();
		if ((tag & 0x1f) === 0x1f || at + length > bytes.length) refuseDer();
		nodes.push({ tag, bytes: bytes.subarray(start, at + length), content: bytes.subarray(at, at + length) });
		at += length;
	}
	return nodes;
}

/** The nodes inside one of the given tag. */
export function inside(node: DerNode | undefined, tag: number): DerNode[] {
	return node?.tag === tag ? derNodes(node.content) : refuseDer();
}

/** The content of a node of the given tag. */
export function contentOf(node: DerNode | undefined, tag: number): Uint8Array {
	return node?.tag === tag ? node.content : refuseDer();
}

/** An object identifier in dots. */
export function objectIdOf(node: DerNode | undefined): string {
	const content = contentOf(node, TAG.objectId);
	const arcs: number[] = [];
	let arc = 0;
	for (const octet of content) {
		arc = arc * 128 + (octet & 0x7f);
		if (octet < 0x80) {
			arcs.push(arc);
			arc = 0;
		}
	}
	const [first = 0, ...rest] = arcs;
	const top = Math.min(Math.floor(first / 40), 2);
	return [top, first - top * 40, ...rest].join(".");
}

function refuseDer(): never {
	throw new Unreadable({ why: why("verify.time-unreadable") });
}
