/** Bytes of a diagnostic output as text: UTF-8 with or without byte order mark, UTF-16LE with it; any line ends. */
import { ImportRefusal } from "./import-result.ts";

/** The text with `\n` line ends. @throws ImportRefusal for bytes that are no text */
export function decodeText(bytes: Uint8Array): string {
	if (bytes.length === 0) throw new ImportRefusal("empty", null);
	const utf16 = bytes[0] === 0xff && bytes[1] === 0xfe;
	let text: string;
	try {
		text = new TextDecoder(utf16 ? "utf-16le" : "utf-8", { fatal: true }).decode(bytes);
	} catch {
		throw new ImportRefusal("not-text", null);
	}
	const nul = text.indexOf("\u0000");
	if (nul >= 0) throw new ImportRefusal("not-text", lineAt(text, nul));
	return text.replace(/\r\n?/g, "\n");
}

/** Number of the line that holds a character. */
export function lineAt(text: string, offset: number): number {
	let line = 1;
	for (let at = text.indexOf("\n"); at >= 0 && at < offset; at = text.indexOf("\n", at + 1)) line += 1;
	return line;
}
