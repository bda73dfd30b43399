/**
 * A code to write on paper beside the board in a photo. It is made from a checkpoint of the log, whose root nobody knows
 * before its last entry is made: a photo that shows the code is not older than that checkpoint.
 *
 * SHA-256 over the UTF-8 lines, each ended by 0x0A
 *
 *   handover-risk/photo-code/1
 *   27                              size of the checkpoint, decimal
 *   8dce53ac…                       its root, lower-case hex
 *   rec_…                           the record that the photo is for
 *   pty_…                           the other party of the order
 *
 * Its first 40 bits are eight characters of an alphabet without I, L, O and U, most significant first. That a code is
 * guessed before its checkpoint has a chance of 2⁻⁴⁰ for each guess.
 */
import { sha256Hex } from "./canonical.ts";

/** 32 characters: digits and letters, without those that are read for digits or for each other. */
const ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const CHARACTERS = 8;
const BITS = 5;

export interface PhotoCodeParts {
	readonly treeSize: number;
	/** Lower-case hex. */
	readonly root: string;
	readonly recordId: string;
	readonly otherPartyId: string;
}

/** Eight characters. */
export function photoCode(parts: PhotoCodeParts): string {
	const first = BigInt(`0x${sha256Hex(Buffer.from(photoCodeText(parts), "utf8")).slice(0, (CHARACTERS * BITS) / 4)}`);
	return Array.from({ length: CHARACTERS }, (_, place) => {
		const shift = BigInt((CHARACTERS - 1 - place) * BITS);
		return ALPHABET[Number((first >> shift) & 31n)];
	}).join("");
}

/** What is hashed. */
export function photoCodeText({ treeSize, root, recordId, otherPartyId }: PhotoCodeParts): string {
	return `handover-risk/photo-code/1\n${treeSize}\n${root}\n${recordId}\n${otherPartyId}\n`;
}

/** A code as someone typed it from a photo: spaces and dashes go, letters that are read for digits become them; null where it is none. */
export function readPhotoCode(typed: string): string | null {
	const plain = typed.toUpperCase().replaceAll(/[\s-]/g, "").replaceAll("O", "0").replaceAll(/[IL]/g, "1");
	return plain.length === CHARACTERS && [...plain].every((character) => ALPHABET.includes(character)) ? plain : null;
}
