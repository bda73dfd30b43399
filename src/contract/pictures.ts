/** Pictures among the exhibits: what they claim, their copies, what others get, codes to write beside a board. */
import { z } from "zod";
import { id, sha256 } from "./common.ts";

export const HAND_OUT_CHOICES = ["without-metadata", "blacked-out", "original"] as const;

/** What others are to get from now on. */
export const handOutInput = z
	.strictObject({ choice: z.enum(HAND_OUT_CHOICES), copySha256: sha256.optional() })
	.refine(({ choice, copySha256 }) => (choice === "blacked-out") === (copySha256 !== undefined), {
		path: ["copySha256"],
		error: "copySha256 comes with blacked-out, and with nothing else",
	});
export type HandOutInput = z.infer<typeof handOutInput>;

const percent = z.number().min(0).max(100);
export const rectangle = z
	.strictObject({ x: percent, y: percent, w: percent.positive(), h: percent.positive() })
	.refine(({ x, w }) => x < 100 && x + w <= 100, { path: ["w"], error: "x and w together at most 100" })
	.refine(({ y, h }) => y < 100 && y + h <= 100, { path: ["h"], error: "y and h together at most 100" });

/** Parts of a picture to cover, in percent of its width and height as shown. */
export const blackOutInput = z.strictObject({ rectangles: z.array(rectangle).min(1).max(20) });
export type BlackOutInput = z.infer<typeof blackOutInput>;

export const copyView = z.strictObject({
	kind: z.enum(["without-metadata", "blacked-out"]),
	sha256,
	sizeBytes: z.number().int(),
	madeAt: z.string(),
});
export type CopyView = z.infer<typeof copyView>;

export const exhibitFileView = z.strictObject({
	/** Of the original, which the statement names. */
	sha256,
	recordId: id("rec"),
	mediaType: z.string(),
	fileName: z.string(),
	sizeBytes: z.number().int(),
	/** When the service received it. */
	receivedAt: z.string(),
	/** Whether the caller brought it. */
	isTaker: z.boolean(),
	/** Null where it is no picture or cannot be shown; `refusal` says why. */
	picture: z.strictObject({ width: z.number().int(), height: z.number().int() }).nullable(),
	refusal: z.enum(["damaged", "too-many-pixels", "not-shown", "too-much-work"]).nullable(),
	/** As the file says; anyone can write it. `hasPlace` for the taker alone. */
	claimed: z
		.strictObject({
			time: z.string().nullable(),
			offset: z.string().nullable(),
			device: z.string().nullable(),
			hasPlace: z.boolean().optional(),
		})
		.nullable(),
	/** What others get of it. */
	others: z.enum(["original", "without-metadata", "blacked-out", "nothing"]),
	/** The taker: all copies. Others: the one that they get. */
	copies: z.array(copyView),
	/** The taker's own choices, oldest first; none for others. */
	choices: z.array(
		z.strictObject({
			choice: z.enum(HAND_OUT_CHOICES),
			copySha256: sha256.nullable(),
			by: z.string(),
			at: z.string(),
		}),
	),
});
export type ExhibitFileView = z.infer<typeof exhibitFileView>;
export const exhibitFileList = z.strictObject({ files: z.array(exhibitFileView) });

export const carrierPhotoView = z.strictObject({
	/** As in the carrier's report. */
	number: z.string(),
	sha256,
	view: z.string(),
	/** Null where there is no picture that may be handed out. */
	file: z.strictObject({ path: z.string(), sizeBytes: z.number().int(), sha256 }).nullable(),
});
export type CarrierPhotoView = z.infer<typeof carrierPhotoView>;
export const carrierPhotoList = z.strictObject({
	treeSize: z.number().int(),
	/** The leg that the carrier is told of; null where the order has none. */
	leg: z.number().int().nullable(),
	photos: z.array(carrierPhotoView),
});
export const carrierPhotoQuery = z.strictObject({
	at: z.coerce.number().int().min(1).max(Number.MAX_SAFE_INTEGER).optional(),
	/** As in the carrier's report: the last leg that arrived where none is given. */
	leg: z.coerce.number().int().min(1).max(1000).optional(),
});
export type CarrierPhotoQuery = z.infer<typeof carrierPhotoQuery>;

/** A code to write on paper beside the board, with everything that it is computed from. */
export const photoCodeView = z.strictObject({
	code: z.string(),
	recordId: id("rec"),
	otherPartyId: id("pty"),
	treeSize: z.number().int(),
	root: sha256,
	/** When the log's entry was made that the checkpoint ends with: a photo that shows the code is not older. */
	notBefore: z.string(),
	/** When the code was first shown. */
	shownAt: z.string(),
});
export type PhotoCodeView = z.infer<typeof photoCodeView>;
export const photoCodeQuery = z.strictObject({ code: z.string().min(1).max(40) });
export const photoCodeList = z.strictObject({ codes: z.array(photoCodeView) });
