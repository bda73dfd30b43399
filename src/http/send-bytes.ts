/** Sends bytes that are read while they go out, or the one range of them that was asked for. */
import { Readable } from "node:stream";
import type { FastifyReply, FastifyRequest } from "fastify";
import { byteRange } from "./byte-range.ts";

export interface SentBytes {
	readonly sizeBytes: number;
	/** From `start` up to `end`, which is left out. */
	readonly bytes: (start: number, end: number) => AsyncIterable<Uint8Array>;
}

/** Read while the line takes what came before: two segments of the store. More made nothing faster; our choice. */
const AHEAD_BYTES = 512 * 1024;

/** @param tag the same for the same bytes, in quotes */
export function sendBytes(
	request: FastifyRequest,
	reply: FastifyReply,
	{ sizeBytes, bytes }: SentBytes,
	tag: string,
): FastifyReply {
	const range = byteRange(request.headers, sizeBytes, tag);
	const { start, end } = range ?? { start: 0, end: sizeBytes };
	reply
		.header("Accept-Ranges", "bytes")
		.header("ETag", tag)
		.header("Content-Length", end - start);
	if (range !== null) reply.status(206).header("Content-Range", `bytes ${start}-${end - 1}/${sizeBytes}`);
	return reply.send(Readable.from(bytes(start, end), { objectMode: false, highWaterMark: AHEAD_BYTES }));
}
