/** The shop's stock of boxes, foam sheets and bags: what `packaging-search` chooses from. */
import { z } from "zod";
import { money, text } from "./common.ts";
import { foamInput, thicknessM } from "./cushion.ts";
import { boxInput, staticLayer } from "./packaging.ts";

/** What the shop calls a thing in its stock. */
export const stockId = text(60);
const price = money.optional();

export const stockBox = boxInput.extend({ price });
/** A sheet; the price is that of one square metre. */
export const stockSheet = z.strictObject({ foam: foamInput, thicknessM, price });
export const stockBag = z.strictObject({ layers: z.array(staticLayer).max(10), price });

/** Most of each kind that a search takes, and a stock holds. Our choice: so a search takes seconds. */
export const MOST_STOCK = { boxes: 20, foams: 12, bags: 10 } as const;
export const STOCK_KINDS = ["boxes", "foams", "bags"] as const;
export type StockKind = (typeof STOCK_KINDS)[number];

export const stockView = z.strictObject({
	boxes: z.array(stockBox.extend({ id: stockId })),
	foams: z.array(stockSheet.extend({ id: stockId })),
	bags: z.array(stockBag.extend({ id: stockId })),
});
export type StockView = z.infer<typeof stockView>;
export const STOCK_SHAPES = { boxes: stockBox, foams: stockSheet, bags: stockBag } as const;
export type StockThing<K extends StockKind> = z.infer<(typeof STOCK_SHAPES)[K]>;
