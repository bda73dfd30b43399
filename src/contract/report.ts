/** `/orders/{id}/report.pdf` and `/orders/{id}/dossier.zip`. */
import { z } from "zod";
import { LANGUAGES } from "../texts/language.ts";

/** For whom a report or a dossier is. */
export const EDITIONS = ["parties", "expert", "carrier"] as const;
export type Edition = (typeof EDITIONS)[number];

/** The sealed bytes hold every reading, so a dossier is for those who may see them; the carrier gets the report alone. */
export const DOSSIER_EDITIONS = ["parties", "expert"] as const;
export type DossierEdition = (typeof DOSSIER_EDITIONS)[number];

/** `at`: the size of the log's tree, that is how many entries count; the newest where none is given. `language`: English where none is given. */
export const reportQuery = z.strictObject({
	edition: z.enum(EDITIONS).optional(),
	at: z.coerce.number().int().min(1).max(Number.MAX_SAFE_INTEGER).optional(),
	language: z.enum(LANGUAGES).optional(),
});
export const dossierQuery = reportQuery.extend({ edition: z.enum(DOSSIER_EDITIONS).optional() });
