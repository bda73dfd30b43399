/** Files of a record as a caller may see them, and their bytes: the taker's own, or what others get. */
import type { Caller } from "../../access/caller.ts";
import type { ExhibitFileView } from "../../contract/pictures.ts";
import { type DerivativeRow, type PictureUse, pictureUsesOfRecord } from "../../database/pictures.ts";
import { recordById } from "../../database/records.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { contentBytes } from "../exhibits/stored-content.ts";
import { mustReadOrder, mustWriteRecord } from "../may.ts";
import { type FileHandOut, handOutsInOrder, isTaker, settledHandOuts, thumbnailOf } from "./hand-out.ts";
import { copyBytes } from "./picture-files.ts";

interface FileFacts {
	readonly sha256: string;
	readonly mediaType: string;
	readonly fileName: string;
}
export interface FileBytes extends FileFacts {
	readonly bytes: Buffer;
}
/** A file of any size. */
export interface FileContent extends FileFacts {
	readonly sizeBytes: number;
	/** Its bytes from `start` up to `end`, which is left out. */
	readonly bytes: (start: number, end: number) => AsyncIterable<Uint8Array>;
}

/** A use of a file with what others get of it, for a caller who may see the record. @throws not-found */
export async function fileInRecord(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
): Promise<{ readonly use: PictureUse; readonly found: FileHandOut }> {
	const use = (await usesFor(deps, caller, recordId)).find((one) => one.sha256 === sha256);
	if (use === undefined) throw fault("not-found");
	const found = (await handOutsInOrder(deps, use.order_id, [sha256])).get(sha256);
	if (found === undefined) throw fault("not-found");
	return { use, found };
}

/** The files brought to a record, in the order in which they came. */
export async function readExhibitFiles(deps: Deps, caller: Caller, recordId: string): Promise<ExhibitFileView[]> {
	const uses = await usesFor(deps, caller, recordId);
	const [first] = uses;
	if (first === undefined) return [];
	const sha256s = uses.map(({ sha256 }) => sha256);
	const found = await handOutsInOrder(deps, first.order_id, sha256s);
	return uses.flatMap((use) => {
		const file = found.get(use.sha256);
		return file === undefined ? [] : [viewOf(caller, use, file)];
	});
}

export async function readExhibitFile(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
): Promise<ExhibitFileView> {
	const { use, found } = await fileInRecord(deps, caller, recordId, sha256);
	return viewOf(caller, use, found);
}

/** The thumbnail of what the caller may see. @throws not-found where there is no picture to see; erased */
export async function fetchThumbnail(deps: Deps, caller: Caller, recordId: string, sha256: string): Promise<FileBytes> {
	const { use, found } = await fileInRecord(deps, caller, recordId, sha256);
	const copy = shownCopy(caller, use, found);
	const thumbnail = copy === null ? null : thumbnailOf(found.prepared, copy.sha256);
	if (thumbnail === null) throw fault("not-found");
	return fileOf(deps, use, thumbnail);
}

/** A copy by its own SHA-256: any for the taker, for others the one that they get. @throws not-found, erased */
export async function fetchCopy(
	deps: Deps,
	caller: Caller,
	recordId: string,
	sha256: string,
	copySha256: string,
): Promise<FileBytes> {
	const { use, found } = await fileInRecord(deps, caller, recordId, sha256);
	const copy = copiesFor(caller, use, found).find((one) => one.sha256 === copySha256);
	if (copy === undefined) throw fault("not-found");
	return fileOf(deps, use, copy);
}

/**
 * What a caller who may see these uses of one file gets of it: the original of what the caller brought, or what others get.
 * @throws not-handed-out; erased
 */
export async function openAsCaller(deps: Deps, caller: Caller, uses: readonly PictureUse[]): Promise<FileContent> {
	const own = uses.find((use) => isTaker(caller, use) && use.stored_sha256 !== null);
	if (own !== undefined) return originalOf(deps, own);
	let isErased = false;
	for (const use of uses) {
		const others = (await settledHandOuts(deps, use.order_id, [use.sha256])).get(use.sha256)?.others;
		if (others === undefined) continue;
		const isGone = ("copy" in others ? others.copy : use).stored_sha256 === null;
		isErased ||= isGone;
		if (isGone || others.form === "nothing") continue;
		return others.form === "original" ? originalOf(deps, use) : contentOf(await fileOf(deps, use, others.copy));
	}
	throw fault(isErased ? "erased" : "not-handed-out");
}

/** @throws erased */
function originalOf(deps: Deps, use: PictureUse): FileContent {
	if (use.stored_sha256 === null) throw fault("erased");
	return {
		sha256: use.sha256,
		mediaType: use.media_type,
		fileName: use.file_name,
		sizeBytes: use.size_bytes,
		bytes: (start, end) => contentBytes(deps, use, start, end),
	};
}

function contentOf({ bytes, ...facts }: FileBytes): FileContent {
	return {
		...facts,
		sizeBytes: bytes.length,
		async *bytes(start, end) {
			yield bytes.subarray(start, end);
		},
	};
}

/** @throws not-found; forbidden */
async function usesFor(deps: Deps, caller: Caller, recordId: string): Promise<PictureUse[]> {
	const record = await recordById(deps.database, recordId);
	if (record === null) throw fault("not-found");
	// What was brought to a discarded draft is as little for others as the draft itself.
	if (record.state === "sealed") mustReadOrder(caller, record.order_id);
	else mustWriteRecord(caller, record);
	return pictureUsesOfRecord(deps.database, recordId);
}

/** What a caller is shown as the picture: the taker the copy of the whole, unless another was chosen for others. */
export function shownCopy(caller: Caller, use: PictureUse, { prepared, others }: FileHandOut): DerivativeRow | null {
	if ("copy" in others) return others.copy;
	if (others.form === "nothing" && !isTaker(caller, use)) return null;
	return prepared.copies.find(({ kind }) => kind === "without-metadata") ?? null;
}

function copiesFor(caller: Caller, use: PictureUse, found: FileHandOut): readonly DerivativeRow[] {
	const shown = shownCopy(caller, use, found);
	if (!isTaker(caller, use)) return shown === null ? [] : [shown];
	return found.prepared.copies.filter(({ kind }) => kind === "without-metadata" || kind === "blacked-out");
}

async function fileOf(deps: Deps, use: PictureUse, copy: DerivativeRow): Promise<FileBytes> {
	const fileName = `${use.file_name.replace(/\.[A-Za-z0-9]{1,5}$/, "")}-${copy.kind}.jpg`;
	return { bytes: await copyBytes(deps, copy), sha256: copy.sha256, mediaType: "image/jpeg", fileName };
}

function viewOf(caller: Caller, use: PictureUse, found: FileHandOut): ExhibitFileView {
	const { picture } = found.prepared;
	const isOwn = isTaker(caller, use);
	const { width = null, height = null } = picture ?? {};
	return {
		sha256: use.sha256,
		recordId: use.record_id,
		mediaType: use.media_type,
		fileName: use.file_name,
		sizeBytes: use.size_bytes,
		receivedAt: use.brought_at.toISOString(),
		isTaker: isOwn,
		picture: width === null || height === null ? null : { width, height },
		refusal: picture?.refusal ?? null,
		claimed: picture === null ? null : claimedFor(picture.claimed, isOwn),
		others: found.others.form,
		copies: copiesFor(caller, use, found).map(({ kind, sha256, size_bytes, made_at }) => ({
			kind: kind as "without-metadata" | "blacked-out",
			sha256,
			sizeBytes: size_bytes,
			madeAt: made_at.toISOString(),
		})),
		choices: !isOwn
			? []
			: found.choices
					.filter(({ taker }) => taker === use.taker)
					.map(({ choice, copy_sha256, chosen_by, chosen_at }) => ({
						choice,
						copySha256: copy_sha256,
						by: chosen_by,
						at: chosen_at.toISOString(),
					})),
	};
}

function claimedFor(
	{
		time,
		offset,
		device,
		hasPlace,
	}: { time: string | null; offset: string | null; device: string | null; hasPlace: boolean },
	isTaker: boolean,
): NonNullable<ExhibitFileView["claimed"]> {
	return { time, offset, device, ...(isTaker ? { hasPlace } : {}) };
}
