/** One range of bytes that a request asks for, RFC 9110 section 14. */

export interface ByteRange {
	readonly start: number;
	/** The byte after the last one. */
	readonly end: number;
}

/**
 * Null where the whole is to be sent: no range, one in another unit or of several parts, one beyond the end, or (by
 * If-Range) one of other bytes than these. A server may always send the whole.
 */
export function byteRange(
	headers: { readonly range?: string | undefined; readonly "if-range"?: string | string[] | undefined },
	sizeBytes: number,
	tag: string,
): ByteRange | null {
	const match = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(headers.range ?? "");
	if (match === null || (headers["if-range"] !== undefined && headers["if-range"] !== tag)) return null;
	const [, from = "", to = ""] = match;
	if (from === "" && to === "") return null;
	const start = from === "" ? Math.max(0, sizeBytes - Number(to)) : Number(from);
	const end = from === "" || to === "" ? sizeBytes : Math.min(sizeBytes, Number(to) + 1);
	return start < end ? { start, end } : null;
}
