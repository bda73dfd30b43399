/**
 * `earlier-checkpoints`: the log was only ever added to. Each older checkpoint in the receipt, and each that the reader
 * kept, is signed, has no other root at the same size, and its tree is the beginning of the receipt's (or both are of a
 * third one's). A kept one for which no proof is at hand is told as not possible.
 */
import { badSignatures } from "../bad-signatures.ts";
import { shown } from "../canonical-json.ts";
import { expectedKeys } from "../expected-keys.ts";
import { type Finding, type FindingDetails, why } from "../finding.ts";
import type { Given } from "../given.ts";
import { type GivenHistory, type Link, readHistory, readPrinted } from "../given-history.ts";
import { isConsistent, type TreeHead } from "../merkle-proofs.ts";
import type { LogProof, ReadReceipt } from "../read-receipt.ts";
import { type Note, type NoteKey, noteKey } from "../signed-note.ts";

export function checkEarlierCheckpoints({ log }: ReadReceipt, given: Given): Finding[] {
	if (log === null) return [finding("not-possible", { why: why("verify.no-log") })];
	const own = [...log.earlier, ...log.timeStamps];
	const histories = [...given.earlier.map(readHistory), ...given.printed.map(readPrinted)];
	const links = provenLinks(log, histories);
	const keys = knownKeys(log, histories, given.keys);
	const found = [...ownFindings(log), ...histories.flatMap((history) => givenFindings(history, log, keys, links))];
	const failed = found.filter(({ outcome }) => outcome === "failed");
	if (failed.length > 0) return failed;
	const told = histories.filter(({ notes, heads }) => notes.length + heads.length > 0);
	const values = { own: own.length, given: told.length - found.length };
	if (own.length > 0 || values.given > 0)
		return [finding("passed", { why: why("verify.earlier-passed", values) }), ...found];
	return found.length > 0 ? found : [finding("not-possible", { why: why("verify.earlier-none") })];
}

function ownFindings(log: LogProof): Finding[] {
	return [...log.earlier, ...log.timeStamps].flatMap(({ where, note, proof }) => {
		if (note.origin !== log.checkpoint.origin) return [otherLog(note, log, where)];
		const bad = badSignatures(note, log.keys);
		if (bad.length > 0) return bad.map((details) => finding("failed", details));
		if (isConsistent(note, log.checkpoint, proof)) return [];
		const values = { from: note.size, to: log.checkpoint.size };
		return [finding("failed", { where: `${where}/proof`, why: why("verify.earlier-inconsistent", values) })];
	});
}

function givenFindings(
	history: GivenHistory,
	log: LogProof,
	keys: readonly NoteKey[],
	links: readonly Link[],
): Finding[] {
	const name = shown(history.name);
	if (history.unreadable !== null) {
		const { where } = history.unreadable;
		return [finding("failed", { ...history.unreadable, where: where === undefined ? name : `${name}: ${where}` })];
	}
	for (const note of history.notes) {
		if (note.origin !== log.checkpoint.origin) return [otherLog(note, log, name)];
		const [bad] = badSignatures(note, keys);
		if (bad !== undefined) return [finding("failed", { ...bad, where: `${name}: ${note.where}` })];
	}
	const heads: readonly TreeHead[] = [...history.notes, ...history.heads];
	for (const { size, root } of heads) {
		const fork = ownNotes(log).find((other) => other.size === size && other.root !== root);
		if (fork === undefined) continue;
		const details = { where: name, expected: fork.root, found: root };
		return [finding("failed", { ...details, why: why("verify.earlier-fork", { size }) })];
	}
	const [newest] = heads;
	if (newest === undefined || meet(newest, log.checkpoint, links)) return [];
	const [from, to] = [newest.size, log.checkpoint.size].sort((a, b) => a - b);
	const values = { name, from: from ?? 0, to: to ?? 0 };
	return [finding("not-possible", { where: name, why: why("verify.earlier-unproven", values) })];
}

/** Every pair of checkpoints whose consistency is proven by anything at hand. */
function provenLinks(log: LogProof, histories: readonly GivenHistory[]): Link[] {
	const heads = [...ownNotes(log), ...histories.flatMap((history) => [...history.notes, ...history.heads])];
	const loose = histories.flatMap(({ proofs }) =>
		proofs.flatMap(({ size, proof }) =>
			heads.filter((to) => to.size === size).flatMap((to) => heads.map((from): Link => ({ from, to, proof }))),
		),
	);
	const told = [...log.earlier, ...log.timeStamps].map(
		({ note, proof }): Link => ({ from: note, to: log.checkpoint, proof }),
	);
	return [...told, ...histories.flatMap((history) => history.links), ...loose].filter(({ from, to, proof }) =>
		isConsistent(from, to, proof),
	);
}

/** Whether two checkpoints' trees are both the beginning of one tree, one of their own counted. */
function meet(one: TreeHead, other: TreeHead, links: readonly Link[]): boolean {
	const reached = grownTo(one, links);
	return [...grownTo(other, links)].some((head) => reached.has(head));
}

/** The trees that a checkpoint's tree is the beginning of, itself first. */
function grownTo(head: TreeHead, links: readonly Link[]): Set<string> {
	const heads = new Set([headOf(head)]);
	// A set goes on over what is added while it is read.
	for (const reached of heads) {
		for (const { from, to } of links) if (headOf(from) === reached) heads.add(headOf(to));
	}
	return heads;
}

function headOf({ size, root }: TreeHead): string {
	return `${size} ${root}`;
}

function ownNotes({ checkpoint, earlier, timeStamps }: LogProof): Note[] {
	return [checkpoint, ...[...earlier, ...timeStamps].map(({ note }) => note)];
}

function knownKeys(log: LogProof, histories: readonly GivenHistory[], given: readonly string[]): NoteKey[] {
	return [
		...log.keys,
		...histories.flatMap(({ keys }) => keys),
		...expectedKeys(given).keys.map((publicKey) => noteKey(log.checkpoint.origin, publicKey)),
	];
}

function otherLog(note: Note, log: LogProof, where: string): Finding {
	const details = { expected: log.checkpoint.origin, found: note.origin };
	return finding("failed", { where, ...details, why: why("verify.earlier-other-log") });
}

function finding(outcome: Finding["outcome"], details: FindingDetails): Finding {
	return { id: "earlier-checkpoints", outcome, ...details };
}
