/** What a verdict says and what it covers, the same on the page, in the offline file and at the command line. */
import type { Finding } from "../../records/verify/finding.ts";
import type { Verification } from "../../records/verify/verify-receipt.ts";
import { verifyWords } from "./words.ts";

/** The verdict in a sentence or two; of a dossier also what the verdict is not about. */
export function outcomeWords(verification: Verification): readonly string[] {
	const { outcome, checks } = verification;
	const isDossier = checks.some(({ id }) => id === "bag");
	if (!isDossier || outcome === "not-verified") return [verdictWords(verification, "")];
	return [verdictWords(verification, "-dossier"), verifyWords("verify.covers"), verifyWords("verify.covers-not")];
}

function verdictWords({ outcome, format, checks }: Verification, of: "" | "-dossier"): string {
	if (outcome === "not-verified") return verifyWords("verify.not-verified-text");
	if (format === "handover-risk/receipt/1") return verifyWords("verify.verified-unsigned-text");
	return verifyWords(checks.some(isTie) ? `verify.verified${of}-text` : `verify.verified${of}-own-key-text`);
}

/** Whether a finding ties the receipt to something that the reader had elsewhere: a key, or a checkpoint. */
function isTie({ id, outcome, why }: Finding): boolean {
	if (outcome !== "passed") return false;
	return id === "expected-key" || (id === "earlier-checkpoints" && why?.values.given !== "0");
}
