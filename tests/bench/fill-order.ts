/** One order whose records name large files, brought by resumable upload and handed out as they are, so that its dossier holds them. */
import { openOneOrder, seal } from "../trials/sealing-client.ts";
import { type Access, bringFile } from "./bring-file.ts";

export interface BroughtFile {
	readonly sizeBytes: number;
	/** Begins as a PDF does. */
	readonly pieces: () => AsyncIterable<Uint8Array> | Iterable<Uint8Array>;
}

/** A record names so many at most. */
const FILES_PER_RECORD = 100;

export async function fillOrder(access: Access, files: readonly BroughtFile[]): Promise<string> {
	const left = [...files];
	for await (const draft of openOneOrder(access)) {
		const exhibits = [];
		for (const { sizeBytes, pieces } of left.splice(0, FILES_PER_RECORD)) {
			const place = await bringFile(access, { filename: "x.pdf", record: draft.id }, sizeBytes, pieces());
			const { exhibit } = await ask<{ exhibit: { sha256: string } }>(access, "GET", place.replace("/api/v1", ""));
			exhibits.push({ sha256: exhibit.sha256, view: "other" });
		}
		const { content, orderId } = await ask<{ content: object; orderId: string }>(access, "GET", `/records/${draft.id}`);
		const saved = await ask<{ version: number }>(
			access,
			"PUT",
			`/records/${draft.id}`,
			{ ...content, exhibits },
			draft.version,
		);
		await seal(access, { id: draft.id, version: saved.version });
		for (const { sha256 } of exhibits) {
			await ask(access, "POST", `/records/${draft.id}/exhibits/${sha256}/hand-out`, { choice: "original" });
		}
		if (left.length === 0) return orderId;
	}
	throw new Error("more files than the records of one order name");
}

async function ask<Answer>(
	{ url, token }: Access,
	method: string,
	path: string,
	body?: object,
	version?: number,
): Promise<Answer> {
	const answer = await fetch(`${url}/api/v1${path}`, {
		method,
		headers: {
			authorization: `Bearer ${token}`,
			...(body === undefined ? {} : { "content-type": "application/json" }),
			...(version === undefined ? {} : { "if-match": `"v${version}"` }),
		},
		...(body === undefined ? {} : { body: JSON.stringify(body) }),
	});
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
	return (await answer.json()) as Answer;
}
