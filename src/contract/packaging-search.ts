/** `packaging-search`. */
import { z } from "zod";
import { EXCLUSIONS, type Exclusion, OBJECTIVES } from "../calculations/packaging/search/search-types.ts";
import { money } from "./common.ts";
import { judged } from "./judged.ts";
import { packagingResult, packedItem, packRoute } from "./packaging.ts";
import { MOST_STOCK, stockView } from "./stock.ts";

export const packagingSearchRequest = z.strictObject({
	item: packedItem,
	route: packRoute,
	stock: z.strictObject({
		boxes: stockView.shape.boxes.min(1).max(MOST_STOCK.boxes),
		foams: stockView.shape.foams.min(1).max(MOST_STOCK.foams),
		bags: stockView.shape.bags.min(1).max(MOST_STOCK.bags),
	}),
	objective: z.enum(OBJECTIVES),
	/** Designs that are given, 10 where nothing is said. */
	most: z.number().int().min(1).max(50).optional(),
});
export type PackagingSearchRequest = z.infer<typeof packagingSearchRequest>;

const cushion = z
	.strictObject({
		sheets: z.array(z.strictObject({ id: z.string(), count: z.number().int() })),
		thicknessM: z.number(),
		/** On each of the two faces; null for the whole face. */
		pads: z.array(z.strictObject({ lengthM: z.number(), widthM: z.number() })).nullable(),
	})
	.nullable();
const axis = z.strictObject({ around: cushion, gap: cushion });

export const packagingSearchAnswer = judged(
	z.strictObject({
		designs: z.array(
			z.strictObject({
				boxId: z.string(),
				innerBoxId: z.string().nullable(),
				bagId: z.string().nullable(),
				/** Left and right, front and back, top and bottom. */
				axes: z.strictObject({ length: axis, width: axis, height: axis }),
				margin: z.number(),
				cost: money.nullable(),
				volumeM3: z.number(),
				packaging: judged(packagingResult),
			}),
		),
		considered: z.number(),
		excluded: z.strictObject(
			Object.fromEntries(EXCLUSIONS.map((reason) => [reason, z.number().optional()])) as Record<
				Exclusion,
				z.ZodOptional<z.ZodNumber>
			>,
		),
	}),
);
export type PackagingSearchAnswer = z.infer<typeof packagingSearchAnswer>;
