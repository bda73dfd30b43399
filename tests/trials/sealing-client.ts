/** A client that seals records as fast as it is answered, keeps what was acknowledged, and reads it back later. */
import { entriesIn } from "../setup/receipt-entries.ts";

/** What a client was told is done. */
export type Acknowledged =
	| { readonly act: "order"; readonly id: string }
	| { readonly act: "opened"; readonly id: string }
	| { readonly act: "sealed"; readonly id: string; readonly index: number; readonly statement: string };

export interface Access {
	readonly url: string;
	readonly token: string;
}

/** A receipt holds every record of its order, so orders are kept short. */
const RECORDS_PER_ORDER = 5;

/** Makes the first account and a token for it. */
export async function setUp(url: string, setUpLink: string): Promise<string> {
	const send = (path: string, body: object, cookie = "") =>
		fetch(`${url}/api/v1${path}`, {
			method: "POST",
			headers: { "content-type": "application/json", cookie },
			body: JSON.stringify(body),
		});
	const token = setUpLink.slice(setUpLink.lastIndexOf("/") + 1);
	const made = await send("/set-up", { token, name: "bench", passphrase: "an invented passphrase" });
	if (made.status !== 201) throw new Error(`setting up: ${made.status} ${await made.text()}`);
	const cookie = (made.headers.get("set-cookie") ?? "").split(";")[0];
	const answer = await send("/tokens", { label: "trials" }, cookie);
	if (answer.status !== 201) throw new Error(`making a token: ${answer.status} ${await answer.text()}`);
	return ((await answer.json()) as { token: string }).token;
}

/** Seals until the service no longer answers; every acknowledgement goes to `keep`. */
export async function sealUntilKilled(access: Access, keep: (done: Acknowledged) => void): Promise<void> {
	try {
		for (;;) await sealOneOrder(access, keep);
	} catch (error) {
		// The killed service breaks the connection; everything else is a fault of its own.
		if (!(error instanceof TypeError)) throw error;
	}
}

async function sealOneOrder(access: Access, keep: (done: Acknowledged) => void): Promise<void> {
	for await (const draft of openOneOrder(access, keep))
		keep({ act: "sealed", id: draft.id, ...(await seal(access, draft)) });
}

export interface OpenDraft {
	readonly id: string;
	readonly version: number;
}

/** An order of a few drafts that want nothing but to be sealed. */
export async function* openOneOrder(access: Access, keep: (done: Acknowledged) => void = () => {}) {
	const order = await ask<{ id: string }>(access, "POST", "/orders", ORDER);
	keep({ act: "order", id: order.id });
	const leg = await ask<{ id: string }>(access, "POST", `/orders/${order.id}/consignments`, CONSIGNMENT);
	for (let count = 0; count < RECORDS_PER_ORDER; count += 1) {
		const draft = await ask<OpenDraft>(access, "POST", `/consignments/${leg.id}/records`, recordOf(count));
		keep({ act: "opened", id: draft.id });
		yield draft;
	}
}

/** Seals a draft, and gives its place and statement as the receipt has them. */
export async function seal(access: Access, { id, version }: OpenDraft) {
	const receipt = await ask<unknown>(access, "POST", `/records/${id}/seal`, undefined, version);
	const sealed = sealIn(receipt, id);
	if (sealed === null) throw new Error(`the receipt about ${id} does not hold it`);
	return sealed;
}

/** Whether the service still has what it acknowledged, byte for byte. */
export async function isStillThere(access: Access, done: Acknowledged): Promise<boolean> {
	const path = { order: "/orders/", opened: "/records/", sealed: "/records/" }[done.act] + done.id;
	const answer = await fetch(`${access.url}/api/v1${path}${done.act === "sealed" ? "/receipt" : ""}`, {
		headers: { authorization: `Bearer ${access.token}` },
	});
	const body = (await answer.json()) as never;
	if (answer.status !== 200) return false;
	if (done.act !== "sealed") return true;
	const kept = sealIn(body, done.id);
	return kept !== null && kept.index === done.index && kept.statement === done.statement;
}

/** Place and statement of the entry that seals a record, if the statement's hash is the one it names. */
function sealIn(receipt: unknown, id: string): { readonly index: number; readonly statement: string } | null {
	const found = entriesIn(receipt).find((entry) => entry.subject === id && entry.kind === "record-sealed");
	if (found === undefined || found.statement === null || !found.fits) return null;
	return { index: found.index, statement: found.statement.toString("base64") };
}

async function ask<Answer>(
	access: Access,
	method: "POST",
	path: string,
	body: object | undefined,
	version?: number,
): Promise<Answer> {
	const answer = await fetch(`${access.url}/api/v1${path}`, {
		method,
		headers: {
			authorization: `Bearer ${access.token}`,
			...(body === undefined ? {} : { "content-type": "application/json" }),
			...(version === undefined ? {} : { "if-match": `"v${version}"` }),
		},
		...(body === undefined ? {} : { body: JSON.stringify(body) }),
	});
	const text = await answer.text();
	// A database that was killed a moment before the service is not a fault of the service: the act was not acknowledged.
	if (answer.status === 503) throw new TypeError("unavailable");
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${text}`);
	return JSON.parse(text) as Answer;
}

/** Invented, as everything here. */
const ORDER = {
	contractKind: "repair",
	repairer: { kind: "business", country: "DE", name: "Trial Bench" },
	owner: { kind: "consumer", country: "FR", name: "Trial Owner" },
	item: { class: "module", maker: "Trial Works", model: "M-1" },
	terms: {
		reportedFault: "does not start",
		agreedWork: "find and mend the fault",
		carrierContract: { toRepairer: "owner", toOwner: "repairer" },
	},
};

const CONSIGNMENT = { direction: "to-repairer", facts: { mode: "road", bookedBy: "consignor" } };

const recordOf = (count: number) => ({
	stage: "arrival",
	content: {
		observedAt: new Date().toISOString(),
		state: "does-not-start",
		identity: { serialNumber: `TW-${count}`, marks: ["a dent at the lower left corner"] },
		readings: [{ check: "mass", values: [{ value: 412, unit: "g", typed: "412" }] }],
		statement: "x".repeat(2000),
	},
});
