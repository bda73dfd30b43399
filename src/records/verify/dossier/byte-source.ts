/** Bytes that are read place by place: a file too large to be held, or bytes at hand. */
export interface ByteSource {
	readonly size: number;
	/** Exactly so many bytes; a source that is shorter than it says is an error. */
	read(start: number, length: number): Promise<Uint8Array>;
}

export function sourceOf(bytes: Uint8Array): ByteSource {
	return { size: bytes.length, read: async (start, length) => bytes.subarray(start, start + length) };
}
