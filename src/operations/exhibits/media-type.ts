/** What kind of file someone brought, read from its content; a name or a header is only a claim. */
import { fileTypeFromBuffer } from "file-type";
import { fault } from "../../faults.ts";

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

/** What the end of a name claims, where it claims one of these. A picture named as another kind of picture is no lie. */
const CLAIMS: Readonly<Record<string, string>> = {
	jpg: "image",
	jpeg: "image",
	png: "image",
	webp: "image",
	heic: "image",
	heif: "image",
	mp4: "video",
	m4v: "video",
	mov: "video",
	webm: "video",
	pdf: "application",
	txt: "text",
	log: "text",
	csv: "text",
	json: "text",
	xml: "text",
};
/** Marks of every kind that is taken stand in the first few kilobytes. */
export const LOOKED_AT_BYTES = 64 * 1024;

/** Learns a file's kind from its bytes, which come in order in pieces of any length. */
export interface TypeReader {
	take(bytes: Uint8Array): void;
	/** `text/plain` for any text. @throws unsupported-type; type-differs where the name claims another kind */
	end(fileName: string): Promise<string>;
}

export function typeReader(): TypeReader {
	const beginning: Uint8Array[] = [];
	let looked = 0;
	let text: TextReader | null = null;
	return {
		take(bytes) {
			text ??= textReader(bytes);
			text.take(bytes);
			if (looked < LOOKED_AT_BYTES) beginning.push(Uint8Array.from(bytes.subarray(0, LOOKED_AT_BYTES - looked)));
			looked += bytes.length;
		},
		async end(fileName) {
			const found = await fileTypeFromBuffer(Buffer.concat(beginning));
			const isKnown = found !== undefined && TAKEN.has(found.mime);
			const mediaType = isKnown ? found.mime : text?.end() === true ? "text/plain" : null;
			if (mediaType === null) throw fault("unsupported-type");
			const claim = CLAIMS[fileName.split(".").at(-1)?.toLowerCase() ?? ""];
			if (claim !== undefined && claim !== mediaType.split("/")[0]) throw fault("type-differs");
			return mediaType;
		},
	};
}

/** The kind of a file whose bytes are at hand. @throws unsupported-type; type-differs */
export function mediaTypeOf(bytes: Uint8Array, fileName: string): Promise<string> {
	const reader = typeReader();
	reader.take(bytes);
	return reader.end(fileName);
}

interface TextReader {
	take(bytes: Uint8Array): void;
	end(): boolean;
}

/** Text in UTF-8 or, with its byte order mark, UTF-16 as some command lines write it. */
function textReader(first: Uint8Array): TextReader {
	const utf16 = first[0] === 0xff && first[1] === 0xfe;
	const decoder = new TextDecoder(utf16 ? "utf-16le" : "utf-8", { fatal: true });
	let isText = true;
	const decode = (bytes: Uint8Array | undefined, stream: boolean) => {
		if (!isText) return;
		try {
			isText = !decoder.decode(bytes, { stream }).includes("\u0000");
		} catch {
			isText = false;
		}
	};
	return {
		take: (bytes) => decode(bytes, true),
		end() {
			decode(undefined, false);
			return isText;
		},
	};
}
