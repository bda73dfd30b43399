/** Breaks words that are wider than their column at a joint, so that the layout never cuts one just anywhere. */

/** The layout turns it into a hyphen where the line ends there. */
const SOFT_HYPHEN = "\u00ad";

/**
 * A text in which every word wider than `width` that has a joint may break at the last joint up to which it fits.
 * @param joints matches the empty places at which a word may break
 * @param widthOf the width of a text as it will be painted
 */
export function breakWords(text: string, width: number, joints: RegExp, widthOf: (text: string) => number): string {
	return text.replace(/[\p{L}]{12,}/gu, (word) => broken(word, width, joints, widthOf));
}

function broken(word: string, width: number, joints: RegExp, widthOf: (text: string) => number): string {
	if (widthOf(word) <= width) return word;
	const places = [...word.matchAll(joints)].map(({ index }) => index);
	const place = places.findLast((end) => widthOf(`${word.slice(0, end)}-`) <= width);
	if (place === undefined) return word;
	return `${word.slice(0, place)}${SOFT_HYPHEN}${broken(word.slice(place), width, joints, widthOf)}`;
}
