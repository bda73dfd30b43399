/** `form`: the strict canonical form, down to each base64 and hex text and to what is encoded in them. */
import { type Finding, Unreadable, why } from "../finding.ts";
import { type ReadReceipt, readReceipt } from "../read-receipt.ts";

/** The receipt where it has its form; the other checks need that. */
export function readForm(bytes: Uint8Array): { readonly form: Finding; readonly receipt: ReadReceipt | null } {
	try {
		const receipt = readReceipt(bytes);
		const values = { format: receipt.format, bytes: bytes.length };
		return { form: { id: "form", outcome: "passed", why: why("verify.form-passed", values) }, receipt };
	} catch (error) {
		const details = error instanceof Unreadable ? error.details : { why: why("verify.unexpected") };
		return { form: { id: "form", outcome: "failed", ...details }, receipt: null };
	}
}
