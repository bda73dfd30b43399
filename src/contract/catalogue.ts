/** The catalogue of checks of an item class. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";
import { CONDITIONS, ITEM_CLASSES } from "../catalogue/codes.ts";
import { typedUnit } from "./benches.ts";

const source = z.strictObject({
	id: z.string(),
	document: z.string(),
	locator: z.string(),
	standing: z.enum(STANDINGS),
});
const number = z.number().nullable();

export const itemClass = z.enum(ITEM_CLASSES);
export const catalogueView = z.strictObject({
	itemClass,
	version: z.string(),
	checks: z.array(
		z.strictObject({
			id: z.string(),
			kind: z.enum(["measured", "count", "score", "outcome", "visual"]),
			name: z.string(),
			hint: z.string(),
			condition: z.enum(CONDITIONS).nullable(),
			typedUnits: z.array(typedUnit),
			exposureUnits: z.array(typedUnit),
			comparability: z.enum(["any-bench", "stated-uncertainty", "same-instrument", "same-bench"]),
			betterIs: z.enum(["higher", "lower", "neither"]),
			limits: z.strictObject({ low: number, high: number, source }).nullable(),
			/** The limits are the item's own and come with the reading. */
			limitsFromItem: z.boolean(),
			margin: z.strictObject({ absolute: number, percentOfDeparture: number, source }).nullable(),
			/** Readings of sound boards lie in it; outside it a typing error is likely. No limit. */
			plausible: z.strictObject({ low: number, high: number, source }).nullable(),
			/** Below this the board is not powered. */
			stopBelow: z.strictObject({ value: z.number(), source }).nullable(),
			duration: z.strictObject({ leastMinutes: z.number(), releaseMinutes: number, source }).nullable(),
			/** When to stop at once. */
			stop: z.string().nullable(),
			whoCan: z.enum(["no-instruments", "software", "meter", "repairer-only"]),
			cautions: z.array(z.string()),
			short: z.boolean(),
			source,
		}),
	),
});
export type CatalogueView = z.infer<typeof catalogueView>;
