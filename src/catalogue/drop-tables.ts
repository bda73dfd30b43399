/**
 * Drop heights by mass, and what was measured. Standards were read in other documents that quote them. Bands in pounds
 * are kept in pounds and converted at 0.45359237 kg exactly (published, NIST Special Publication 811, appendix B).
 */
import type { DropRow, DropTable, MeasuredDrops } from "../calculations/handling/drop-height.ts";
import type { OrientationShares } from "../calculations/packaging/damage-risk.ts";
import { cite } from "../calculations/sources.ts";

const POUND_KG = 0.45359237;
const INCH_M = 0.0254;

const TEN_DROPS = [
	"corner 2-3-5",
	"shortest edge",
	"next edge",
	"longest edge",
	"smallest faces",
	"medium faces",
	"largest faces",
];
const all = (dropHeightM: number, orientations: readonly string[] = ["any"]) =>
	orientations.map((orientation) => ({ orientation, dropHeightM }));

/** Rows from upper bounds in one unit of mass, each starting where the one before ends. */
function rows(
	upTo: readonly (number | null)[],
	kgPerUnit: number,
	drops: (index: number) => DropRow["drops"],
): DropRow[] {
	return upTo.map((to, index) => ({
		fromKg: index === 0 ? 0 : (upTo[index - 1] ?? 0) * kgPerUnit,
		toKg: to === null ? null : to * kgPerUnit,
		drops: drops(index),
	}));
}

/** Rows from bands in whole pounds, 0 to 20, 21 to 40 and so on: what lies between two is in neither. */
function wholePounds(upTo: readonly (number | null)[], inches: readonly number[]): DropRow[] {
	return upTo.map((to, index) => ({
		fromKg: index === 0 ? 0 : ((upTo[index - 1] ?? 0) + 1) * POUND_KG,
		toKg: to === null ? null : to * POUND_KG,
		drops: all((inches[index] ?? 0) * INCH_M),
	}));
}

const ISTA_KG = [10, 19, 28, 45, 68];
const ASTM_LB = [20, 40, 60, 80, 100, 200];
const ASTM_INCH = [
	[24, 15, 9],
	[21, 13, 8],
	[18, 12, 7],
	[15, 10, 6],
	[12, 9, 5],
	[10, 7, 4],
];
const DIN_MM = [800, 600, 500, 400, 300, 200];
const HANDLING_MM = [1050, 900, 750, 600, 450, 300];
const HDBK_INCH = [42, 36, 30, 24, 18, 12];

const astm = (level: 0 | 1 | 2): DropTable => ({
	id: `astm-d4169-a-${level + 1}`,
	rows: rows(ASTM_LB, POUND_KG, (index) => all((ASTM_INCH[index]?.[level] ?? 0) * INCH_M, ["six impacts"])),
	largestDimensionM: null,
	source: cite("astm-d4169", `schedule A, assurance level ${level + 1}`, "from-memory"),
});
const ista = (id: string, heightsMm: readonly number[], source: DropTable["source"]): DropTable => ({
	id,
	rows: rows(ISTA_KG, 1, (index) => all((heightsMm[index] ?? 0) / 1000, TEN_DROPS)),
	largestDimensionM: null,
	source,
});

export const DROP_TABLES: readonly DropTable[] = [
	{
		id: "din-55439",
		rows: rows([10, 20, 30, 40, 50, 70], 1, (index) =>
			all((DIN_MM[index] ?? 0) / 1000, ["corner 2-3-5", "edges", "faces"]),
		),
		largestDimensionM: null,
		source: cite("din-55439", "drop heights by mass, as quoted", "published"),
	},
	ista("ista-1a", [760, 610, 460, 310, 200], cite("ista-1a", "drop heights by mass, as quoted", "published")),
	ista("ista-2a", [970, 810, 660, 510, 310], cite("ista-2a", "drop heights by mass, as quoted", "published")),
	{
		id: "express-carrier",
		rows: [
			{ fromKg: 0, toKg: 75 * POUND_KG, drops: all(0.762) },
			{ fromKg: 76 * POUND_KG, toKg: 100 * POUND_KG, drops: [...all(24 * INCH_M), ...all(30 * INCH_M, ["bottom"])] },
			{ fromKg: 101 * POUND_KG, toKg: 150 * POUND_KG, drops: [...all(12 * INCH_M), ...all(24 * INCH_M, ["bottom"])] },
		],
		largestDimensionM: null,
		source: cite("express-carrier-guide", "ten drops by mass, an edition that was superseded", "published"),
	},
	{
		id: "desktop-board-packaged",
		rows: wholePounds([20, 40, 80, 100], [36, 30, 24, 18]),
		largestDimensionM: null,
		source: cite("desktop-board-specification", "packaged board, half sine of 2 ms, free fall by mass", "published"),
	},
	{
		id: "mil-std-810-transit",
		rows: [{ fromKg: 0, toKg: 45.4, drops: all(1.22, ["6 faces, 12 edges, 8 corners"]) }],
		largestDimensionM: 0.91,
		source: cite("mil-std-810", "method 516, transit drop, first row, as quoted", "published"),
	},
	astm(0),
	astm(1),
	astm(2),
	{
		id: "mil-hdbk-304",
		rows: wholePounds([20, 50, 250, 500, 1000, null], HDBK_INCH),
		largestDimensionM: null,
		source: cite("mil-hdbk-304", "handling and drop height by mass", "from-memory"),
	},
	{
		id: "jis-z-0200",
		rows: [{ fromKg: 0, toKg: 10, drops: all(0.8, ["1 corner", "3 edges", "6 faces"]) }],
		largestDimensionM: null,
		source: cite(
			"jis-z-0200",
			"level 1, under 10 kg, as quoted by a test house; the other rows were not read",
			"published",
		),
	},
	{
		id: "handling-thrown",
		rows: rows([5, 10, 25, 50, 125, null], 1, (index) => all((HANDLING_MM[index] ?? 0) / 1000)),
		largestDimensionM: null,
		source: cite("handling-table", "height by mass and mode of handling, as quoted", "published"),
	},
	{
		id: "our-choice-762",
		rows: [{ fromKg: 0, toKg: null, drops: all(0.762) }],
		largestDimensionM: null,
		source: cite("our-choice", "30 inches for a card parcel of 1 to 5 kg", "our-choice"),
	},
	{
		id: "our-choice-914",
		rows: [{ fromKg: 0, toKg: null, drops: all(0.914) }],
		largestDimensionM: null,
		source: cite("our-choice", "36 inches for a high value", "our-choice"),
	},
];

/** The basis where none is asked for. Source: the contract page. */
export const DEFAULT_DROP_BASIS = "din-55439";

export const MEASURED_DROPS: readonly MeasuredDrops[] = [
	{
		id: "overnight-air",
		service: "overnight air, two carriers, 100 trips",
		p95M: 0.4,
		maxM: 1.97,
		dropsPerTrip: 7.44,
		recordedDrops: 744,
		source: cite("parcel-studies", "overnight air, 100 trips, recorded events over 10 gₙ", "published"),
	},
	{
		id: "postal-express",
		service: "postal express, 50 one-way trips",
		p95M: 0.813,
		maxM: 1.842,
		dropsPerTrip: 10.49,
		recordedDrops: 524,
		source: cite("parcel-studies", "postal express, 50 trips", "published"),
	},
	{
		id: "ground-parcel",
		service: "ground parcel, 35 round trips, small and light",
		p95M: 0.762,
		maxM: 1.069,
		dropsPerTrip: null,
		recordedDrops: null,
		source: cite("parcel-studies", "ground parcel, 35 round trips, abstract", "published"),
	},
	{
		id: "overnight-smalls",
		service: "overnight, small boxes",
		p95M: null,
		maxM: 0.991,
		dropsPerTrip: null,
		recordedDrops: 27,
		source: cite("parcel-studies", "overnight smalls, 27 drops", "published"),
	},
];

/** What strikes first, as shares of all impacts. Source: published, abstracts of two studies; they contradict each other. */
export const ORIENTATION_SHARES: readonly OrientationShares[] = [
	{ id: "overnight-air", face: 0.069, edge: 0.511, corner: 0.42 },
	{ id: "ground-boxed-pail", face: 0.56, edge: 0.28, corner: 0.16 },
];

/** A table by id; null for none. */
export function dropTableById(id: string): DropTable | null {
	return DROP_TABLES.find((table) => table.id === id) ?? null;
}
