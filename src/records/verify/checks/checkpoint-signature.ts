/** `checkpoint-signature`: the checkpoint is signed, and by keys that stand in the receipt. */

import { badSignatures } from "../bad-signatures.ts";
import { type Finding, why } from "../finding.ts";
import type { LogProof, ReadReceipt } from "../read-receipt.ts";

export function checkCheckpointSignature({ log }: ReadReceipt): Finding[] {
	if (log === null) return [{ id: "checkpoint-signature", outcome: "not-possible", why: why("verify.no-log") }];
	const failed = [...badSignatures(log.checkpoint, log.keys), ...idleKeys(log)];
	if (failed.length > 0)
		return failed.map((details) => ({ id: "checkpoint-signature", outcome: "failed", ...details }));
	const { origin, size, signatures } = log.checkpoint;
	const values = { origin, size, keys: signatures.map(({ keyId }) => keyId).join(", ") };
	return [{ id: "checkpoint-signature", outcome: "passed", why: why("verify.signature-passed", values) }];
}

/** A receipt holds no key that signed nothing in it. */
function idleKeys({ checkpoint, earlier, timeStamps, keys }: LogProof) {
	const notes = [checkpoint, ...earlier.map(({ note }) => note), ...timeStamps.map(({ note }) => note)];
	const signed = new Set(notes.flatMap(({ signatures }) => signatures.map(({ name, keyId }) => `${name} ${keyId}`)));
	return keys.flatMap(({ origin, keyId }, index) =>
		signed.has(`${origin} ${keyId}`)
			? []
			: [{ where: `/keys/${index}`, found: keyId, why: why("verify.signature-idle-key") }],
	);
}
