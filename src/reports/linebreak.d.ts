/** The package comes without types; these are what its README tells. */
declare module "linebreak" {
	export default class LineBreaker {
		constructor(text: string);
		/** The next place at which a line may, or must, end; null after the last one, which is the text's end. */
		nextBreak(): { readonly position: number; readonly required?: boolean } | null;
	}
}
