/**
 * Verifies a receipt without the server: bytes in, findings out. Nothing here makes a receipt, and nothing that makes one
 * is used here. It reads no clock, file or network, and throws on no input.
 */
import { checkCheckpointSignature } from "./checks/checkpoint-signature.ts";
import { checkEarlierCheckpoints } from "./checks/earlier-checkpoints.ts";
import { checkExhibits } from "./checks/exhibits.ts";
import { checkExpectedKey } from "./checks/expected-key.ts";
import { readForm } from "./checks/form.ts";
import { checkInclusion } from "./checks/inclusion.ts";
import { checkIndependentTime } from "./checks/independent-time.ts";
import { checkOpenings } from "./checks/openings.ts";
import { checkOrder } from "./checks/order.ts";
import { checkPartySignatures } from "./checks/party-signature.ts";
import { checkStatementHashes } from "./checks/statement-hash.ts";
import { CHECK_IDS, type CheckId, type Finding, why } from "./finding.ts";
import { type Given, NOTHING_GIVEN } from "./given.ts";
import type { ReadReceipt } from "./read-receipt.ts";

export interface EntrySummary {
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	/** Account or link id. */
	readonly by: string;
	readonly time: string;
	/** SHA-256 of the sealed statement; null where the act sealed nothing. */
	readonly fingerprint: string | null;
}

export interface Verification {
	/** `verified`: nothing failed. What was not possible is listed among the checks. */
	readonly outcome: "verified" | "not-verified";
	/** At least one for each check, in the checks' order; several where several things failed. */
	readonly checks: readonly Finding[];
	/** Null where the receipt could not be read. */
	readonly format: string | null;
	/** Id of the record or order that the receipt says it is about. */
	readonly about: string | null;
	readonly entries: readonly EntrySummary[];
}

type Check = (receipt: ReadReceipt, given: Given) => readonly Finding[];
const CHECKS: Readonly<Record<Exclude<CheckId, "form">, Check>> = {
	"statement-hash": checkStatementHashes,
	openings: checkOpenings,
	order: checkOrder,
	inclusion: checkInclusion,
	"checkpoint-signature": checkCheckpointSignature,
	"expected-key": (receipt, given) => checkExpectedKey(receipt, given.keys),
	"earlier-checkpoints": checkEarlierCheckpoints,
	"party-signature": checkPartySignatures,
	"independent-time": checkIndependentTime,
	exhibits: (receipt, given) => checkExhibits(receipt, given.files),
};
/** Findings told for one check; of more failures than these the rest adds nothing. */
const MOST_TOLD = 20;

/** Runs every check on a receipt's bytes. */
export function verifyReceipt(bytes: Uint8Array, given: Partial<Given> = {}): Verification {
	const { form, receipt } = readForm(bytes);
	const all = { ...NOTHING_GIVEN, ...given };
	const checks = CHECK_IDS.flatMap((id): readonly Finding[] => {
		if (id === "form") return [form];
		if (receipt === null) return [{ id, outcome: "not-possible", why: why("verify.form-first") }];
		return guarded(id, () => CHECKS[id](receipt, all)).slice(0, MOST_TOLD);
	});
	return {
		outcome: checks.some(({ outcome }) => outcome === "failed") ? "not-verified" : "verified",
		checks,
		format: receipt?.format ?? null,
		about: receipt?.about ?? null,
		entries: (receipt?.entries ?? []).map(({ index, kind, subject, by, time, statementSha256 }) => ({
			index,
			kind,
			subject,
			by,
			time,
			fingerprint: statementSha256,
		})),
	};
}

/** A check that stumbles has not passed. */
function guarded(id: CheckId, check: () => readonly Finding[]): readonly Finding[] {
	try {
		return check();
	} catch {
		return [{ id, outcome: "failed", why: why("verify.unexpected") }];
	}
}
