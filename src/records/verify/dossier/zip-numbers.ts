/** Numbers of a ZIP archive, little end first. */

export function viewOf(bytes: Uint8Array): DataView {
	return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** Eight bytes; infinite where a double does not hold the number, which then equals no size and no place. */
export function uint64At(view: DataView, place: number): number {
	const number = view.getBigUint64(place, true);
	return number <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(number) : Number.POSITIVE_INFINITY;
}

/** What stands in four bytes for a number: itself, or all bits where it has to stand elsewhere. */
export function shortOf32(number: number): number {
	return Math.min(number, 0xffff_ffff);
}

/** The same in two bytes. */
export function shortOf16(number: number): number {
	return Math.min(number, 0xffff);
}
