/** `verify`: the checks of a receipt or dossier, each by its id. */
import { z } from "zod";
import { ALL_CHECK_IDS, CHECK_OUTCOMES } from "../records/verify/finding.ts";
import { sha256, text } from "./common.ts";

/** The log's key as the reader knows it, 64 hex digits or PEM; a printed checkpoint, `ENTRIES ROOT`. */
export const verifyQuery = z.strictObject({ key: text(4000).optional(), printed: text(200).optional() });
export type VerifyQuery = z.infer<typeof verifyQuery>;

export const verificationView = z.strictObject({
	outcome: z.enum(["verified", "not-verified"]),
	checks: z.array(
		z.strictObject({
			id: z.enum(ALL_CHECK_IDS),
			outcome: z.enum(CHECK_OUTCOMES),
			/** JSON Pointer, name of a file in a dossier, or byte offset. */
			where: z.string().optional(),
			expected: z.string().optional(),
			found: z.string().optional(),
			why: z.string().optional(),
		}),
	),
	/** Null where the bytes are no receipt. */
	format: z.string().nullable(),
	about: z.string().nullable(),
	entries: z.array(
		z.strictObject({
			index: z.number().int(),
			kind: z.string(),
			subject: z.string(),
			by: z.string(),
			time: z.string(),
			fingerprint: sha256.nullable(),
		}),
	),
});
export type VerificationView = z.infer<typeof verificationView>;
