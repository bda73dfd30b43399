/** A draft's shortcoming: JSON Pointer of the member and a permanent code; the words for code and mend are texts. */
export interface Shortcoming {
	readonly path: string;
	readonly code: string;
}
