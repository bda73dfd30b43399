/** What the picture child is asked and what it answers: JSON in its argument, bytes in, one framed answer out. */
import type { ClaimedFacts, PictureRefusal } from "../../database/pictures.ts";

/** A part of a picture, in percent of its width and height as shown. */
export interface Rectangle {
	readonly x: number;
	readonly y: number;
	readonly w: number;
	readonly h: number;
}

export type PictureTask =
	/** Facts, a copy without metadata, a thumbnail of it. */
	| { readonly act: "read"; readonly mediaType: string }
	/** A copy with black rectangles, a thumbnail of it. */
	| { readonly act: "black-out"; readonly mediaType: string; readonly rectangles: readonly Rectangle[] }
	/** A copy of at most so many bytes. */
	| { readonly act: "fit"; readonly mediaType: string; readonly mostBytes: number };

export interface PictureAnswer {
	/** As shown, turned upright; null where the picture was refused. */
	readonly size: { readonly width: number; readonly height: number } | null;
	readonly refusal: PictureRefusal | null;
	/** Of `read` alone. */
	readonly claimed: ClaimedFacts | null;
	/** JPEGs, in the order of the task. */
	readonly parts: readonly Uint8Array[];
}

type Head = Omit<PictureAnswer, "parts"> & { readonly sizes: readonly number[] };

const HEAD_BYTES = 4;

/** Bytes of the head (32 bits, big-endian), the head as JSON, the parts one after the other. */
export function framed({ parts, ...facts }: PictureAnswer): Buffer {
	const head = Buffer.from(JSON.stringify({ ...facts, sizes: parts.map(({ length }) => length) } satisfies Head));
	const length = Buffer.alloc(HEAD_BYTES);
	length.writeUInt32BE(head.length);
	return Buffer.concat([length, head, ...parts]);
}

/** Null where the frame is not whole. */
export function unframed(bytes: Buffer): PictureAnswer | null {
	if (bytes.length < HEAD_BYTES) return null;
	const headEnd = HEAD_BYTES + bytes.readUInt32BE(0);
	if (bytes.length < headEnd) return null;
	const { sizes, ...facts } = JSON.parse(bytes.toString("utf8", HEAD_BYTES, headEnd)) as Head;
	let at = headEnd;
	const parts = sizes.map((size) => {
		at += size;
		return bytes.subarray(at - size, at);
	});
	return at === bytes.length ? { ...facts, parts } : null;
}
