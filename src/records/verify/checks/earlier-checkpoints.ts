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
import { type GivenHistory, type Link, readHistory } from "../given-history.ts";
import { isConsistent } from "../merkle-proofs.ts";
import type { LogProof, ReadReceipt } from "../read-receipt.ts";
import { type Note, type NoteKey, noteKey } from "../signed-note.ts";

export function checkEarlierCheckpoints({ log }: ReadReceipt, given: Given): Finding[] {
	if (log === null) return [finding("not-possible", { why: why("verify.no-log") })];
	const own = [...log.earlier, ...log.timeStamps];
	if (own.length === 0 && given.earlier.length === 0) {
		return [finding("not-possible", { why: why("verify.earlier-none") })];
	}
	const histories = given.earlier.map(readHistory);
	const links = provenLinks(log, histories);
	const keys = knownKeys(log, histories, given.keys);
	const found = [...ownFindings(log), ...histories.flatMap((history) => givenFindings(history, log, keys, links))];
	const failed = found.filter(({ outcome }) => outcome === "failed");
	if (failed.length > 0) return failed;
	const values = { own: own.length, given: histories.length - found.length };
	const passed = own.length > 0 || values.given > 0;
	return [...(passed ? [finding("passed", { why: why("verify.earlier-passed", values) })] : []), ...found];
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
		const { where, why: reason, ...details } = history.unreadable;
		const inFile = { name, where: where ?? "–" };
		return [
			finding("failed", {
				...details,
				why: reason ?? why("verify.earlier-unreadable", inFile),
				where: `${name}: ${where ?? ""}`,
			}),
		];
	}
	for (const note of history.notes) {
		if (note.origin !== log.checkpoint.origin) return [otherLog(note, log, name)];
		const [bad] = badSignatures(note, keys);
		if (bad !== undefined) return [finding("failed", { ...bad, where: `${name}: ${note.where}` })];
		const fork = ownNotes(log).find((other) => other.size === note.size && other.root !== note.root);
		if (fork !== undefined) {
			const details = { where: name, expected: fork.root, found: note.root };
			return [finding("failed", { ...details, why: why("verify.earlier-fork", { size: note.size }) })];
		}
	}
	const [newest] = history.notes;
	if (newest === undefined || meet(newest, log.checkpoint, links)) return [];
	const [from, to] = [newest.size, log.checkpoint.size].sort((a, b) => a - b);
	const values = { name, from: from ?? 0, to: to ?? 0 };
	return [finding("not-possible", { where: name, why: why("verify.earlier-unproven", values) })];
}

/** Every pair of checkpoints whose consistency is proven by anything at hand. */
function provenLinks(log: LogProof, histories: readonly GivenHistory[]): Link[] {
	const notes = [...ownNotes(log), ...histories.flatMap((history) => history.notes)];
	const loose = histories.flatMap(({ proofs }) =>
		proofs.flatMap(({ size, proof }) =>
			notes.filter((to) => to.size === size).flatMap((to) => notes.map((from): Link => ({ from, to, proof }))),
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
function meet(one: Note, other: Note, links: readonly Link[]): boolean {
	const reached = grownTo(one, links);
	return [...grownTo(other, links)].some((head) => reached.has(head));
}

/** The trees that a checkpoint's tree is the beginning of, itself first. */
function grownTo(note: Note, links: readonly Link[]): Set<string> {
	const heads = new Set([headOf(note)]);
	// A set goes on over what is added while it is read.
	for (const head of heads) {
		for (const { from, to } of links) if (headOf(from) === head) heads.add(headOf(to));
	}
	return heads;
}

function headOf({ size, root }: Note): string {
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
