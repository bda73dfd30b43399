/**
 * Reads a receipt, `handover-risk/receipt/1` or `/2`: bytes in, its parts out, each in its one form. What the forms hold
 * is told in DEVELOPERS.md; this reader shares no code with what makes them.
 */
import { type JsonNode, parseCanonical } from "./canonical-json.ts";
import { why } from "./finding.ts";
import { type ReadEntry, readEntry, readEntryOfReceipt1, readHashes } from "./read-entry.ts";
import { refuseWrongSettling } from "./settling-statements.ts";
import { base64Of, constantOf, hexOf, itemsOf, membersOf, plainText, refuse, textOf } from "./shape.ts";
import { type Note, type NoteKey, noteKey, readNote } from "./signed-note.ts";

/** A checkpoint older than the receipt's, with the proof that its tree is the beginning of the receipt's. */
export interface EarlierNote {
	readonly where: string;
	readonly note: Note;
	readonly proof: readonly string[];
}

export interface TimeStampedNote extends EarlierNote {
	/** DER of an RFC 3161 TimeStampToken. */
	readonly token: Uint8Array;
}

/** What a receipt of the second form proves its entries with. */
export interface LogProof {
	readonly checkpoint: Note;
	readonly earlier: readonly EarlierNote[];
	readonly keys: readonly NoteKey[];
	readonly timeStamps: readonly TimeStampedNote[];
}

export interface ReadReceipt {
	readonly format: "handover-risk/receipt/1" | "handover-risk/receipt/2";
	readonly about: string;
	readonly entries: readonly ReadEntry[];
	/** Null in the first form, which stands in no signed log. */
	readonly log: LogProof | null;
}

/** @throws Unreadable at the first thing that does not have its form */
export function readReceipt(bytes: Uint8Array): ReadReceipt {
	const node = parseCanonical(bytes);
	const receipt =
		node.type === "object" && formatOf(node) === "handover-risk/receipt/1" ? first(node, bytes) : second(node, bytes);
	refuseOtherSubject(receipt);
	refuseWrongSettling(receipt.entries);
	return receipt;
}

function formatOf(node: JsonNode): string | null {
	return node.type === "object" ? plainText(node.members.get("$format")) : null;
}

function first(node: JsonNode, bytes: Uint8Array): ReadReceipt {
	const member = membersOf(node, "", ["$format", "about", "log", "statements"]);
	constantOf(member("log"), "/log", "not yet in a signed log");
	return {
		format: "handover-risk/receipt/1",
		about: textOf(member("about"), "/about"),
		entries: itemsOf(member("statements"), "/statements").map((item, index) =>
			readEntryOfReceipt1(item, `/statements/${index}`, bytes),
		),
		log: null,
	};
}

function second(node: JsonNode, bytes: Uint8Array): ReadReceipt {
	const format = formatOf(node);
	if (format !== "handover-risk/receipt/2") {
		refuse("/$format", why("verify.form-no-receipt"), "handover-risk/receipt/2", format ?? undefined);
	}
	const names = ["$format", "about", "checkpoint", "earlier", "entries", "keys", "timeStamps"];
	const member = membersOf(node, "", names);
	return {
		format,
		about: textOf(member("about"), "/about"),
		entries: itemsOf(member("entries"), "/entries").map((item, index) => readEntry(item, `/entries/${index}`, bytes)),
		log: {
			checkpoint: readNote(textOf(member("checkpoint"), "/checkpoint"), "/checkpoint"),
			earlier: itemsOf(member("earlier"), "/earlier").map((item, index) => {
				const where = `/earlier/${index}`;
				return readEarlier(membersOf(item, where, ["checkpoint", "proof"]), where);
			}),
			keys: itemsOf(member("keys"), "/keys").map((item, index) => {
				const where = `/keys/${index}`;
				const key = membersOf(item, where, ["origin", "publicKey"]);
				return noteKey(textOf(key("origin"), `${where}/origin`), hexOf(key("publicKey"), `${where}/publicKey`, 32));
			}),
			timeStamps: itemsOf(member("timeStamps"), "/timeStamps").map((item, index) => {
				const where = `/timeStamps/${index}`;
				const stamp = membersOf(item, where, ["checkpoint", "proof", "token"]);
				return { ...readEarlier(stamp, where), token: base64Of(stamp("token"), `${where}/token`) };
			}),
		},
	};
}

function readEarlier(member: (name: string) => JsonNode, where: string): EarlierNote {
	return {
		where,
		note: readNote(textOf(member("checkpoint"), `${where}/checkpoint`), `${where}/checkpoint`),
		proof: readHashes(member("proof"), `${where}/proof`),
	};
}

/** What a receipt says it is about stands nowhere else but in the entries: as a subject, or as an id in a statement. */
function refuseOtherSubject({ about, entries }: ReadReceipt): void {
	const named = entries.some(({ subject, statement }) => {
		if (subject === about) return true;
		if (statement?.node.type !== "object") return false;
		return ["recordId", "orderId"].some(
			(name) => plainText((statement.node as ObjectNode).members.get(name)) === about,
		);
	});
	if (!named) refuse("/about", why("verify.form-about"), undefined, about);
}

type ObjectNode = JsonNode & { readonly type: "object" };
