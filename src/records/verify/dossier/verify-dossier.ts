/** Verifies a dossier of any size without the server: its bag, the receipt in it, and that all its files say the same. */

import { readForm } from "../checks/form.ts";
import { ALL_CHECK_IDS, type Finding, Unreadable, why } from "../finding.ts";
import { type Given, NOTHING_GIVEN } from "../given.ts";
import { type Verification, verifyReceipt } from "../verify-receipt.ts";
import { checkBagFiles } from "./bag-files.ts";
import type { ByteSource } from "./byte-source.ts";
import { checkCopies } from "./copies.ts";
import { type Bag, readBag } from "./read-bag.ts";

/** @param tell told how much is read, 0 to 100 */
export async function verifyDossier(
	source: ByteSource,
	given: Partial<Given> = {},
	tell: (percent: number) => void = () => {},
): Promise<Verification> {
	try {
		const bag = await readBag(source, tell);
		return await verifyBag(bag, source.size, { ...NOTHING_GIVEN, ...given });
	} catch (error) {
		const details = error instanceof Unreadable ? error.details : { why: why("verify.unexpected") };
		const later = ALL_CHECK_IDS.filter((id) => id !== "bag").map(
			(id): Finding => ({ id, outcome: "not-possible", why: why("verify.bag-first") }),
		);
		const checks: Finding[] = [{ id: "bag", outcome: "failed", ...details }, ...later];
		return { outcome: "not-verified", checks, format: null, about: null, entries: [] };
	}
}

async function verifyBag(bag: Bag, bytes: number, given: Given): Promise<Verification> {
	const receipt = await bag.bytesOf("data/receipt.json");
	const exhibits = [...bag.files.values()].filter(({ path }) => path.startsWith("data/exhibits/"));
	const files = [...given.files, ...exhibits.map(({ path, sha256 }) => ({ name: path, sha256 }))];
	const inside = verifyReceipt(receipt, { ...given, files });
	const { receipt: read } = readForm(receipt);
	const bagFiles = await checkBagFiles(bag, read);
	const copies = await checkCopies(bag, read, given.files);
	const passed: Finding = {
		id: "bag",
		outcome: "passed",
		why: why("verify.bag-passed", { count: bag.files.size, bytes }),
	};
	const outer = [bagFiles, ...copies];
	const outcome = outer.some((finding) => finding.outcome === "failed") ? "not-verified" : inside.outcome;
	return { ...inside, outcome, checks: [passed, ...outer, ...inside.checks] };
}
