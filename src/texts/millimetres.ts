/** Metres as millimetres to fill a field with, without the digits that only arithmetic made. */
export function inMillimetres(metres: number): string {
	return String(Number((metres * 1000).toPrecision(12)));
}
