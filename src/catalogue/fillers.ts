/**
 * What fills a parcel and is no primary cushion: no curve of it could be read, so only the floor that holds for anything
 * of its thickness can be said. Sources: pages of parcel shops and carriers, which call loose fill filler; else our choice.
 */
import type { Filler } from "../calculations/cushioning/foam.ts";
import { cite } from "../calculations/sources.ts";

const ADVICE = cite("packing-advice", "loose fill is filler, not primary cushion", "published");
const NO_CURVE = cite("our-choice", "no entry without a curve that can be named", "our-choice");

export const FILLERS: readonly Filler[] = [
	{ id: "bubble-film", whyKey: "cushion.filler-bubble", sources: [NO_CURVE] },
	{ id: "air-pillow", whyKey: "cushion.filler-air-pillow", sources: [NO_CURVE] },
	{ id: "crumpled-paper", whyKey: "cushion.filler-paper", sources: [NO_CURVE] },
	{ id: "loose-fill", whyKey: "cushion.filler-loose", sources: [ADVICE] },
	{ id: "moulded-insert", whyKey: "cushion.filler-insert", sources: [NO_CURVE] },
];

/** A filler by id; null for none. */
export function fillerById(id: string): Filler | null {
	return FILLERS.find((filler) => filler.id === id) ?? null;
}
