/** Reads an entry of the log, its statement and its openings, as a receipt holds them. */
import { type JsonNode, parseCanonical } from "./canonical-json.ts";
import { Unreadable, why } from "./finding.ts";
import { leafHash } from "./hashes.ts";
import { base64Of, constantOf, countOf, hexOf, itemsOf, membersOf, plainText, refuse, textOf } from "./shape.ts";

export interface ReadOpening {
	readonly where: string;
	readonly commitment: string;
	readonly salt: string;
	/** The canonical bytes of the value. */
	readonly valueBytes: Uint8Array;
}

export interface ReadStatement {
	readonly bytes: Uint8Array;
	readonly format: string;
	readonly node: JsonNode;
}

export interface ReadEntry {
	readonly where: string;
	readonly leaf: string;
	readonly index: number;
	readonly kind: string;
	readonly subject: string;
	/** Account or link id. */
	readonly by: string;
	readonly time: string;
	readonly statementSha256: string | null;
	readonly statement: ReadStatement | null;
	readonly openings: readonly ReadOpening[];
	/** Inclusion proof; null in a receipt that has none. */
	readonly proof: readonly string[] | null;
}

const TIME = /^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}\.[0-9]{3}Z$/;
const NAMED = /^[^\s]{1,200}$/u;

/** An entry of `handover-risk/receipt/2`. @throws Unreadable */
export function readEntry(node: JsonNode, where: string, file: Uint8Array): ReadEntry {
	const member = membersOf(node, where, ["entry", "openings", "proof"], ["statement"]);
	return {
		...readEntryBytes(member("entry"), `${where}/entry`),
		where,
		statement: readStatement(member("statement"), `${where}/statement`),
		openings: readOpenings(member("openings"), `${where}/openings`, file),
		proof: readHashes(member("proof"), `${where}/proof`),
	};
}

/** An entry of `handover-risk/receipt/1`, which says some of it twice. @throws Unreadable */
export function readEntryOfReceipt1(node: JsonNode, where: string, file: Uint8Array): ReadEntry {
	const told = ["index", "kind", "leafSha256", "sealedAt", "sealedBy", "statementSha256", "subject"];
	const member = membersOf(node, where, ["entry", "openings", "statement", ...told]);
	const entry = readEntryBytes(member("entry"), `${where}/entry`);
	const same = (name: string, stands: string | number | null) => {
		const told = member(name);
		const said = told.type === "number" ? told.number : plainText(told);
		if (said !== stands) refuse(`${where}/${name}`, why("verify.form-told"), String(stands), String(said));
	};
	same("index", entry.index);
	same("kind", entry.kind);
	same("leafSha256", entry.leaf);
	same("sealedAt", entry.time);
	same("sealedBy", entry.by);
	same("statementSha256", entry.statementSha256);
	same("subject", entry.subject);
	return {
		...entry,
		where,
		statement: readStatement(member("statement"), `${where}/statement`),
		openings: readOpenings(member("openings"), `${where}/openings`, file),
		proof: null,
	};
}

/** Hashes in a list. */
export function readHashes(node: JsonNode, where: string): string[] {
	return itemsOf(node, where).map((item, index) => hexOf(item, `${where}/${index}`, 32));
}

function readEntryBytes(node: JsonNode, where: string) {
	const bytes = base64Of(node, where);
	return within(where, () => {
		const member = membersOf(
			parseCanonical(bytes),
			"",
			["$format", "by", "index", "kind", "subject", "time"],
			["statementSha256"],
		);
		constantOf(member("$format"), "/$format", "handover-risk/entry/1");
		const time = textOf(member("time"), "/time", TIME, "verify.form-time");
		if (Number.isNaN(Date.parse(time)) || new Date(time).toISOString() !== time) {
			refuse("/time", why("verify.form-time"), undefined, time);
		}
		const hash = member("statementSha256") as JsonNode | undefined;
		return {
			leaf: leafHash(bytes),
			by: textOf(member("by"), "/by", NAMED, "verify.form-id"),
			index: countOf(member("index"), "/index"),
			kind: textOf(member("kind"), "/kind", /^[a-z][a-z-]{0,60}$/, "verify.form-kind"),
			statementSha256: hash === undefined ? null : hexOf(hash, "/statementSha256", 32),
			subject: textOf(member("subject"), "/subject", NAMED, "verify.form-id"),
			time,
		};
	});
}

function readStatement(node: JsonNode | undefined, where: string): ReadStatement | null {
	if (node === undefined) return null;
	const bytes = base64Of(node, where);
	return within(where, () => {
		const parsed = parseCanonical(bytes);
		if (parsed.type !== "object") refuse("", why("verify.form-object"));
		const format = plainText(parsed.members.get("$format"));
		if (format === null) refuse("/$format", why("verify.form-missing"));
		return { bytes, format, node: parsed };
	});
}

function readOpenings(node: JsonNode, where: string, file: Uint8Array): ReadOpening[] {
	const openings = itemsOf(node, where).map((item, index): ReadOpening => {
		const place = `${where}/${index}`;
		const member = membersOf(item, place, ["commitment", "salt", "value"]);
		const value = member("value");
		return {
			where: place,
			commitment: hexOf(member("commitment"), `${place}/commitment`, 32),
			salt: hexOf(member("salt"), `${place}/salt`, 32),
			valueBytes: file.subarray(value.start, value.end),
		};
	});
	const unsorted = openings.find(({ commitment }, index) => commitment <= (openings[index - 1]?.commitment ?? ""));
	if (unsorted !== undefined) refuse(unsorted.where, why("verify.form-openings-unsorted"));
	return openings;
}

/** Places inside what is encoded at `where` are told after an arrow. */
function within<T>(where: string, read: () => T): T {
	try {
		return read();
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		throw new Unreadable({ ...error.details, where: `${where} → ${error.details.where}` });
	}
}
