/** What kind of file someone brought, read from its content; a name or a header is only a claim. */
import { fileTypeFromBuffer } from "file-type";

/** Kinds that are taken. A page shows copies of pictures that we wrote; what was brought is a download. */
const TAKEN = new Set([
	"image/jpeg",
	"image/png",
	"image/webp",
	"image/heic",
	"image/heif",
	"video/mp4",
	"video/quicktime",
	"video/webm",
	"application/pdf",
]);

/** The media type by content, `text/plain` for any text; null for what is not taken. */
export async function mediaTypeOf(bytes: Uint8Array): Promise<string | null> {
	const found = await fileTypeFromBuffer(bytes);
	if (found !== undefined && TAKEN.has(found.mime)) return found.mime;
	return isText(bytes) ? "text/plain" : null;
}

/** Text in UTF-8 or, with its byte order mark, UTF-16 as some command lines write it. */
function isText(bytes: Uint8Array): boolean {
	const utf16 = bytes[0] === 0xff && bytes[1] === 0xfe;
	try {
		const text = new TextDecoder(utf16 ? "utf-16le" : "utf-8", { fatal: true }).decode(bytes);
		return !text.includes("\u0000");
	} catch {
		return false;
	}
}
