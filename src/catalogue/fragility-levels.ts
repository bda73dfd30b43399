/**
 * Shock that items of a class must pass, from makers' documents: lower bounds on fragility, no points of damage. No
 * measured fragility of a graphics card was found. Classes without an entry have no figure.
 */
import { cite, type Source } from "../calculations/sources.ts";
import type { ItemClass } from "./codes.ts";

export interface FragilityLevel {
	readonly gn: number;
	readonly source: Source;
}

export const FRAGILITY_LEVELS: Partial<Readonly<Record<ItemClass, FragilityLevel>>> = {
	"graphics-card": {
		gn: 30,
		source: cite("graphics-cooler-brief", "card with cooler on a mainboard, trapezoid of 30 gₙ and 19 ms", "published"),
	},
	mainboard: {
		gn: 50,
		source: cite("desktop-board-specification", "bare board, trapezoid of 50 gₙ and 4.3 m/s", "published"),
	},
	drive: {
		gn: 60,
		source: cite("hard-disk-packaging-page", "not operating, 60 gₙ; the lowest of three figures", "published"),
	},
};
