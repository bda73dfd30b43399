/**
 * One look at the queue of time stamps: queues the newest checkpoint when it is time, tries what is due, keeps what came.
 * No transaction is open while the authority is asked, and no lock of the log is taken, so a slow or dead authority delays
 * nothing but the stamp.
 */
import type { Certificate } from "pkijs";
import {
	claimWaitingStamp,
	fillStamp,
	noteStampError,
	queueNewestCheckpoint,
	takeStampQueue,
	type WaitingStamp,
} from "../../database/time-stamps.ts";
import { sha256Hex } from "../../records/canonical.ts";
import type { Deps } from "../deps.ts";
import { askAuthority } from "./ask-authority.ts";
import { StampRefusal } from "./stamp-refusal.ts";
import { stampRequest } from "./stamp-request.ts";
import { verifyReply } from "./verify-reply.ts";

export interface Authority {
	readonly url: string;
	readonly anchors: readonly Certificate[];
	/** Minutes between stamps while the log grows. */
	readonly everyMin: number;
}

/** Our choice. The first must be longer than an answer is waited for, or two instances could ask at once. */
const PAUSE_S = { first: 60, most: 3600 };

export type StampOutcome = "nothing-due" | "stamped" | "failed";

/**
 * What came of it.
 * @param stop ends a running try at once; it counts as an attempt and is made again later
 */
export async function stampNewestCheckpoint(
	deps: Pick<Deps, "database" | "randomBytes" | "log">,
	authority: Authority,
	stop: AbortSignal,
): Promise<StampOutcome> {
	const due = await deps.database.transaction(async (transaction) => {
		if (!(await takeStampQueue(transaction))) return null;
		await queueNewestCheckpoint(transaction, authority.everyMin);
		return claimWaitingStamp(transaction, PAUSE_S);
	});
	if (due === null) return "nothing-due";
	try {
		const { token, genTime } = await askFor(deps, authority, due, stop);
		await fillStamp(deps.database, due.size, token, genTime);
		deps.log.info({ size: due.size, genTime: genTime.toISOString() }, "checkpoint stamped");
		return "stamped";
	} catch (error) {
		if (!(error instanceof StampRefusal)) throw error;
		await noteStampError(deps.database, due.size, error.code);
		deps.log.warn({ size: due.size, attempt: due.attempts, why: error.message }, "checkpoint not stamped");
		return "failed";
	}
}

async function askFor(
	deps: Pick<Deps, "randomBytes">,
	{ url, anchors }: Authority,
	{ note }: WaitingStamp,
	stop: AbortSignal,
) {
	const stamped = Buffer.from(note, "utf8");
	const request = stampRequest(Buffer.from(sha256Hex(stamped), "hex"), deps.randomBytes(8));
	return verifyReply(await askAuthority(url, request.der, stop), request, stamped, anchors);
}
