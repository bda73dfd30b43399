/** `imports/preview`. */
import { z } from "zod";
import { sha256 } from "./common.ts";
import { link } from "./link-judgement.ts";
import { recordView } from "./records.ts";

export const importQuery = z.strictObject({
	kind: z.string().max(40).optional(),
	load: z.enum(["idle", "load"]).optional(),
});
export type ImportQuery = z.infer<typeof importQuery>;

const condition = z.enum(["idle", "load", "unknown"]);

export const importPreview = z.strictObject({
	format: z.string(),
	formatVersion: z.string(),
	readings: z.array(
		z.strictObject({
			check: z.string(),
			subject: z.string(),
			condition,
			value: z.number().nullable(),
			unit: z.string(),
			raw: z.string(),
			nullReason: z.string().optional(),
		}),
	),
	identity: z.record(z.string(), z.string()),
	links: z.array(
		z.strictObject({
			subject: z.string(),
			condition,
			card: link,
			function: link,
			upstreamPath: z.array(link).nullable(),
			slot: link.nullable(),
		}),
	),
	warnings: z.array(z.strictObject({ code: z.string(), message: z.string(), line: z.number().int().nullable() })),
	sha256,
});
export const importIntoView = z.strictObject({
	record: recordView,
	preview: importPreview,
	taken: z.array(z.string()),
	identityDiffers: z.array(z.string()),
});
export type ImportPreview = z.infer<typeof importPreview>;
