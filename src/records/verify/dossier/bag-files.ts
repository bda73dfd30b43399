/** `bag-files`: the files beside the receipt are those that it holds, none is missing and none is of its own. */
import { expectedKeys } from "../expected-keys.ts";
import { type Finding, Unreadable, why } from "../finding.ts";
import { leafHash } from "../hashes.ts";
import type { ReadReceipt } from "../read-receipt.ts";
import { refuse } from "../shape.ts";
import type { Bag } from "./read-bag.ts";
import { receiptFiles } from "./receipt-files.ts";

/** Computed from what is sealed; `exhibits` and `copies` compare photos and files by themselves. */
const COMPUTED = ["data/comparison.json", "data/receipt.json", "data/report.pdf", "data/verify-offline.html"];
const EXHIBIT = /^data\/exhibits\/E[1-9][0-9]*\.[a-z0-9]+$/;
const COPY = /^data\/copies(\/E[1-9][0-9]*\.jpg|\.txt)$/;
const PEM = /^-----BEGIN PUBLIC KEY-----\n[A-Za-z0-9+/=]+\n-----END PUBLIC KEY-----\n$/;

export async function checkBagFiles(bag: Bag, receipt: ReadReceipt | null): Promise<Finding> {
	if (receipt === null || receipt.log === null) {
		return { id: "bag-files", outcome: "not-possible", why: why("verify.form-first") };
	}
	try {
		const count = await compare(bag, receipt.entries, receipt.log);
		return { id: "bag-files", outcome: "passed", why: why("verify.bag-files-passed", { count }) };
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		return { id: "bag-files", outcome: "failed", ...error.details };
	}
}

/** How many files were compared. @throws Unreadable */
async function compare(
	bag: Bag,
	entries: ReadReceipt["entries"],
	log: NonNullable<ReadReceipt["log"]>,
): Promise<number> {
	const expected = receiptFiles(entries, log);
	for (const [path, sha256] of expected) {
		const found = bag.files.get(path)?.sha256;
		if (found === undefined) refuse(path, why("verify.bag-missing"));
		if (found !== sha256) refuse(path, why("verify.bag-files-other"), sha256, found);
	}
	for (const { index, leaf } of entries) {
		const path = `data/entries/${index}.json`;
		const found = leafHash(await bag.bytesOf(path));
		if (found !== leaf) refuse(path, why("verify.bag-files-other"), leaf, found);
		expected.set(path, "");
	}
	const pem = new TextDecoder().decode(await bag.bytesOf("data/log/key.pem"));
	const signer = log.keys.find(({ keyId }) => keyId === log.checkpoint.signatures.at(-1)?.keyId);
	if (!PEM.test(pem) || expectedKeys([pem]).keys[0] !== signer?.publicKey) {
		refuse("data/log/key.pem", why("verify.bag-files-other"), signer?.publicKey);
	}
	expected.set("data/log/key.pem", "");
	for (const path of bag.files.keys()) {
		const isOther = COMPUTED.includes(path) || EXHIBIT.test(path) || COPY.test(path);
		const isKnown = !path.startsWith("data/") || expected.has(path) || isOther;
		if (!isKnown) refuse(path, why("verify.bag-files-unknown"));
	}
	return expected.size;
}
