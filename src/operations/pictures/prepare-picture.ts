/**
 * Reads a picture and makes the copy that others get, once: when it is brought, or when it is first asked for. A file that
 * cannot be read as a picture is kept as it is, with the reason, and is handed to others only by its taker's consent.
 */
import {
	type DerivativeRow,
	derivativesOf,
	insertPicture,
	type PictureRow,
	type PictureUse,
	picturesOf,
} from "../../database/pictures.ts";
import type { Deps } from "../deps.ts";
import { wholeContent } from "../exhibits/stored-content.ts";
import { NOTHING_CLAIMED } from "./claimed-facts.ts";
import { keepCopy } from "./picture-files.ts";
import { runPictureChild } from "./run-picture-child.ts";

/** The largest file that is read as a picture. Our choice: that of an exhibit, with some to spare. */
const MOST_BYTES = 64 * 1024 * 1024;

/** What of a use decides how it is read. */
export type PictureFile = Pick<
	PictureUse,
	"sha256" | "party_id" | "stored_sha256" | "order_id" | "media_type" | "size_bytes"
>;

export interface Prepared {
	/** Null of a file that is no picture, and of one that was erased before it was read. */
	readonly picture: PictureRow | null;
	readonly copies: readonly DerivativeRow[];
}

export const NOT_PREPARED: Prepared = { picture: null, copies: [] };

const underWay = new Map<string, Promise<void>>();

function isPicture({ media_type }: Pick<PictureUse, "media_type">): boolean {
	return media_type.startsWith("image/");
}

/** What is known of these files of one party, by SHA-256; pictures that nobody read yet are read. @throws too-many; erased */
export async function preparePictures(
	deps: Deps,
	partyId: string,
	files: readonly PictureFile[],
): Promise<ReadonlyMap<string, Prepared>> {
	const pictures = files.filter(isPicture);
	const sha256s = pictures.map(({ sha256 }) => sha256);
	const known = new Set((await picturesOf(deps.database, partyId, sha256s)).map(({ sha256 }) => sha256));
	const unread = pictures.filter(({ sha256, stored_sha256 }) => !known.has(sha256) && stored_sha256 !== null);
	await Promise.all(unread.map((file) => readAlone(deps, file)));
	const [rows, copies] = await Promise.all([
		picturesOf(deps.database, partyId, sha256s),
		derivativesOf(deps.database, partyId, sha256s),
	]);
	return new Map(
		sha256s.map((sha256) => [
			sha256,
			{
				picture: rows.find((row) => row.sha256 === sha256) ?? null,
				copies: copies.filter(({ original_sha256 }) => original_sha256 === sha256),
			},
		]),
	);
}

/** Two readers at once ask one child. */
function readAlone(deps: Deps, file: PictureFile): Promise<void> {
	const key = `${file.party_id} ${file.sha256}`;
	const work = underWay.get(key) ?? readOnce(deps, file).finally(() => underWay.delete(key));
	underWay.set(key, work);
	return work;
}

/** As a file comes in. What goes wrong here is tried again when the picture is first asked for, and loses no file. */
export async function prepareWhenBrought(deps: Deps, file: PictureFile): Promise<void> {
	try {
		await preparePictures(deps, file.party_id, [file]);
	} catch (error) {
		deps.log.warn({ error: (error as Error).message }, "a picture was not read yet");
	}
}

/** The row comes last: where it stands, its copies are whole. */
async function readOnce(deps: Deps, file: PictureFile): Promise<void> {
	const { size, refusal, claimed, parts } =
		file.size_bytes > MOST_BYTES
			? ({ size: null, refusal: "too-much-work", claimed: null, parts: [] } as const)
			: await runPictureChild({ act: "read", mediaType: file.media_type }, await wholeContent(deps, file));
	const [copy, thumbnail] = parts;
	if (copy !== undefined && thumbnail !== undefined) {
		const sha256 = await keepCopy(deps, file, { kind: "without-metadata", ofSha256: file.sha256, bytes: copy });
		await keepCopy(deps, file, { kind: "thumbnail", ofSha256: sha256, bytes: thumbnail });
	}
	if (refusal !== null) deps.log.warn({ refusal, sizeBytes: file.size_bytes }, "a picture could not be read");
	await deps.database.transaction((transaction) =>
		insertPicture(transaction, file, {
			width: size?.width ?? null,
			height: size?.height ?? null,
			refusal,
			claimed: claimed ?? NOTHING_CLAIMED,
		}),
	);
}
