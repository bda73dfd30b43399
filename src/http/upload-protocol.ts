/**
 * The tus protocol 1.0.0 spoken by @tus/server, its store and its lock being ours: bytes go encrypted to the disk, and
 * the lock is the database's, so that any instance may take the next request. One is made per request, for its caller.
 */
import { Readable } from "node:stream";
import { DataStore, type Lock, type Locker, Server, Upload } from "@tus/server";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Caller } from "../access/caller.ts";
import { uploadMetadata } from "../contract/exhibits.ts";
import { type Fault, fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";
import { beginUpload, UPLOAD_LASTS_MS, UPLOAD_MOST_BYTES } from "../operations/uploads/begin-upload.ts";
import { findUpload } from "../operations/uploads/find-upload.ts";
import { dropUpload, finishUpload } from "../operations/uploads/finish-upload.ts";
import { receiveUpload } from "../operations/uploads/receive-upload.ts";
import { lockUpload } from "../operations/uploads/upload-lock.ts";
import { validate } from "../operations/validate.ts";
import { faultOf } from "./problems.ts";

export const UPLOADS_PATH = "/api/v1/exhibits/uploads";
const TUS_VERSION = "1.0.0";
/** After this time a request that another waits for is ended, and what it brought is kept. Source: our choice. */
const DRAIN_MS = 300;

/** Answers a request of the protocol. @throws Fault, so that what is refused is told as everywhere else */
export async function answerUpload(
	deps: Deps,
	caller: Caller,
	request: FastifyRequest,
	reply: FastifyReply,
): Promise<FastifyReply> {
	let refused: Fault | null = null;
	const store = uploadStore(deps, caller);
	const server = new Server({
		path: UPLOADS_PATH,
		datastore: store,
		locker: uploadLocker(deps, store),
		lockDrainTimeout: DRAIN_MS,
		maxSize: UPLOAD_MOST_BYTES,
		relativeLocation: true,
		allowedOrigins: [],
		namingFunction: () => deps.newId("upl"),
		onResponseError(_request, error) {
			refused = faultOfProtocol(error, request);
			return undefined;
		},
	});
	reply.header("Tus-Resumable", TUS_VERSION);
	const answer = await server.handleWeb(webRequest(request) as Parameters<Server["handleWeb"]>[0]);
	if (refused !== null) throw refused;
	if (answer.status >= 400) {
		reply.header("Tus-Version", TUS_VERSION);
		throw answer.status === 412 ? fault("tus-version") : refusal(await answer.text());
	}
	answer.headers.forEach((value, name) => {
		if (!name.startsWith("access-control-")) reply.header(name, value);
	});
	return reply.status(answer.status).send(answer.status === 204 ? undefined : "");
}

interface UploadStore extends DataStore {
	/** Settles when what is being written is on disk. */
	settled(): Promise<unknown>;
}

function uploadStore(deps: Deps, caller: Caller): UploadStore {
	let writing: Promise<unknown> = Promise.resolve();
	const finished = async (row: Awaited<ReturnType<typeof findUpload>>): Promise<void> => {
		if (row.offset_bytes === row.size_bytes) await finishUpload(deps, caller, row);
	};
	return Object.assign(new DataStore(), {
		extensions: ["creation", "creation-with-upload", "termination", "expiration"],
		getExpiration: () => UPLOAD_LASTS_MS,
		settled: () => writing,
		async create(upload: Upload) {
			const metadata = validate(uploadMetadata, upload.metadata ?? {});
			await beginUpload(deps, caller, upload.id, upload.size ?? 0, metadata);
			return upload;
		},
		async getUpload(id: string) {
			const row = await findUpload(deps, caller, id);
			// All is here, but the crash or the break of a line came before the end.
			await finished(row);
			return new Upload({
				id,
				size: row.size_bytes,
				offset: row.offset_bytes,
				creation_date: new Date(row.expires_at.getTime() - UPLOAD_LASTS_MS).toISOString(),
			});
		},
		write(stream: Readable, id: string) {
			const written = (async () => {
				const offset = await receiveUpload(deps, await findUpload(deps, caller, id), stream);
				await finished(await findUpload(deps, caller, id));
				return offset;
			})();
			writing = written.catch(() => {});
			return written;
		},
		async remove(id: string) {
			await dropUpload(deps, await findUpload(deps, caller, id));
		},
	});
}

/** A request whose line broke is over for the library before its last bytes are on disk; the lock is kept until they are. */
function uploadLocker(deps: Deps, store: UploadStore): Locker {
	return {
		newLock(id): Lock {
			let letGo = async () => {};
			return {
				async lock(_stop, requestRelease) {
					letGo = await lockUpload(deps, id, requestRelease);
				},
				async unlock() {
					await store.settled();
					await letGo();
				},
			};
		},
	};
}

function webRequest(request: FastifyRequest): Request {
	const headers = new Headers();
	for (const [name, value] of Object.entries(request.headers))
		if (value !== undefined) headers.set(name, String(value));
	const url = new URL(request.url, "http://localhost");
	const { method } = request;
	if (method !== "PATCH" && method !== "POST") return new Request(url, { method, headers });
	return new Request(url, {
		method,
		headers,
		body: Readable.toWeb(request.raw),
		duplex: "half",
	} as unknown as RequestInit);
}

/** The library's own errors carry a status and a text. */
function faultOfProtocol(
	error: Error | { readonly status_code: number; readonly body: string },
	request: FastifyRequest,
) {
	if (!("status_code" in error)) return faultOf(error, request);
	const { status_code: status, body } = error;
	if (status === 409) return fault("offset-differs");
	if (status === 410) return fault("upload-gone");
	if (status === 413) return fault("too-large");
	if (status === 404) return fault("not-found");
	if (status < 500 || status === 501) return refusal(body);
	request.log.error({ err: error }, "an upload failed");
	return fault("internal");
}

function refusal(body: string): Fault {
	return fault("bad-input", { members: [{ path: "", code: "refused", facts: { why: body.trim() } }] });
}
