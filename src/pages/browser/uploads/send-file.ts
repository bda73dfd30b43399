/** One file on its way, by tus-js-client. How far it came is kept on the device, so that the same file goes on after a reload. */
import { DetailedError, defaultOptions, Upload } from "tus-js-client";

/** What a file is brought to. */
export interface UploadTarget {
	readonly kind: "record" | "consignment";
	readonly id: string;
}

export interface Sending {
	/** Goes on at once where it waits for the network. */
	goOn(): void;
	/** Gives it up, here and at the service. */
	giveUp(): void;
}

export interface SendingEvents {
	progress(sentBytes: number): void;
	/** The network is away, or the service; it is tried again by itself. */
	away(): void;
	done(uploadId: string): void;
	/** @param why in the service's words */
	refused(why: string): void;
}

/** Whole segments of the store. Our choice: little is sent twice, and a slow line acknowledges every few minutes. */
const PIECE_BYTES = 8 * 1024 * 1024;
/** Our choice; counted anew whenever something came through. Together more than an hour. */
const PAUSES_MS = [500, 1000, 3000, 5000, 10_000, ...Array<number>(300).fill(15_000)];
/** As long as the service keeps an upload. */
const KEPT_MS = 7 * 24 * 3_600_000;
/** Answers after which the same request may do. */
const TRY_AGAIN = [0, 409, 423, 429, 500, 502, 503, 504];

export function sendFile(file: File, target: UploadTarget, events: SendingEvents): Sending {
	let isOver = false;
	const upload = new Upload(file, {
		endpoint: "/api/v1/exhibits",
		chunkSize: PIECE_BYTES,
		retryDelays: PAUSES_MS,
		metadata: { filename: nameOf(file), [target.kind]: target.id },
		fingerprint: async () =>
			["handover-risk", target.id, file.name, file.size, file.lastModified].map(String).join("/"),
		onProgress: (sent) => events.progress(sent),
		onShouldRetry(error) {
			// A conflict may be over how far the upload is, which is asked anew; or the record is closed, which stays so.
			const isClosed = /fault:(already-sealed|discarded)/.test(error.originalResponse?.getBody() ?? "");
			const mayDo = TRY_AGAIN.includes(statusOf(error)) && !isClosed;
			if (mayDo) events.away();
			return mayDo;
		},
		onSuccess() {
			isOver = true;
			events.done(upload.url?.split("/").at(-1) ?? "");
		},
		onError(error) {
			isOver = true;
			events.refused(wordsOf(error));
		},
	});
	const start = async () => {
		const [before] = await upload.findPreviousUploads();
		if (before !== undefined) upload.resumeFromPreviousUpload(before);
		if (!isOver) upload.start();
	};
	start();
	return {
		goOn() {
			if (!isOver) upload.abort().then(() => upload.start());
		},
		giveUp() {
			isOver = true;
			upload.abort(true).catch(() => {});
		},
	};
}

/** Forgets uploads that the service no longer keeps. */
export async function forgetOldUploads(): Promise<void> {
	const { urlStorage } = defaultOptions;
	for (const { creationTime, urlStorageKey } of (await urlStorage?.findAllUploads()) ?? []) {
		if (Date.now() - Date.parse(creationTime) > KEPT_MS) await urlStorage?.removeUpload(urlStorageKey);
	}
}

/** At most 200 characters, as the service takes them; the end says the kind. */
function nameOf({ name }: File): string {
	const kept = name.replaceAll("\u0000", "").toWellFormed().slice(-200).toWellFormed().trim();
	return kept === "" ? "file" : kept;
}

function statusOf(error: Error): number {
	return error instanceof DetailedError ? (error.originalResponse?.getStatus() ?? 0) : 0;
}

/** What the service said, without what is for programs. */
function wordsOf(error: Error): string {
	const body = error instanceof DetailedError ? error.originalResponse?.getBody() : undefined;
	try {
		const { detail, errors } = JSON.parse(body ?? "") as {
			detail: string;
			errors?: readonly { message: string; mend: string }[];
		};
		const [first] = errors ?? [];
		return first === undefined ? detail : `${first.message} ${first.mend}`;
	} catch {
		return "";
	}
}
