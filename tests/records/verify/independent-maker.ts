/**
 * Makes receipts for the tests of verification, straight from the written form and RFC 9162's recursive definitions, with
 * node:crypto. It shares no code with the service's maker or with verification, so that agreement means something.
 */
import {
	createHash,
	createPrivateKey,
	createPublicKey,
	generateKeyPairSync,
	type KeyObject,
	randomBytes,
	sign,
} from "node:crypto";

export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

const sha256 = (...parts: readonly Buffer[]) => createHash("sha256").update(Buffer.concat(parts)).digest();
export const hexHash = (bytes: Buffer) => sha256(bytes).toString("hex");

/** RFC 8785 for values whose numbers and texts are plain. */
export function canonical(value: Json): string {
	if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
	if (value === null || typeof value !== "object") return JSON.stringify(value);
	const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
	return `{${members.map(([name, member]) => `${JSON.stringify(name)}:${canonical(member)}`).join(",")}}`;
}

const split = (size: number) => {
	let k = 1;
	while (k * 2 < size) k *= 2;
	return k;
};
export const leafOf = (data: Buffer) => sha256(Buffer.of(0), data);
/** MTH, RFC 9162 section 2.1.1, over leaf hashes. */
export function rootOf(leaves: readonly Buffer[]): Buffer {
	if (leaves.length === 0) return sha256();
	if (leaves.length === 1) return leaves[0] as Buffer;
	const k = split(leaves.length);
	return sha256(Buffer.of(1), rootOf(leaves.slice(0, k)), rootOf(leaves.slice(k)));
}
/** PATH, section 2.1.3.1. */
export function inclusionOf(index: number, leaves: readonly Buffer[]): Buffer[] {
	if (leaves.length === 1) return [];
	const k = split(leaves.length);
	return index < k
		? [...inclusionOf(index, leaves.slice(0, k)), rootOf(leaves.slice(k))]
		: [...inclusionOf(index - k, leaves.slice(k)), rootOf(leaves.slice(0, k))];
}
/** PROOF and SUBPROOF, section 2.1.4.1. */
export function consistencyOf(from: number, leaves: readonly Buffer[], whole = true): Buffer[] {
	if (from === leaves.length) return whole ? [] : [rootOf(leaves)];
	const k = split(leaves.length);
	return from <= k
		? [...consistencyOf(from, leaves.slice(0, k), whole), rootOf(leaves.slice(k))]
		: [...consistencyOf(from - k, leaves.slice(k), false), rootOf(leaves.slice(0, k))];
}
const hexes = (hashes: readonly Buffer[]) => hashes.map((hash) => hash.toString("hex"));

export interface TestKey {
	readonly privateKey: KeyObject;
	readonly publicKey: string;
	readonly pem: string;
}
/** An Ed25519 key; from a seed of 32 bytes where one is given. */
export function testKey(seed = randomBytes(32)): TestKey {
	const der = Buffer.concat([Buffer.from("302e020100300506032b657004220420", "hex"), seed]);
	const privateKey = createPrivateKey({ key: der, format: "der", type: "pkcs8" });
	const publicKey = createPublicKey(privateKey);
	return {
		privateKey,
		publicKey: publicKey.export({ format: "der", type: "spki" }).subarray(-32).toString("hex"),
		pem: publicKey.export({ format: "pem", type: "spki" }) as string,
	};
}

export interface TestEntry {
	readonly kind: string;
	readonly subject: string;
	readonly by?: string;
	readonly statement?: Json;
	readonly openings?: readonly { commitment: string; salt: string; value: Json }[];
	/** About another order: stands in the log, not in receipts. */
	readonly foreign?: boolean;
}

/** A log that entries are added to; each has its checkpoint, and receipts are made at any size. */
export class TestLog {
	readonly origin: string;
	readonly keys: TestKey[];
	readonly entries: (TestEntry & { readonly bytes: Buffer; readonly leaf: Buffer; readonly sealed: Buffer | null })[] =
		[];
	private readonly notes = new Map<number, string>();
	private atMs = Date.parse("2026-03-02T09:00:00.000Z");

	constructor(origin = `handover-risk/${"7".repeat(20)}`, keys = [testKey()]) {
		this.origin = origin;
		this.keys = keys;
	}

	get leaves(): Buffer[] {
		return this.entries.map(({ leaf }) => leaf);
	}

	add(entry: TestEntry): void {
		this.atMs += 1000;
		const sealed = entry.statement === undefined ? null : Buffer.from(canonical(entry.statement));
		const bytes = Buffer.from(
			canonical({
				$format: "handover-risk/entry/1",
				by: entry.by ?? `acc_${"1".repeat(20)}`,
				index: this.entries.length,
				kind: entry.kind,
				subject: entry.subject,
				time: new Date(this.atMs).toISOString(),
				...(sealed === null ? {} : { statementSha256: hexHash(sealed) }),
			}),
		);
		this.entries.push({ ...entry, bytes, leaf: leafOf(bytes), sealed });
	}

	/** The signed note over the first `size` entries, by the given keys. */
	note(size = this.entries.length, keys: readonly TestKey[] = this.keys.slice(-1)): string {
		const kept = this.notes.get(size);
		if (kept !== undefined) return kept;
		const text = `${this.origin}\n${size}\n${rootOf(this.leaves.slice(0, size)).toString("base64")}\n`;
		const lines = keys.map((key) => {
			const raw = Buffer.from(key.publicKey, "hex");
			const keyHash = sha256(Buffer.from(this.origin), Buffer.of(0x0a, 0x01), raw).subarray(0, 4);
			const signature = sign(null, Buffer.from(text), key.privateKey);
			return `— ${this.origin} ${Buffer.concat([keyHash, signature]).toString("base64")}\n`;
		});
		const note = `${text}\n${lines.join("")}`;
		this.notes.set(size, note);
		return note;
	}

	consistency(from: number, to = this.entries.length): string[] {
		return hexes(consistencyOf(from, this.leaves.slice(0, to)));
	}

	/** A receipt as a value, so that tests can bend it before it is written. */
	receipt(
		about: string,
		options: {
			readonly size?: number;
			readonly earlier?: readonly number[];
			readonly timeStamps?: readonly { readonly size: number; readonly token: Buffer }[];
			readonly keys?: readonly TestKey[];
		} = {},
	) {
		const size = options.size ?? this.entries.length;
		const leaves = this.leaves.slice(0, size);
		const older = (from: number) => ({ checkpoint: this.note(from), proof: this.consistency(from, size) });
		return {
			$format: "handover-risk/receipt/2",
			about,
			checkpoint: this.note(size),
			earlier: (options.earlier ?? []).map(older),
			entries: this.entries.slice(0, size).flatMap((entry, index) =>
				entry.foreign === true
					? []
					: [
							{
								entry: entry.bytes.toString("base64"),
								openings: [...(entry.openings ?? [])].sort((a, b) => (a.commitment < b.commitment ? -1 : 1)),
								proof: hexes(inclusionOf(index, leaves)),
								...(entry.sealed === null ? {} : { statement: entry.sealed.toString("base64") }),
							},
						],
			),
			keys: (options.keys ?? this.keys).map(({ publicKey }) => ({ origin: this.origin, publicKey })),
			timeStamps: (options.timeStamps ?? []).map(({ size: from, token }) => ({
				...older(from),
				token: token.toString("base64"),
			})),
		};
	}
}

/** What a person typed, as it stands in a statement, and its opening. */
export function committed(value: Json) {
	const salt = randomBytes(32);
	const commitment = sha256(Buffer.of(2), salt, Buffer.from(canonical(value))).toString("hex");
	return { stands: { commitment }, opening: { commitment, salt: salt.toString("hex"), value } };
}

export function written(receipt: unknown): Buffer {
	return Buffer.from(canonical(receipt as Json));
}

export const RECORD = `rec_${"a".repeat(20)}`;
export const ORDER = `ord_${"b".repeat(20)}`;
export const LINK = `lnk_${"c".repeat(20)}`;
export const PHOTO = Buffer.from("an invented photo");

/** An order's life: a draft opened, a departure sealed, a link used, an arrival sealed through it and counter-signed. */
export function orderLog(log = new TestLog()): TestLog {
	const seal = (recordId: string, by: string): TestEntry => {
		const serial = committed("OW24-7731-C");
		const remark = committed('Grüße, "rot"\n\\ € 🙂');
		const hidden = committed("erased");
		return {
			kind: "record-sealed",
			subject: recordId,
			by,
			statement: {
				$format: "handover-risk/record/1",
				exhibits: [
					{ fileName: hidden.stands, mediaType: "image/png", sha256: hexHash(PHOTO), sizeBytes: PHOTO.length },
				],
				identity: { serialNumber: serial.stands },
				orderId: ORDER,
				readings: [{ check: "mass", values: [{ typed: "1904", typedUnit: "g", unit: "kg", value: 1.904 }] }],
				recordId,
				statement: remark.stands,
			},
			openings: [serial.opening, remark.opening],
		};
	};
	log.add({ kind: "record-opened", subject: RECORD });
	log.add({ kind: "record-opened", subject: `rec_${"z".repeat(20)}`, foreign: true });
	log.add(seal(RECORD, `acc_${"1".repeat(20)}`));
	log.add({ kind: "link-used", subject: LINK, by: LINK });
	log.add({ kind: "record-opened", subject: `rec_${"y".repeat(20)}`, foreign: true });
	log.add(seal(`rec_${"d".repeat(20)}`, LINK));
	counterSign(log, log.entries.length - 1);
	return log;
}

/** A party's device signs an entry. */
export function counterSign(log: TestLog, index: number): void {
	const leafSha256 = log.entries[index]?.leaf.toString("hex") ?? "";
	const { privateKey, publicKey } = generateKeyPairSync("ec", { namedCurve: "prime256v1" });
	const text = Buffer.from(`handover-risk/party-signature/1\n${leafSha256}\n`);
	log.add({
		kind: "party-signed",
		subject: LINK,
		by: LINK,
		statement: {
			$format: "handover-risk/party-signature/1",
			algorithm: "ecdsa-p256-sha256",
			leafSha256,
			linkId: LINK,
			publicKey: publicKey.export({ format: "der", type: "spki" }).subarray(-65).toString("hex"),
			signature: sign("sha256", text, { key: privateKey, dsaEncoding: "ieee-p1363" }).toString("hex"),
		},
	});
}
