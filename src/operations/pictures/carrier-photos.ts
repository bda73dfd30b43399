/** Photos for the carrier: those of its report, under the same numbers, as JPEGs without metadata of at most 2 MB. */
import type { Caller } from "../../access/caller.ts";
import type { CarrierPhotoQuery, CarrierPhotoView } from "../../contract/pictures.ts";
import { type DerivativeRow, derivativesOf, type PictureUse } from "../../database/pictures.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { readReportFacts } from "../report/read-report-facts.ts";
import type { FileHandOut } from "./hand-out.ts";
import { copyBytes, keepCopy } from "./picture-files.ts";
import { runPictureChild } from "./run-picture-child.ts";

/** What forms of carriers commonly take. Standing: common practice. */
const MOST_BYTES = 2_000_000;

export interface CarrierPhotos {
	readonly treeSize: number;
	/** The leg that the carrier is told of; null where the order has none. */
	readonly leg: number | null;
	readonly photos: readonly CarrierPhotoView[];
}

/** The exhibits of the carrier's report at a size of the log. @throws forbidden for links; not-found; not-sealed */
export async function readCarrierPhotos(
	deps: Deps,
	caller: Caller,
	orderId: string,
	of: CarrierPhotoQuery,
): Promise<CarrierPhotos> {
	const { size, leg, exhibits, found } = await exhibitsOf(deps, caller, orderId, of);
	const photos: CarrierPhotoView[] = [];
	for (const { number, sha256, view } of exhibits) {
		const file = found.get(sha256);
		const copy = file === undefined ? null : await smallCopy(deps, file);
		const path = `/api/v1/orders/${orderId}/carrier-photos/${number}.jpg?at=${size}${of.leg === undefined ? "" : `&leg=${of.leg}`}`;
		photos.push({
			number,
			sha256,
			view,
			file: copy === null ? null : { path, sizeBytes: copy.size_bytes, sha256: copy.sha256 },
		});
	}
	return { treeSize: size, leg, photos };
}

/** One of them. @throws not-found where the number is no picture that may be handed out; erased */
export async function fetchCarrierPhoto(
	deps: Deps,
	caller: Caller,
	orderId: string,
	number: string,
	of: CarrierPhotoQuery,
): Promise<{ readonly bytes: Buffer; readonly sha256: string }> {
	const { exhibits, found } = await exhibitsOf(deps, caller, orderId, of);
	const exhibit = exhibits.find((one) => one.number === number);
	const file = exhibit === undefined ? undefined : found.get(exhibit.sha256);
	const copy = file === undefined ? null : await smallCopy(deps, file);
	if (copy === null) throw fault("not-found");
	return { bytes: await copyBytes(deps, copy), sha256: copy.sha256 };
}

async function exhibitsOf(deps: Deps, caller: Caller, orderId: string, { at, leg }: CarrierPhotoQuery) {
	mustBeShop(caller);
	const { checkpoint, legs, exhibits, handOuts } = await readReportFacts(deps, caller, orderId, {
		edition: "carrier",
		at,
		leg,
		language: "en",
	});
	return { size: checkpoint.size, leg: legs[0]?.leg.leg ?? null, exhibits, found: handOuts };
}

/** The copy that others get, or a smaller one of it; also where the original was consented to, which says more than needed. */
async function smallCopy(deps: Deps, { use, prepared, others }: FileHandOut): Promise<DerivativeRow | null> {
	const copy =
		"copy" in others
			? others.copy
			: others.form === "nothing"
				? undefined
				: prepared.copies.find(({ kind }) => kind === "without-metadata");
	if (copy === undefined || copy.stored_sha256 === null) return null;
	if (copy.size_bytes <= MOST_BYTES) return copy;
	return carrierCopyOf(prepared.copies, copy) ?? (await makeSmaller(deps, use, copy));
}

async function makeSmaller(deps: Deps, use: PictureUse, copy: DerivativeRow): Promise<DerivativeRow | null> {
	const task = { act: "fit", mediaType: "image/jpeg", mostBytes: MOST_BYTES } as const;
	const [smaller] = (await runPictureChild(task, await copyBytes(deps, copy))).parts;
	if (smaller === undefined) return null;
	await keepCopy(deps, use, { kind: "carrier", ofSha256: copy.sha256, bytes: smaller });
	return carrierCopyOf(await derivativesOf(deps.database, use.party_id, [use.sha256]), copy);
}

function carrierCopyOf(copies: readonly DerivativeRow[], { sha256 }: DerivativeRow): DerivativeRow | null {
	return copies.find(({ kind, of_sha256 }) => kind === "carrier" && of_sha256 === sha256) ?? null;
}
