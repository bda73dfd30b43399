/** Reads a long recording while whoever asked for it does something else: how far it is stands in the database. */
import type { RecordingReading, RecordingView } from "../../contract/transit-recordings.ts";
import { beginRead, noteRead, type RecordingReadRow, refuseRead } from "../../database/recording-reads.ts";
import { type BadMember, Fault, type FaultCode, fault } from "../../faults.ts";
import { badMemberWords, faultWords } from "../../texts/fault-words.ts";
import type { Deps } from "../deps.ts";

/** One that is silent for longer has ended with its instance. Source: our choice, six times as long as between two signs of life. */
const SILENT_MS = 60_000;
const HEARD_EVERY_MS = 10_000;

interface Refusal {
	readonly code: FaultCode;
	readonly members: readonly BadMember[];
	readonly facts: Readonly<Record<string, string | number>>;
}

/**
 * Begins it and returns; `read` ends with its result kept.
 * @throws already-there where the recording is being read
 */
export async function readInBackground(
	deps: Deps,
	recordingId: string,
	reading: RecordingReading,
	read: (told: (bytesRead: number) => void) => Promise<void>,
): Promise<void> {
	const now = deps.now();
	const silentSince = new Date(now.getTime() - SILENT_MS);
	if (!(await beginRead(deps.database, recordingId, reading, { now, silentSince }))) throw fault("already-there");
	let bytesRead = 0;
	const note = () =>
		noteRead(deps.database, recordingId, bytesRead, deps.now()).catch((error: unknown) =>
			deps.log.warn({ err: error }, "how far a recording was read was not noted"),
		);
	// While it waits for its turn as well.
	const timer = setInterval(note, HEARD_EVERY_MS).unref();
	read((bytes) => {
		bytesRead = bytes;
		note();
	})
		.catch((error: unknown) => refuse(deps, recordingId, error))
		.finally(() => clearInterval(timer));
}

async function refuse(deps: Deps, recordingId: string, error: unknown): Promise<void> {
	if (!(error instanceof Fault)) deps.log.error({ err: error }, "a recording was not read");
	const { code, members, facts } = error instanceof Fault ? error : fault("internal");
	await refuseRead(deps.database, recordingId, { code, members, facts } satisfies Refusal).catch((failure: unknown) =>
		deps.log.error({ err: failure }, "why a recording was not read was not noted"),
	);
}

/** What is said of it. */
export function pendingOf(row: RecordingReadRow | undefined, now: Date): RecordingView["pending"] {
	if (row === undefined) return null;
	const refusal = row.refusal as Refusal | null;
	if (refusal !== null) return { status: "refused", bytesRead: row.bytes_read, why: wordsOf(refusal) };
	const isSilent = now.getTime() - row.heard_at.getTime() > SILENT_MS;
	return { status: isSilent ? "stopped" : "being-read", bytesRead: row.bytes_read, why: null };
}

function wordsOf({ code, members, facts }: Refusal): string {
	const [member] = members;
	if (member === undefined) return faultWords(code, facts);
	const { message, mend } = badMemberWords(member.code, member.facts);
	return `${message} ${mend}`;
}
