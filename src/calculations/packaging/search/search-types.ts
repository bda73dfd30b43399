/** What a search of packs takes and gives. */
import type { Foam } from "../../cushioning/foam.ts";
import type { StaticLayer } from "../../electrostatics/static-protection.ts";
import type { Judged } from "../../judged.ts";
import type { Box, FoamLayer, Packaging, PackagingInput } from "../types.ts";

export const OBJECTIVES = ["margin", "cost", "volume"] as const;
export type Objective = (typeof OBJECTIVES)[number];

/** Why candidates were left out; each is counted once, by the first that holds. */
export const EXCLUSIONS = [
	"item-does-not-fit",
	"play",
	"static",
	"unknown-foam",
	"buckling",
	"creep",
	"peak",
	"outside-data",
	"first-drop-only",
	"corner-edge",
	"no-price",
	"other-check",
] as const;
export type Exclusion = (typeof EXCLUSIONS)[number];

export interface StockBox extends Box {
	readonly id: string;
	readonly price?: number | undefined;
}
/** A sheet of foam of one thickness; pads are cut from it and stacked. */
export interface StockSheet {
	readonly id: string;
	readonly foam: Foam | null;
	readonly thicknessM: number;
	/** Of one square metre. */
	readonly price?: number | undefined;
}
export interface StockBag {
	readonly id: string;
	readonly layers: readonly StaticLayer[];
	readonly price?: number | undefined;
}

export interface SearchInput extends Omit<PackagingInput, "pack"> {
	readonly stock: {
		readonly boxes: readonly StockBox[];
		readonly sheets: readonly StockSheet[];
		readonly bags: readonly StockBag[];
	};
	readonly objective: Objective;
	/** How many designs are given at most. */
	readonly most: number;
}

/** Cushions of the two faces of an axis: sheets stacked, then cut. */
export interface Cushion {
	readonly sheets: readonly { readonly id: string; readonly count: number }[];
	readonly thicknessM: number;
	/** Pads on each of the two faces; null for the whole face. */
	readonly pads: readonly { readonly lengthM: number; readonly widthM: number }[] | null;
}

export interface Design {
	readonly boxId: string;
	readonly innerBoxId: string | null;
	readonly bagId: string | null;
	/** Left and right, front and back, top and bottom: around the item, and in the gap of a double box. */
	readonly axes: Readonly<Record<AxisName, { readonly around: Cushion | null; readonly gap: Cushion | null }>>;
	/** Least margin of faces, edges and corners. */
	readonly margin: number;
	/** Null where a price is missing. */
	readonly cost: number | null;
	readonly volumeM3: number;
	readonly packaging: Judged<Packaging>;
}

export interface PackagingSearch {
	readonly designs: readonly Design[];
	readonly considered: number;
	readonly excluded: Readonly<Partial<Record<Exclusion, number>>>;
}

export const AXIS_NAMES = ["length", "width", "height"] as const;
export type AxisName = (typeof AXIS_NAMES)[number];

/** One way to cushion the two faces of an axis. */
export interface AxisOption {
	/** Same foams in the same thickness, whatever the sheets and the pads. */
	readonly composition: string;
	readonly around: Cushion | null;
	readonly gap: Cushion | null;
	readonly aroundLayers: readonly FoamLayer[];
	readonly gapLayers: readonly FoamLayer[];
	/** Null where it holds. */
	readonly excluded: Exclusion | null;
	readonly margin: number;
	readonly cost: number | null;
	/** Force, kN, and energy, kJ, over compression in steps; empty where it does not hold. */
	readonly forcesKN: Float64Array;
	readonly energiesKJ: Float64Array;
}
