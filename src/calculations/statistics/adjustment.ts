/** Adjusts p-values of tests made together, so that the family as a whole keeps its error of the first kind (Holm). */
export function holmAdjusted(pValues: readonly number[]): number[] {
	const order = pValues.map((_, index) => index).sort((one, other) => at(pValues, one) - at(pValues, other));
	const adjusted = new Array<number>(pValues.length);
	let largest = 0;
	order.forEach((index, rank) => {
		largest = Math.max(largest, Math.min(1, (pValues.length - rank) * at(pValues, index)));
		adjusted[index] = largest;
	});
	return adjusted;
}

function at(values: readonly number[], index: number): number {
	return values[index] ?? Number.NaN;
}
