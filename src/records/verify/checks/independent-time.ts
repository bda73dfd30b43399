/**
 * `independent-time`: a time-stamp authority's token (RFC 3161) is over a checkpoint of this log, by SHA-256 of the
 * note's exact bytes, and is whole in itself. Whether the authority is one to trust, `openssl ts -verify` says.
 */
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { type Finding, Unreadable, why } from "../finding.ts";
import { sha256Of } from "../hashes.ts";
import type { ReadReceipt, TimeStampedNote } from "../read-receipt.ts";
import { readTimeStamp } from "../time-stamp-token.ts";

export function checkIndependentTime({ log }: ReadReceipt): Finding[] {
	if (log === null || log.timeStamps.length === 0) {
		return [{ id: "independent-time", outcome: "not-possible", why: why("verify.time-none") }];
	}
	const found = log.timeStamps.map(ofStamp);
	const failed = found.filter(({ outcome }) => outcome === "failed");
	return failed.length > 0 ? failed : found;
}

function ofStamp({ where, note, token }: TimeStampedNote): Finding {
	const fail = (details: Partial<Finding>): Finding => ({
		id: "independent-time",
		outcome: "failed",
		where: `${where}/token`,
		...details,
	});
	try {
		const stamp = readTimeStamp(token);
		const expected = sha256Of(utf8ToBytes(note.note));
		if (stamp.imprintSha256 !== expected) {
			return fail({ expected, found: stamp.imprintSha256 ?? "–", why: why("verify.time-other") });
		}
		if (stamp.signature === "invalid") return fail({ why: why("verify.time-false") });
		const values = { time: stamp.time, size: note.size };
		return stamp.signature === "valid"
			? { id: "independent-time", outcome: "passed", where, why: why("verify.time-passed", values) }
			: { id: "independent-time", outcome: "not-possible", where, why: why("verify.time-unsigned", values) };
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		return fail(error.details);
	}
}
