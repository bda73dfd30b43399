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
	/** What the file is about; its names are taken only into the record of such an item. */
	about: z.enum(["graphics", "board", "drive", "any"]),
	readings: z.array(
		z.strictObject({
			check: z.string(),
			subject: z.string(),
			condition,
			value: z.number().nullable(),
			unit: z.string(),
			raw: z.string(),
			/** Lines that it was read from, 1 for the first. */
			lines: z.array(z.number().int()),
			nullReason: z.string().optional(),
			/** The true value may be higher: the tool says that it left some out. */
			atLeast: z.literal(true).optional(),
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
	/** As printed; seconds since 1970 in UTC, null where no zone is printed. */
	takenAt: z.strictObject({ raw: z.string(), epochS: z.number().nullable() }).nullable(),
	/** Recorder files only. */
	columns: z
		.array(
			z.strictObject({
				name: z.string(),
				quantity: z.enum(["time", "count", "acceleration", "temperature", "humidity"]).nullable(),
				unit: z.string().nullable(),
				unitFrom: z.enum(["header", "rest"]).nullable(),
			}),
		)
		.optional(),
	/** What in the file names a person, a computer or a network. */
	personal: z.array(
		z.strictObject({
			kind: z.enum(["host-name", "user-name", "ip-address", "mac-address", "e-mail", "computer-id"]),
			text: z.string(),
			line: z.number().int(),
		}),
	),
	warnings: z.array(z.strictObject({ code: z.string(), message: z.string(), line: z.number().int().nullable() })),
	/** The file line by line: what each gave; runs of lines that gave nothing are one entry. At most some hundreds. */
	lines: z.array(
		z.strictObject({
			from: z.number().int(),
			to: z.number().int(),
			text: z.string(),
			checks: z.array(z.string()),
			identity: z.array(z.string()),
		}),
	),
	sha256,
});
export const importIntoView = z.strictObject({
	record: recordView,
	preview: importPreview,
	taken: z.array(z.string()),
	identityDiffers: z.array(z.string()),
});
export type ImportPreview = z.infer<typeof importPreview>;
