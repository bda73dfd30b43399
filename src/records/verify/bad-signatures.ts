/** What is wrong with the signatures of a note: each must be by a known key, and one by a key of the note's own origin. */
import { type FindingDetails, why } from "./finding.ts";
import { isSignedBy, type Note, type NoteKey } from "./signed-note.ts";

export function badSignatures(note: Note, keys: readonly NoteKey[]): FindingDetails[] {
	const bad = note.signatures.flatMap((signature): FindingDetails[] => {
		const { name, keyId } = signature;
		const known = keys.filter((key) => key.origin === name && key.keyId === keyId);
		if (known.some((key) => isSignedBy(note, signature, key))) return [];
		const reason = why(known.length > 0 ? "verify.signature-false" : "verify.signature-unknown-key", { name });
		return [{ where: note.where, found: keyId, why: reason }];
	});
	if (bad.length > 0 || note.signatures.some(({ name }) => name === note.origin)) return bad;
	return [{ where: note.where, expected: note.origin, why: why("verify.signature-other-log") }];
}
