/** A pack, the item in it and the trip, as the checks take them; foams and tables resolved. */
import type { CheckVerdict } from "../cushioning/cushion.ts";
import type { Foam } from "../cushioning/foam.ts";
import type { StaticLayer } from "../electrostatics/static-protection.ts";
import type { DropTable, MeasuredDrops } from "../handling/drop-height.ts";
import type { Sentence } from "../judged.ts";
import type { Source } from "../sources.ts";

export const FACES = ["top", "bottom", "left", "right", "front", "back"] as const;
export type Face = (typeof FACES)[number];

export interface PackedItem {
	readonly class: string;
	readonly massKg: number;
	/** Along the box's axes; top and bottom are ± height. */
	readonly lengthM: number;
	readonly widthM: number;
	readonly heightM: number;
	readonly fragility?:
		| { readonly gn: number; readonly basis: "tested" | "maker" | "board-strength" | "class" | "our-choice" }
		| undefined;
	readonly cell: "none" | "coin" | "lithium-ion" | "supercapacitor";
	readonly edgesPadded?: boolean | undefined;
	readonly connectorsCapped?: boolean | undefined;
	readonly makerDeclaresNotSensitive?: boolean | undefined;
}

export interface FoamLayer {
	/** Null: the foam is not known. */
	readonly foam: Foam | null;
	readonly thicknessM: number;
	/** What really touches: the item's whole face, or the pads. */
	readonly bearing:
		| { readonly fullFace: true }
		| { readonly pads: readonly { readonly lengthM: number; readonly widthM: number }[] };
}

export interface Pack {
	readonly faces: Readonly<Record<Face, readonly FoamLayer[]>>;
	readonly bagLayers: readonly StaticLayer[];
	readonly grossMassKg?: number | undefined;
	readonly box: { readonly innerLengthM: number; readonly innerWidthM: number; readonly innerHeightM: number };
}

export interface Route {
	readonly dropTable: DropTable;
	readonly dropTables: readonly DropTable[];
	readonly measured: readonly MeasuredDrops[];
}

export interface PackagingInput {
	readonly item: PackedItem;
	readonly pack: Pack;
	readonly route: Route;
	/** Every built-in foam, for what is practical. */
	readonly catalogue: readonly Foam[];
}

export const CHECK_IDS = [
	"drop-height",
	...FACES.map((face) => `cushion-${face}` as const),
	"corner-edge",
	"bottoming",
	"buckling",
	"creep",
	"temperature",
	"fit",
	"movement",
	"resonance",
	"compression",
	"static",
	"moisture",
	"cell",
	"cooler",
	"cover",
] as const;
export type CheckId = (typeof CHECK_IDS)[number];

export interface PackagingCheck {
	readonly id: CheckId;
	readonly verdict: CheckVerdict;
	readonly value: number | null;
	readonly limit: number | null;
	/** Symbol of the unit of value and limit; null for none. */
	readonly unit: string | null;
	readonly margin: number | null;
	readonly why: Sentence;
	/** What to change; null where nothing needs to. */
	readonly mend: Sentence | null;
	readonly sources: readonly Source[];
}

export interface Packaging {
	readonly verdict: CheckVerdict;
	readonly checks: readonly PackagingCheck[];
	/** The drop at which the worst loaded face reaches its limit; null where a face cannot be assessed. */
	readonly protectedDropHeightM: number | null;
	readonly protectedBandM: readonly [low: number, high: number] | null;
	/** Measured percentiles that lie below it. */
	readonly measuredBelow: readonly {
		readonly id: string;
		readonly percentile: "p95" | "max";
		readonly dropHeightM: number;
	}[];
}
