/** `/orders/{id}/report.pdf` and `/orders/{id}/dossier.zip`. */
import { z } from "zod";
import { LANGUAGES } from "../texts/language.ts";

/** For whom a report or a dossier is. */
export const EDITIONS = ["parties", "expert", "carrier"] as const;
export type Edition = (typeof EDITIONS)[number];

/** The sealed bytes hold every reading, so a dossier is for those who may see them; the carrier gets the report alone. */
export const DOSSIER_EDITIONS = ["parties", "expert"] as const;
export type DossierEdition = (typeof DOSSIER_EDITIONS)[number];

/**
 * `at`: the size of the log's tree, that is how many entries count; the newest where none is given. `language`: English
 * where none is given.
 */
const which = {
	at: z.coerce.number().int().min(1).max(Number.MAX_SAFE_INTEGER).optional(),
	language: z.enum(LANGUAGES).optional(),
};
/** A leg's number on its order. A carrier is told of one leg; the last that arrived where none is given. */
const leg = z.coerce.number().int().min(1).max(1000).optional();

export const reportQuery = z
	.strictObject({ edition: z.enum(EDITIONS).optional(), ...which, leg })
	.refine(({ edition, leg: of }) => of === undefined || edition === "carrier", {
		path: ["leg"],
		error: "only the carrier's edition is of one leg",
	});
export const dossierQuery = z.strictObject({ edition: z.enum(DOSSIER_EDITIONS).optional(), ...which });
/** Most characters of one part of the text; our choice of what forms may take. */
export const TEXT_LIMITS = [500, 1000, 2000, 4000] as const;
export const carrierTextQuery = z.strictObject({ ...which, leg });
export const carrierTextPageQuery = z.strictObject({
	...which,
	leg,
	most: z.enum(TEXT_LIMITS.map(String)).or(z.literal("")).optional(),
});
