/**
 * `copies`: what a dossier holds in the place of originals. A copy without metadata or with parts blacked out has a hash of
 * its own, which nobody sealed. What can be checked is that the bag holds the copies that its list names, and that a
 * statement names each original; whether a copy shows the same, only the original tells.
 */
import { namedExhibits } from "../checks/exhibits.ts";
import { type Finding, Unreadable, why } from "../finding.ts";
import type { HashedFile } from "../given.ts";
import type { ReadReceipt } from "../read-receipt.ts";
import { refuse } from "../shape.ts";
import type { Bag } from "./read-bag.ts";

const LIST = "data/copies.txt";
const FOLDER = "data/copies/";
const LINE =
	/^(E[1-9][0-9]*) ([0-9a-f]{64}) (without-metadata|blacked-out|nothing) ([0-9a-f]{64}|-) (shop|(?:pty|rec)_[0-9a-z]{20})$/;

interface Listed {
	readonly number: string;
	readonly original: string;
	readonly form: "without-metadata" | "blacked-out" | "nothing";
	/** Null where nothing stands for the original. */
	readonly copy: string | null;
	readonly holder: "shop" | "party";
}

/** A dossier of an earlier time has no list, and holds originals alone. */
export async function checkCopies(
	bag: Bag,
	receipt: ReadReceipt | null,
	given: readonly HashedFile[],
): Promise<readonly Finding[]> {
	if (receipt === null) return [{ id: "copies", outcome: "not-possible", why: why("verify.form-first") }];
	try {
		const listed = bag.files.has(LIST) ? readList(new TextDecoder().decode(await bag.bytesOf(LIST))) : [];
		compare(bag, listed, namedExhibits(receipt.entries));
		return listed.length === 0
			? [{ id: "copies", outcome: "passed", why: why("verify.copies-none") }]
			: told(listed, new Set(given.map(({ sha256 }) => sha256)));
	} catch (error) {
		if (!(error instanceof Unreadable)) throw error;
		return [{ id: "copies", outcome: "failed", ...error.details }];
	}
}

/** @throws Unreadable */
function readList(text: string): Listed[] {
	const lines = text === "" ? [] : text.replace(/\n$/, "").split("\n");
	return lines.map((line, index) => {
		const [, number = "", original = "", form = "", copy = "", holder = ""] = LINE.exec(line) ?? [];
		if (number === "" || (form === "nothing") !== (copy === "-")) {
			refuse(LIST, why("verify.bag-line", { line: index + 1 }));
		}
		return {
			number,
			original,
			form: form as Listed["form"],
			copy: copy === "-" ? null : copy,
			holder: holder === "shop" ? "shop" : "party",
		};
	});
}

/** @throws Unreadable */
function compare(bag: Bag, listed: readonly Listed[], named: ReadonlySet<string>): void {
	const expected = new Set<string>();
	for (const { number, original, copy } of listed) {
		if (!named.has(original)) refuse(LIST, why("verify.copies-unnamed", { number }), undefined, original);
		if (copy === null) continue;
		const path = `${FOLDER}${number}.jpg`;
		const found = bag.files.get(path)?.sha256;
		if (found === undefined || expected.has(path)) refuse(path, why("verify.bag-missing"));
		if (found !== copy) refuse(path, why("verify.bag-hash"), copy, found);
		expected.add(path);
	}
	for (const path of bag.files.keys()) {
		if (path.startsWith(FOLDER) && !expected.has(path)) refuse(path, why("verify.copies-unlisted"));
	}
}

/** One finding for all of a kind. An original that the reader brought along is the sealed one: the two can be looked at. */
function told(listed: readonly Listed[], given: ReadonlySet<string>): readonly Finding[] {
	const kinds = new Set(listed.map((one) => `${one.form}-${one.holder}`));
	return [...kinds].map((kind): Finding => {
		const own = listed.filter((one) => `${one.form}-${one.holder}` === kind);
		const list = own.map(({ number }) => number).join(", ");
		const brought = own.filter(({ original }) => given.has(original)).length;
		const reason = why(`verify.copies-${kind}`, { list, brought, count: own.length });
		const originals = own.map(({ number, original }) => `${number} ${original}`).join("\n");
		return { id: "copies", outcome: "not-possible", where: LIST, found: originals, why: reason };
	});
}
