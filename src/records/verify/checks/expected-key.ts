/**
 * `expected-key`: the log's key is the one that the reader was given elsewhere, such as on the slip. A log may change its
 * key: then the entry `log-key-added` names the new one, and whoever trusts the old key, which signed a tree with that
 * entry, learns the new one from it.
 */
import { expectedKeys } from "../expected-keys.ts";
import { type Finding, why } from "../finding.ts";
import type { ReadEntry } from "../read-entry.ts";
import type { LogProof, ReadReceipt } from "../read-receipt.ts";
import { plainText } from "../shape.ts";
import { isSignedBy, type Note } from "../signed-note.ts";

export function checkExpectedKey({ log, entries }: ReadReceipt, givenKeys: readonly string[]): Finding[] {
	if (log === null) return [{ id: "expected-key", outcome: "not-possible", why: why("verify.no-log") }];
	const signed = signersOf(log.checkpoint, log);
	if (givenKeys.length === 0) {
		const found = [...signed].join(" ");
		return [{ id: "expected-key", outcome: "not-possible", found, why: why("verify.expected-none") }];
	}
	const { keys, ids, unreadable } = expectedKeys(givenKeys);
	if (unreadable !== null) {
		return [{ id: "expected-key", outcome: "failed", found: unreadable, why: why("verify.expected-unreadable") }];
	}
	if (keys.length === 0) return [byIds(ids, log)];
	const trusted = handedOn(keys, log, entries);
	const passed = [...signed].find((key) => trusted.has(key));
	if (passed === undefined) {
		const [found = ""] = signed;
		return [
			{ id: "expected-key", outcome: "failed", expected: keys.join(" "), found, why: why("verify.expected-other") },
		];
	}
	const sentence = keys.includes(passed) ? "verify.expected-passed" : "verify.expected-handed-on";
	return [{ id: "expected-key", outcome: "passed", found: passed, why: why(sentence) }];
}

/** Eight digits of a key's hash may come out alike for a key that was made for it, so they refute and do not prove. */
function byIds(ids: readonly string[], { checkpoint }: LogProof): Finding {
	const signed = checkpoint.signatures.map(({ keyId }) => keyId);
	const found = signed.join(" ");
	return signed.some((id) => ids.includes(id))
		? { id: "expected-key", outcome: "not-possible", found, why: why("verify.expected-id") }
		: { id: "expected-key", outcome: "failed", expected: ids.join(" "), found, why: why("verify.expected-other") };
}

/** Public keys whose signature a note bears. */
function signersOf(note: Note, { keys }: LogProof): Set<string> {
	const signers = keys.filter((key) => note.signatures.some((signature) => isSignedBy(note, signature, key)));
	return new Set(signers.map(({ publicKey }) => publicKey));
}

/** The given keys, and those that a trusted key's tree names as its successor. */
function handedOn(given: readonly string[], log: LogProof, entries: readonly ReadEntry[]): Set<string> {
	const trusted = new Set(given);
	const notes = [...log.earlier, ...log.timeStamps].map(({ note }) => note);
	const added = entries.filter(({ kind }) => kind === "log-key-added");
	for (const { index, statement } of added) {
		if (statement?.node.type !== "object" || statement.format !== "handover-risk/log-key/1") continue;
		const origin = plainText(statement.node.members.get("origin"));
		const publicKey = plainText(statement.node.members.get("publicKey"));
		if (origin !== log.checkpoint.origin || publicKey === null) continue;
		const vouched = [...notes, log.checkpoint].some(
			(note) =>
				note.origin === origin && index < note.size && [...signersOf(note, log)].some((key) => trusted.has(key)),
		);
		if (vouched) trusted.add(publicKey);
	}
	return trusted;
}
