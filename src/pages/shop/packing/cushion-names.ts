/** Names of the fields that describe cushions: one for all faces, and one for each face that has another. */
import { FACES } from "../../../contract/packaging.ts";

/** Instead of a foam's id: a set of the user's own, or a foam of which nothing is known. */
export const OWN_FOAM = "own";
export const UNKNOWN_FOAM = "unknown";
/** A single face without any cushion. */
export const NO_CUSHION = "no-cushion";
/** Before the name of a sheet in the stock. */
export const FROM_STOCK = "stock:";

/** Around the item, or in the gap between the inner box and the outer. */
export interface CushionPlace {
	/** Prefix of the fields for all faces. */
	readonly all: string;
	readonly face: (face: (typeof FACES)[number]) => string;
	/** The faces' member in a request. */
	readonly pointer: string;
}

export const AROUND: CushionPlace = { all: "cushion", face: (face) => `face.${face}`, pointer: "/pack/faces" };
export const IN_GAP: CushionPlace = {
	all: "gap",
	face: (face) => `gapFace.${face}`,
	pointer: "/pack/innerBox/faces",
};

/** Prefixes of all cushions of a place. */
export function prefixesOf(place: CushionPlace): string[] {
	return [place.all, ...FACES.map(place.face)];
}
