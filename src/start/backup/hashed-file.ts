/** Files written and read with their hash, streamed, so that size does not matter. */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { mkdir, open } from "node:fs/promises";
import { dirname } from "node:path";
import { Readable, Transform } from "node:stream";
import { pipeline } from "node:stream/promises";

export interface FileFacts {
	readonly sha256: string;
	readonly sizeBytes: number;
	/** Bytes 0x0A: the rows of a table in COPY's text form, which writes a line break inside a value as two characters. */
	readonly lines: number;
}

/**
 * Writes a new file that only we may read, on disk when this returns; its folder is not yet.
 * @param source the text, or what opens the stream: one that is open before anybody listens to it may fail unheard
 */
export async function writeHashed(
	path: string,
	source: string | (() => Readable),
	stop: AbortSignal,
): Promise<FileFacts> {
	await mkdir(dirname(path), { recursive: true, mode: 0o700 });
	const file = await open(path, "wx", 0o600);
	try {
		const facts = factsOf();
		const bytes = typeof source === "string" ? Readable.from([Buffer.from(source)]) : source();
		await flow(bytes, facts.through, (part) => file.appendFile(part), stop);
		await file.sync();
		return facts.read();
	} finally {
		await file.close();
	}
}

/** The hash of a file, and what else is said of it. */
export async function readHashed(path: string, stop: AbortSignal): Promise<FileFacts> {
	const facts = factsOf();
	await flow(createReadStream(path), facts.through, async () => {}, stop);
	return facts.read();
}

/** Puts a folder's names on disk. */
export async function syncFolder(path: string): Promise<void> {
	const folder = await open(path, "r");
	try {
		await folder.sync();
	} finally {
		await folder.close();
	}
}

/** Moves bytes until their end. @throws the stop's own reason where it was stopped */
async function flow(
	from: Readable,
	through: Transform,
	take: (part: Buffer) => Promise<void>,
	stop: AbortSignal,
): Promise<void> {
	try {
		await pipeline(
			from,
			through,
			async (parts: AsyncIterable<Buffer>) => {
				for await (const part of parts) await take(part);
			},
			{ signal: stop },
		);
	} catch (error) {
		stop.throwIfAborted();
		throw error;
	}
}

function factsOf(): { readonly through: Transform; read(): FileFacts } {
	const hash = createHash("sha256");
	let sizeBytes = 0;
	let lines = 0;
	const through = new Transform({
		transform(part: Buffer, _encoding, done) {
			hash.update(part);
			sizeBytes += part.length;
			for (let at = part.indexOf(10); at >= 0; at = part.indexOf(10, at + 1)) lines += 1;
			done(null, part);
		},
	});
	return { through, read: () => ({ sha256: hash.digest("hex"), sizeBytes, lines }) };
}
