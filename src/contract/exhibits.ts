/** Files kept as evidence. */
import { z } from "zod";
import { id, sha256, text } from "./common.ts";

export const exhibitView = z.strictObject({
	sha256,
	sizeBytes: z.number().int(),
	mediaType: z.string(),
	fileName: z.string(),
});
export type ExhibitView = z.infer<typeof exhibitView>;
export const exhibitList = z.strictObject({ exhibits: z.array(exhibitView) });

/** A file that is brought piece by piece. */
export const uploadView = z.strictObject({
	id: id("upl"),
	fileName: z.string(),
	sizeBytes: z.number().int(),
	/** On disk and acknowledged. */
	offsetBytes: z.number().int(),
	expiresAt: z.string(),
	/** Null until all of it is here. */
	exhibit: exhibitView.nullable(),
	/** Of a recorder's file that was brought to a leg. */
	recordingId: id("trc").nullable(),
});
export type UploadView = z.infer<typeof uploadView>;

/** What an upload's metadata say: its name, and the record or the leg that it is for. */
export const uploadMetadata = z
	.strictObject({ filename: text(200), record: id("rec").optional(), consignment: id("con").optional() })
	.refine(({ record, consignment }) => (record === undefined) !== (consignment === undefined), {
		path: ["record"],
		error: "name either a record or a consignment",
	});
export type UploadMetadata = z.infer<typeof uploadMetadata>;
