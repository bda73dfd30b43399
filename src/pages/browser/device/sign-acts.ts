/**
 * Signs what was done through a link with a key that is made on this device, cannot be read out of it, and is kept for the
 * link. The form that is signed is in `records/signed-text.ts`.
 */
import { bytesToHex } from "@noble/hashes/utils.js";
import { signedText } from "../../../records/signed-text.ts";

const ALGORITHM = { name: "ECDSA", namedCurve: "P-256" };
const STORE = "keys";

/** Signs every act that the page names, which are those that were done just now; says so, or why not. */
export async function signActs(place: HTMLElement | null): Promise<void> {
	if (place === null) return;
	// Browsers give these to pages that came over HTTPS, or from this machine, alone.
	if (globalThis.crypto?.subtle === undefined || globalThis.indexedDB === undefined) {
		place.textContent = place.dataset.unable ?? "";
		return;
	}
	try {
		const linkId = place.dataset.link ?? "";
		const pair = await keyOf(linkId);
		for (const leaf of (place.dataset.leaves ?? "").split(" ")) {
			await sendSignature(linkId, leaf, pair);
			const fact = document.querySelector<HTMLElement>(`[data-leaf="${leaf}"]`);
			if (fact !== null) fact.textContent = fact.dataset.whenSigned ?? "";
		}
		place.textContent = place.dataset.signed ?? "";
	} catch {
		offerAgain(place);
	}
}

async function sendSignature(linkId: string, leafSha256: string, pair: CryptoKeyPair): Promise<void> {
	const text = new TextEncoder().encode(signedText(leafSha256));
	const signature = await crypto.subtle.sign({ name: "ECDSA", hash: "SHA-256" }, pair.privateKey, text);
	const publicKey = await crypto.subtle.exportKey("raw", pair.publicKey);
	const answer = await fetch(`/api/v1/links/${linkId}/signatures`, {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify({
			leafSha256,
			publicKey: bytesToHex(new Uint8Array(publicKey)),
			signature: bytesToHex(new Uint8Array(signature)),
		}),
	});
	if (!answer.ok) throw new Error(`the signature was refused: ${answer.status}`);
}

/** The link's key on this device; made when it is first asked for. */
async function keyOf(linkId: string): Promise<CryptoKeyPair> {
	const opening = indexedDB.open("handover-risk", 1);
	opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
	const database = await settled(opening);
	try {
		const kept = () => settled<CryptoKeyPair | undefined>(database.transaction(STORE).objectStore(STORE).get(linkId));
		const before = await kept();
		if (before !== undefined) return before;
		const made = await crypto.subtle.generateKey(ALGORITHM, false, ["sign"]);
		// `add` fails where another page of this device was quicker; its key is then the link's.
		await settled(database.transaction(STORE, "readwrite").objectStore(STORE).add(made, linkId)).catch(() => {});
		return (await kept()) ?? made;
	} finally {
		database.close();
	}
}

function settled<Result>(request: IDBRequest<Result>): Promise<Result> {
	return new Promise((resolve, reject) => {
		request.onsuccess = () => resolve(request.result);
		request.onerror = () => reject(request.error);
	});
}

function offerAgain(place: HTMLElement): void {
	const again = document.createElement("button");
	again.type = "button";
	again.textContent = place.dataset.again ?? "";
	again.addEventListener("click", () => signActs(place));
	place.replaceChildren(`${place.dataset.failed ?? ""} `, again);
}
