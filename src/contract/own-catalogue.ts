/** `own-catalogue`: checks and item classes that the shop adds to those of the catalogue. */
import { z } from "zod";
import { ITEM_CLASSES } from "../catalogue/codes.ts";
import { id, text } from "./common.ts";
import { ownCheck } from "./records.ts";

/** Most that a shop keeps. Our choice. */
export const MOST_OWN = { checks: 50, classes: 20 } as const;
/** Own checks of a class: as many as a sealed record holds, `own-1` to `own-5`. */
export const MOST_OF_CLASS = 5;

const itemClass = z.enum(ITEM_CLASSES);

/** The definition that is sealed with each reading, and what stands beside it where the check is done. */
export const keptCheck = z.strictObject({
	definition: ownCheck,
	/** How it is done, so that the other end does the same. */
	how: text(1000),
	whoCan: z.enum(["no-instruments", "software", "meter", "repairer-only"]),
	caution: text(500).optional(),
	/** Classes of the catalogue whose items it is done on. */
	classes: z.array(itemClass).max(ITEM_CLASSES.length),
});
export type KeptCheck = z.infer<typeof keptCheck>;

export const keptClass = z.strictObject({
	name: text(100),
	/** Decides packaging, what files say, and cautions. A record is sealed under this class. */
	treatedAs: itemClass,
	/** Checks of that class that are not done. */
	leftOut: z.array(z.string().max(60)).max(200),
	ownChecks: z.array(id("chk")).max(MOST_OF_CLASS),
});
export type KeptClass = z.infer<typeof keptClass>;

export const ownCatalogue = z.strictObject({
	/** Counted from 1; 0 before anything was kept. */
	version: z.number().int(),
	checks: z.array(keptCheck.extend({ id: id("chk") })),
	classes: z.array(keptClass.extend({ id: id("cls") })),
});
export type OwnCatalogue = z.infer<typeof ownCatalogue>;
