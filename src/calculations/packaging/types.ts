/** A pack, the item in it and the trip, as the checks take them; foams and tables resolved. */
import type { CheckVerdict } from "../cushioning/cushion.ts";
import type { Filler, Foam } from "../cushioning/foam.ts";
import type { StaticLayer } from "../electrostatics/static-protection.ts";
import type { DropTable, MeasuredDrops } from "../handling/drop-height.ts";
import type { Sentence } from "../judged.ts";
import type { Dunnage } from "../moisture/desiccant.ts";
import type { Source } from "../sources.ts";
import type { Board } from "../strength/board-strength.ts";
import type { VibrationProfile } from "../vibration/random-profile.ts";

export const FACES = ["top", "bottom", "left", "right", "front", "back"] as const;
export type Face = (typeof FACES)[number];

export const FRAGILITY_BASES = ["tested", "maker", "board-strength", "class", "our-choice"] as const;
export type FragilityBasis = (typeof FRAGILITY_BASES)[number];

/** What bears a heavy cooler: the board alone, a bracket or frame, or a cushion that reaches the cooler itself. */
export const COOLER_SUPPORTS = ["board-only", "bracket", "cushion"] as const;

export interface Amount {
	readonly amount: number;
	readonly currency: string;
}

export interface PackedItem {
	readonly class: string;
	readonly massKg: number;
	/** Along the box's axes; top and bottom are ± height. */
	readonly lengthM: number;
	readonly widthM: number;
	readonly heightM: number;
	readonly fragility?:
		| {
				readonly gn: number;
				readonly basis: FragilityBasis;
				/** Below this change of velocity no peak harms it. */
				readonly velocityChangeMPerS?: number | undefined;
		  }
		| undefined;
	readonly board?: Board | undefined;
	readonly heavyCooler?: { readonly massKg: number; readonly support: (typeof COOLER_SUPPORTS)[number] } | undefined;
	readonly cell: "none" | "coin" | "lithium-ion" | "supercapacitor";
	readonly edgesPadded?: boolean | undefined;
	readonly connectorsCapped?: boolean | undefined;
	readonly makerDeclaresNotSensitive?: boolean | undefined;
	readonly value?: Amount | undefined;
}

export interface FoamLayer {
	/** Null: the foam is not known. */
	readonly foam: Foam | null;
	/** What it is where it is no primary cushion. */
	readonly filler?: Filler | null | undefined;
	readonly thicknessM: number;
	/** What really touches: the whole face, or the pads. */
	readonly bearing:
		| { readonly fullFace: true }
		| { readonly pads: readonly { readonly lengthM: number; readonly widthM: number }[] };
}

export interface Box {
	readonly innerLengthM: number;
	readonly innerWidthM: number;
	readonly innerHeightM: number;
	readonly edgeCrushKNPerM?: number | undefined;
	/** Thickness of its board. */
	readonly caliperM?: number | undefined;
	readonly reused?: boolean | undefined;
}

export type FaceLayers = Readonly<Record<Face, readonly FoamLayer[]>>;

/** A drop of the shop's own with a recorder on the item, in this pack. */
export interface CornerDrop {
	readonly dropHeightM: number;
	readonly orientation: "corner" | "edge" | "face";
	readonly peakGn: number;
	readonly sampleRateHz: number;
	/** Of what was dropped in the item's place. */
	readonly massKg: number;
}

export interface Pack {
	readonly box: Box;
	/** Around the item, inside the inner box where there is one. From the item outwards. */
	readonly faces: FaceLayers;
	/** A box in the box, with what lies in the gap between the two. */
	readonly innerBox?: (Box & { readonly faces: FaceLayers }) | undefined;
	readonly bagLayers: readonly StaticLayer[];
	readonly desiccantUnits?: number | undefined;
	/** Paper, card and foam inside the barrier. */
	readonly dunnage?: readonly Dunnage[] | undefined;
	readonly grossMassKg?: number | undefined;
	readonly cornerDrops?: readonly CornerDrop[] | undefined;
}

export interface Route {
	readonly dropTable: DropTable;
	readonly dropTables: readonly DropTable[];
	readonly measured: readonly MeasuredDrops[];
	readonly transitDays: number;
	readonly temperatureLowDegC?: number | undefined;
	readonly temperatureHighDegC?: number | undefined;
	readonly humidityPercent?: number | undefined;
	readonly vibrationProfile: VibrationProfile;
	/** Most that the carrier pays. */
	readonly carrierCap?: Amount | undefined;
}

export interface PackagingInput {
	readonly item: PackedItem;
	readonly pack: Pack;
	readonly route: Route;
	/** Every built-in foam, for what is practical. */
	readonly catalogue: readonly Foam[];
	/** The level that items of this class must pass; null where none is known. */
	readonly classLevel: { readonly gn: number; readonly source: Source } | null;
}

/** Every check, the one that decides most often first: most impacts are on edges and corners. */
export const CHECK_IDS = [
	"corner-edge",
	"drop-height",
	...FACES.map((face) => `cushion-${face}` as const),
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

/** Checks whose value must reach its limit; that of the others must stay below. */
export const AT_LEAST_CHECKS: ReadonlySet<CheckId> = new Set<CheckId>([
	"drop-height",
	"buckling",
	"resonance",
	"compression",
	"moisture",
	"cover",
]);

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
	/** Measured percentiles that lie below it. They are per drop, not per trip. */
	readonly measuredBelow: readonly {
		readonly id: string;
		readonly percentile: "p95" | "max";
		readonly dropHeightM: number;
	}[];
	/** The basis that carries the verdict, and what the faces would be by the others. */
	readonly fragility: {
		readonly basis: FragilityBasis;
		readonly limitGn: number;
		readonly others: readonly {
			readonly basis: FragilityBasis;
			readonly limitGn: number;
			readonly standing: Source["standing"];
			/** Of the worst face; null where no face has a peak. */
			readonly verdict: CheckVerdict | null;
		}[];
	};
	/** Every basis of a design drop that has this mass, and whether the protected drop reaches it. */
	readonly dropBases: readonly {
		readonly basis: string;
		readonly dropHeightM: number;
		readonly standing: Source["standing"];
		readonly reached: boolean | null;
	}[];
}
