/**
 * Keeps the newest checkpoint that this device saw, and says at each page whether the log that it saw is the beginning of
 * today's. The check runs here, with the code that verifies receipts; the server only gives the proof.
 */
import { bytesToHex } from "@noble/hashes/utils.js";
import { isConsistent } from "../../../records/verify/merkle-proofs.ts";
import { isSignedBy, type Note, noteKey, readNote } from "../../../records/verify/signed-note.ts";

/** One place for the whole site: a log that was put in the place of another is found too. */
const KEPT = "handover-risk: newest checkpoint seen";

interface Seen {
	readonly note: string;
	/** When this device saw it, ISO 8601. */
	readonly at: string;
}

export async function checkLog(place: HTMLElement | null): Promise<void> {
	if (place === null) return;
	try {
		const now = await newestNote();
		const kept = localStorage.getItem(KEPT);
		if (kept === null) {
			keep(now);
			place.textContent = place.dataset.first ?? "";
			return;
		}
		const seen = JSON.parse(kept) as Seen;
		const before = readNote(seen.note, "");
		const proof = before.origin === now.origin && before.size <= now.size ? await proofBetween(before, now) : null;
		const facts = {
			size: String(before.size),
			time: new Date(seen.at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" }),
		};
		if (proof !== null && isConsistent(before, now, proof)) {
			place.textContent = filled(place.dataset.consistent, facts);
			keep(now);
			return;
		}
		place.textContent = `${filled(place.dataset.inconsistent, facts)} `;
		place.classList.add("warning");
		place.append(evidence({ seen, now: now.note, proof }, place.dataset.keep ?? ""));
	} catch {
		// No network, no storage, an answer that is no checkpoint: nothing can be said, and nothing kept is lost.
		place.textContent = place.dataset.unknown ?? "";
	}
}

/** @throws Error where it cannot be had, or is not signed by a key of the log */
async function newestNote(): Promise<Note> {
	const [text, pem] = await Promise.all([textOf("/api/v1/log/checkpoint"), textOf("/api/v1/log/key")]);
	const note = readNote(text, "");
	const keys = [...pem.matchAll(/-----BEGIN PUBLIC KEY-----([^-]+)/g)].map(([, base64 = ""]) => {
		const der = Uint8Array.from(atob(base64.trim()), (letter) => letter.charCodeAt(0));
		// RFC 8410: the key is the last 32 bytes.
		return noteKey(note.origin, bytesToHex(der.slice(-32)));
	});
	if (!note.signatures.some((signature) => keys.some((key) => isSignedBy(note, signature, key)))) {
		throw new Error("the checkpoint is not signed by a key of its log");
	}
	return note;
}

async function proofBetween(before: Note, now: Note): Promise<string[]> {
	const answer = await textOf(`/api/v1/log/proof?from=${before.size}&to=${now.size}`);
	return (JSON.parse(answer) as { proof: string[] }).proof;
}

async function textOf(path: string): Promise<string> {
	const answer = await fetch(path, { cache: "no-store" });
	if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
	return answer.text();
}

function keep({ note }: Note): void {
	localStorage.setItem(KEPT, JSON.stringify({ note, at: new Date().toISOString() } satisfies Seen));
}

/** A link to a file that holds both checkpoints. */
function evidence(found: object, label: string): HTMLAnchorElement {
	const link = document.createElement("a");
	link.href = URL.createObjectURL(new Blob([JSON.stringify(found, null, "\t")], { type: "application/json" }));
	link.download = "two-checkpoints.json";
	link.textContent = label;
	return link;
}

function filled(text: string | undefined, facts: Readonly<Record<string, string>>): string {
	return (text ?? "").replace(/\{(\w+)\}/g, (whole, name: string) => facts[name] ?? whole);
}
