/** What may separate the fields of a table. */
export type Separator = "," | ";" | "\t";

/** What separates the fields of a table, told by its header line: the one separator in it; none where they are mixed. */
export function separatorOf(header: string): Separator | null {
	const bare = header.replace(/"[^"]*"/g, "").replace(/\[[^\]]*\]|\([^)]*\)/g, "");
	const found = ([",", ";", "\t"] as const).filter((separator) => bare.includes(separator));
	// A comma beside a semicolon or tab may be part of a name; two of the others are a mixture.
	const strong = found.filter((separator) => separator !== ",");
	if (strong.length > 1) return null;
	return strong[0] ?? found[0] ?? null;
}
