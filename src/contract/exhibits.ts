/** Files kept as evidence. */
import { z } from "zod";
import { sha256 } from "./common.ts";

export const exhibitView = z.strictObject({
	sha256,
	sizeBytes: z.number().int(),
	mediaType: z.string(),
	fileName: z.string(),
});
export type ExhibitView = z.infer<typeof exhibitView>;
export const exhibitList = z.strictObject({ exhibits: z.array(exhibitView) });
