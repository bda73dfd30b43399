/** What the log tells anyone. */
import { z } from "zod";

const place = z.coerce.number().int().min(0).max(Number.MAX_SAFE_INTEGER);

/** Either `index` (is this entry in the log?) or `from` (does today's log begin with that one?). */
export const proofQuery = z.union([
	z.strictObject({ index: place, size: place.min(1).optional() }),
	z.strictObject({ from: place.min(1), to: place.min(1).optional() }),
]);

export const proofView = z.strictObject({
	/** Leaves of the tree that the proof leads to. */
	size: z.number().int(),
	/** Its root, where it is the newest tree's; otherwise the reader takes it from the checkpoint that they hold. */
	rootSha256: z.string().nullable(),
	proof: z.array(z.string()),
});
