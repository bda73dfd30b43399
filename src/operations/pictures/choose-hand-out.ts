/** A taker's acts on an own file: what others get from now on, and copies with parts blacked out. */
import type { Caller } from "../../access/caller.ts";
import type { BlackOutInput, ExhibitFileView, HandOutInput } from "../../contract/pictures.ts";
import { insertHandOut, type PictureUse } from "../../database/pictures.ts";
import { fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { wholeContent } from "../exhibits/stored-content.ts";
import { callerId } from "../may.ts";
import { fileInRecord, readExhibitFile } from "./exhibit-file-views.ts";
import { type FileHandOut, isTaker } from "./hand-out.ts";
import { keepCopy } from "./picture-files.ts";
import { runPictureChild } from "./run-picture-child.ts";

/** The most blacked-out copies of one file. Our choice. */
const MOST_COPIES = 20;

/** What the taker lets others have from now on; what they had before stays noted. @throws forbidden for others; bad-input */
export async function chooseHandOut(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
	{ choice, copySha256 }: HandOutInput,
): Promise<ExhibitFileView> {
	const { use, found } = await ownFile(deps, caller, recordId, sha256);
	const isThere = found.prepared.copies.some((copy) => copy.kind === "blacked-out" && copy.sha256 === copySha256);
	if (choice === "blacked-out" && !isThere) throw invalid([{ path: "/copySha256", code: "unknown-copy" }]);
	await deps.database.transaction((transaction) =>
		insertHandOut(transaction, use.order_id, {
			sha256,
			taker: use.taker,
			choice,
			copy_sha256: copySha256 ?? null,
			chosen_by: callerId(caller),
		}),
	);
	return readExhibitFile(deps, caller, recordId, sha256);
}

/** Makes a copy with black rectangles; its hash is its own. Nobody else gets it until the taker says so. */
export async function blackOut(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
	{ rectangles }: BlackOutInput,
): Promise<{ readonly copySha256: string; readonly file: ExhibitFileView }> {
	const { use, found } = await ownFile(deps, caller, recordId, sha256);
	if (found.prepared.picture?.width == null) throw invalid([{ path: "/rectangles", code: "no-picture" }]);
	if (found.prepared.copies.filter(({ kind }) => kind === "blacked-out").length >= MOST_COPIES) {
		throw invalid([{ path: "/rectangles", code: "too-many-copies", facts: { most: MOST_COPIES } }]);
	}
	const task = { act: "black-out", mediaType: use.media_type, rectangles } as const;
	const { parts } = await runPictureChild(task, await wholeContent(deps, use));
	const [copy, thumbnail] = parts;
	if (copy === undefined || thumbnail === undefined) throw invalid([{ path: "/rectangles", code: "no-picture" }]);
	const copySha256 = await keepCopy(deps, use, { kind: "blacked-out", ofSha256: sha256, bytes: copy });
	await keepCopy(deps, use, { kind: "thumbnail", ofSha256: copySha256, bytes: thumbnail });
	return { copySha256, file: await readExhibitFile(deps, caller, recordId, sha256) };
}

async function ownFile(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
): Promise<{ readonly use: PictureUse; readonly found: FileHandOut }> {
	const file = await fileInRecord(deps, caller, recordId, sha256);
	if (!isTaker(caller, file.use)) throw fault("forbidden");
	if (file.use.stored_sha256 === null) throw fault("erased");
	return file;
}
