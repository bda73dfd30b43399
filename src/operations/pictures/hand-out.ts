/**
 * Who gets what of a file. Its taker, who brought it, has the original. Others get a copy without metadata; the copy that
 * the taker blacked out, where the taker says so; the original only by the taker's consent. What cannot be copied without
 * its metadata (films, documents, pictures that cannot be read) goes to others by consent alone. A text has none.
 */
import type { Caller } from "../../access/caller.ts";
import {
	type DerivativeRow,
	type HandOutRow,
	handOutsOf,
	type PictureUse,
	pictureUsesOfOrder,
} from "../../database/pictures.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { isPicture, NOT_PREPARED, type Prepared, preparePictures } from "./prepare-picture.ts";

export type HandedOut =
	| { readonly form: "original" }
	| { readonly form: "without-metadata" | "blacked-out"; readonly copy: DerivativeRow }
	| { readonly form: "nothing" };

/** A file of an order with what others get of it. */
export interface FileHandOut {
	readonly use: PictureUse;
	/** All who brought the same file to the order: `shop`, or a party's id. */
	readonly takers: readonly string[];
	readonly prepared: Prepared;
	readonly others: HandedOut;
	/** Choices of all its takers, oldest first. */
	readonly choices: readonly HandOutRow[];
}

/** The most careful first: where two takers brought the same file and chose otherwise, it counts. */
const CAREFUL = ["nothing", "blacked-out", "without-metadata", "original"] as const;

/** Whether the caller brought the file: the shop what any account brought, a party what came through its links. */
export function isTaker(caller: Caller, { taker, record_id }: Pick<PictureUse, "taker" | "record_id">): boolean {
	if (caller.kind === "account") return taker === "shop";
	if (caller.kind !== "link" || taker === "shop") return false;
	// What a link without a party brought is its record's; two links of one record may be two parties'.
	return taker === record_id ? caller.recordId === record_id : caller.partyId === taker;
}

/** What others get of each of these files in an order, by SHA-256; one that was brought to no record of it is left out. */
export async function handOutsInOrder(
	deps: Deps,
	orderId: string,
	sha256s: readonly string[],
): Promise<ReadonlyMap<string, FileHandOut>> {
	const [uses, choices] = await Promise.all([
		pictureUsesOfOrder(deps.database, orderId, sha256s),
		handOutsOf(deps.database, orderId, sha256s),
	]);
	const [first] = uses;
	if (first === undefined) return new Map();
	const files = uses.filter(({ sha256 }, at) => uses.findIndex((use) => use.sha256 === sha256) === at);
	const preparedOf = await preparePictures(deps, first.party_id, files);
	return new Map(
		files.map((use) => {
			const { sha256 } = use;
			const own = uses.filter((one) => one.sha256 === sha256);
			const chosen = choices.filter((choice) => choice.sha256 === sha256);
			const prepared = preparedOf.get(sha256) ?? NOT_PREPARED;
			const takers = [...new Set(own.map(({ taker }) => taker))];
			const forms = takers.map((taker) => handedOut(use, prepared, newestOf(chosen, taker)));
			return [sha256, { use, takers, prepared, others: mostCareful(forms), choices: chosen }] as const;
		}),
	);
}

/** Two copies that were blacked out may each show what the other hides, and no copy hides both: then neither is handed out. */
function mostCareful(forms: readonly HandedOut[]): HandedOut {
	const blackedOut = forms.flatMap((one) => (one.form === "blacked-out" ? [one.copy.sha256] : []));
	if (new Set(blackedOut).size > 1) return { form: "nothing" };
	const found = CAREFUL.map((form) => forms.find((one) => one.form === form)).find((one) => one !== undefined);
	return found ?? { form: "nothing" };
}

/** The same, for what must not change once it is given out. @throws too-many where a picture was not read yet */
export async function settledHandOuts(
	deps: Deps,
	orderId: string,
	sha256s: readonly string[],
): Promise<ReadonlyMap<string, FileHandOut>> {
	const found = await handOutsInOrder(deps, orderId, sha256s);
	const isUnread = ({ use, prepared }: FileHandOut) =>
		isPicture(use) && use.stored_sha256 !== null && prepared.picture === null;
	if ([...found.values()].some(isUnread)) throw fault("too-many", { retryAfterS: 30 });
	return found;
}

function newestOf(choices: readonly HandOutRow[], taker: string): HandOutRow | undefined {
	return choices.findLast((choice) => choice.taker === taker);
}

function handedOut(use: PictureUse, { copies }: Prepared, chosen: HandOutRow | undefined): HandedOut {
	if (use.media_type === "text/plain" || chosen?.choice === "original") return { form: "original" };
	const form = chosen?.choice ?? "without-metadata";
	const copy = copies.find(
		({ kind, sha256 }) => kind === form && (form !== "blacked-out" || sha256 === chosen?.copy_sha256),
	);
	return copy === undefined ? { form: "nothing" } : { form, copy };
}

/** The thumbnail of a copy. */
export function thumbnailOf({ copies }: Prepared, copySha256: string): DerivativeRow | null {
	return copies.find(({ kind, of_sha256 }) => kind === "thumbnail" && of_sha256 === copySha256) ?? null;
}
