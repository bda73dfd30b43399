/** Verifies what a reader brings: a dossier, which is an archive, or a receipt. */
import type { Given } from "../given.ts";
import { type Verification, verifyReceipt } from "../verify-receipt.ts";
import type { ByteSource } from "./byte-source.ts";
import { verifyDossier } from "./verify-dossier.ts";

/** How a file of a ZIP archive begins: `PK`, 03, 04. */
const ARCHIVE = [0x50, 0x4b, 0x03, 0x04];

/** @param readWhole the bytes of a receipt; a source too large to be one may refuse */
export async function verifyFile(
	source: ByteSource,
	given: Partial<Given>,
	readWhole: () => Promise<Uint8Array>,
	tell?: (percent: number) => void,
): Promise<Verification> {
	const first = await source.read(0, Math.min(ARCHIVE.length, source.size));
	const isArchive = first.length === ARCHIVE.length && ARCHIVE.every((byte, index) => first[index] === byte);
	return isArchive ? verifyDossier(source, given, tell) : verifyReceipt(await readWhole(), given);
}
