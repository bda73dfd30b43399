/** A client of the trials that brings files piece by piece and notes what was acknowledged. */
import { createHash, randomBytes, randomInt } from "node:crypto";
import { type Access, openOneOrder } from "./sealing-client.ts";

/** An upload, as far as the service told the client of it. */
export interface Bringing {
	readonly recordId: string;
	readonly url: string;
	readonly sha256: string;
	readonly sizeBytes: number;
	/** Let go of once the end is acknowledged. */
	content: Buffer | null;
	acknowledgedBytes: number;
}

/** Our choice: some of one piece, some of many, and some whose last piece is a whole segment. */
const MOST_BYTES = 600_000;
const SEGMENT_BYTES = 256 * 1024;
const PIECE_BYTES = [20_000, 300_000] as const;

/** A draft of an order of its own, to bring files to. */
export async function openDraft(access: Access): Promise<string> {
	for await (const { id } of openOneOrder(access)) return id;
	throw new Error("an order without a draft");
}

/** Brings files until the service no longer answers. */
export async function bringUntilKilled(
	access: Access,
	recordId: string,
	keep: (begun: Bringing) => void,
): Promise<void> {
	try {
		for (;;) {
			const bringing = await begin(access, recordId);
			keep(bringing);
			await goOn(access, bringing, 0);
		}
	} catch (error) {
		// The killed service breaks the connection; everything else is a fault of its own.
		if (!(error instanceof TypeError)) throw error;
	}
}

async function begin(access: Access, recordId: string): Promise<Bringing> {
	const sizeBytes = randomInt(4) === 0 ? SEGMENT_BYTES * randomInt(1, 4) : randomInt(10, MOST_BYTES);
	const content = Buffer.concat([Buffer.from("%PDF-1.7\n"), randomBytes(sizeBytes)]).subarray(0, sizeBytes);
	const metadata = `filename ${Buffer.from("trial.pdf").toString("base64")},record ${Buffer.from(recordId).toString("base64")}`;
	const answer = await tus(access, "POST", "/api/v1/exhibits", {
		"upload-length": String(sizeBytes),
		"upload-metadata": metadata,
	});
	const sha256 = createHash("sha256").update(content).digest("hex");
	return { recordId, url: answer.headers.get("location") ?? "", sha256, sizeBytes, content, acknowledgedBytes: 0 };
}

/** Sends the rest, in pieces of random length. */
async function goOn(access: Access, bringing: Bringing, from: number): Promise<void> {
	for (let at = from; at < bringing.sizeBytes; ) {
		const piece = bringing.content?.subarray(at, at + randomInt(...PIECE_BYTES)) ?? Buffer.alloc(0);
		const headers = { "upload-offset": String(at), "content-type": "application/offset+octet-stream" };
		await tus(access, "PATCH", bringing.url, headers, piece);
		at += piece.length;
		bringing.acknowledgedBytes = at;
	}
	bringing.content = null;
}

/** After a crash: whether less is there than was acknowledged. What is open is sent to its end, from where it was. */
export async function resumed(access: Access, bringing: Bringing): Promise<boolean> {
	const head = await fetch(access.url + bringing.url, { method: "HEAD", headers: headersOf(access) });
	if (head.status !== 200) return false;
	const offset = Number(head.headers.get("upload-offset"));
	if (offset < bringing.acknowledgedBytes) return false;
	if (bringing.content !== null) await goOn(access, bringing, offset);
	return true;
}

/** Whether every file that a record shows is whole and one that was sent, and all that were acknowledged are there. */
export async function isWhole(access: Access, recordId: string, brought: readonly Bringing[]): Promise<boolean> {
	const answer = await fetch(`${access.url}/api/v1/records/${recordId}/exhibits`, { headers: headersOf(access) });
	const { exhibits } = (await answer.json()) as { exhibits: { sha256: string; sizeBytes: number }[] };
	for (const { sha256, sizeBytes } of exhibits) {
		const file = await fetch(`${access.url}/api/v1/exhibits/${sha256}`, { headers: headersOf(access) });
		const bytes = Buffer.from(await file.arrayBuffer());
		const isSent = brought.some((one) => one.sha256 === sha256 && one.sizeBytes === sizeBytes);
		if (!isSent || createHash("sha256").update(bytes).digest("hex") !== sha256) return false;
	}
	const isAcknowledged = (one: Bringing) => one.acknowledgedBytes === one.sizeBytes;
	return brought.filter(isAcknowledged).every((one) => exhibits.some(({ sha256 }) => sha256 === one.sha256));
}

function headersOf({ token }: Access): Record<string, string> {
	return { authorization: `Bearer ${token}`, "tus-resumable": "1.0.0" };
}

async function tus(
	access: Access,
	method: "POST" | "PATCH",
	path: string,
	headers: Record<string, string>,
	body?: Buffer,
): Promise<Response> {
	const answer = await fetch(access.url + path, {
		method,
		headers: { ...headersOf(access), ...headers },
		...(body === undefined ? {} : { body: new Uint8Array(body) }),
	});
	const text = await answer.text();
	// A database that was killed a moment before the service: the act was not acknowledged.
	if (answer.status === 503 || answer.status === 500) throw new TypeError(`not acknowledged: ${answer.status}`);
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${text}`);
	return answer;
}
