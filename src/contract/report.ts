/** `/orders/{id}/report.pdf` and `/orders/{id}/dossier.zip`. */
import { z } from "zod";

/** For whom a report or a dossier is. */
export const EDITIONS = ["parties", "expert", "carrier"] as const;
export type Edition = (typeof EDITIONS)[number];

/** `at`: the size of the log's tree, that is how many entries count; the newest where none is given. */
export const reportQuery = z.strictObject({
	edition: z.enum(EDITIONS).optional(),
	at: z
		.string()
		.regex(/^[1-9]\d{0,14}$/)
		.transform(Number)
		.optional(),
});
export type ReportQuery = z.infer<typeof reportQuery>;
