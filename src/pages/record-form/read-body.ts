/** A form's body, sent plainly or in parts, as control values and files. */
import type { Form } from "./field.ts";

export interface SentFile {
	/** Name of the control that it was chosen in. */
	readonly field: string;
	readonly fileName: string;
	/** Cut one byte past the limit where it was larger; the act that takes it then refuses it. */
	readonly bytes: Buffer;
}

export interface SentForm {
	readonly form: Form;
	readonly files: readonly SentFile[];
}

/** A part as the multipart plugin attaches it to the body. */
interface Part {
	readonly type?: string;
	readonly value?: unknown;
	readonly filename?: string;
	toBuffer?(): Promise<Buffer>;
}

/** Reads the body. An empty file control sends a nameless empty file; it is left out. */
export async function readBody(body: unknown): Promise<SentForm> {
	const form = new Map<string, string>();
	const files: SentFile[] = [];
	for (const [name, sent] of Object.entries((body ?? {}) as Record<string, unknown>)) {
		for (const part of Array.isArray(sent) ? sent : [sent]) {
			if (typeof part === "string") form.set(name, part);
			else if (isFile(part)) {
				const bytes = (await part.toBuffer?.()) ?? Buffer.alloc(0);
				if (bytes.length === 0 && (part.filename ?? "") === "") continue;
				files.push({ field: name, fileName: plainName(part.filename ?? ""), bytes });
			} else if (typeof (part as Part | null)?.value === "string") form.set(name, String((part as Part).value));
		}
	}
	return { form: Object.fromEntries(form), files };
}

function isFile(part: unknown): part is Part {
	return (part as Part | null)?.type === "file";
}

/** The last member of a path, at most 200 characters, without what cannot be stored. */
function plainName(fileName: string): string {
	const last = fileName.split(/[\\/]/).at(-1) ?? "";
	const kept = last.replaceAll("\u0000", "").toWellFormed().slice(-200).toWellFormed().trim();
	return kept === "" ? "file" : kept;
}
