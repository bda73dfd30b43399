/** The design drop: from which height, by which published basis, beside what was measured in parcel networks. */
import { assessed, type Judged, notAssessed, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";

export interface DropRow {
	/** Bounds of the mass band, kg, lower bound inclusive; null for no upper bound. */
	readonly fromKg: number;
	readonly toKg: number | null;
	readonly drops: readonly { readonly orientation: string; readonly dropHeightM: number }[];
}

export interface DropTable {
	readonly id: string;
	readonly rows: readonly DropRow[];
	/** The table covers packs whose greatest dimension is below this; null for any. */
	readonly largestDimensionM: number | null;
	readonly source: Source;
}

/** What recorders saw in a parcel network. */
export interface MeasuredDrops {
	readonly id: string;
	readonly service: string;
	readonly p95M: number | null;
	readonly maxM: number;
	readonly dropsPerTrip: number | null;
	/** Drops in the whole study; null where the source does not say. */
	readonly recordedDrops: number | null;
	readonly source: Source;
}

export interface DropHeightInput {
	readonly massKg: number;
	readonly largestDimensionM?: number | undefined;
	readonly table: DropTable;
	/** Every table, for the other bases. */
	readonly tables: readonly DropTable[];
	readonly measured: readonly MeasuredDrops[];
	/** Share of trips to be covered, 0..1 exclusive. */
	readonly tripCoverage?: number | undefined;
}

export interface DropHeight {
	readonly dropHeightM: number;
	readonly drops: readonly { readonly orientation: string; readonly dropHeightM: number }[];
	readonly alternatives: readonly {
		readonly basis: string;
		readonly dropHeightM: number;
		readonly standing: Source["standing"];
	}[];
	readonly measured: readonly {
		readonly id: string;
		readonly service: string;
		readonly p95M: number | null;
		readonly maxM: number;
		readonly dropsPerTrip: number | null;
		/** Percentile per drop that covers the trips asked for, if drops were independent; null where the counts are not known. */
		readonly percentilePerDrop: number | null;
	}[];
}

/**
 * The design drop of a basis. Bands have an inclusive lower bound; a mass in a gap between two takes the higher drop;
 * above the last there is none. Percentiles measured are per drop, not per trip: p = coverage^(1/drops), drops taken as
 * independent.
 */
export function dropHeight(input: DropHeightInput): Judged<DropHeight> {
	const { table, massKg, largestDimensionM, tripCoverage } = input;
	const row = rowFor(table, massKg);
	if (row === null)
		return notAssessed("mass-above-table", sentence("drop.mass-above", { massKg }), { sources: [table.source] });
	const tooLarge =
		table.largestDimensionM !== null &&
		largestDimensionM !== undefined &&
		!(largestDimensionM < table.largestDimensionM);
	const highest = (drops: DropRow["drops"]) => Math.max(...drops.map((drop) => drop.dropHeightM));
	return assessed<DropHeight>(
		{
			dropHeightM: highest(row.drops),
			drops: row.drops,
			alternatives: input.tables
				.filter((other) => other.id !== table.id)
				.flatMap((other) => {
					const otherRow = rowFor(other, massKg);
					return otherRow === null
						? []
						: [{ basis: other.id, dropHeightM: highest(otherRow.drops), standing: other.source.standing }];
				}),
			measured: input.measured.map(({ source: _, recordedDrops: _all, ...row }) => ({
				...row,
				percentilePerDrop:
					tripCoverage === undefined || row.dropsPerTrip === null ? null : tripCoverage ** (1 / row.dropsPerTrip),
			})),
		},
		{
			within: !tooLarge,
			notes: [
				sentence("drop.per-drop"),
				...(tooLarge ? [sentence("drop.too-large", { largestM: table.largestDimensionM ?? 0 })] : []),
			],
			sources: [
				table.source,
				...input.measured.map((row) => row.source),
				cite("our-derivation", "percentile per drop from coverage per trip, drops independent", "our-choice"),
			],
		},
	);
}

function rowFor(table: DropTable, massKg: number): DropRow | null {
	const inside = table.rows.find((row) => massKg >= row.fromKg && (row.toKg === null || massKg < row.toKg));
	if (inside !== undefined) return inside;
	const last = table.rows.at(-1);
	if (last === undefined || (last.toKg !== null && !(massKg < last.toKg))) return null;
	const [below, above] = [
		table.rows.filter((row) => row.toKg !== null && row.toKg <= massKg).at(-1),
		table.rows.find((row) => row.fromKg > massKg),
	];
	const candidates = [below, above].filter((row) => row !== undefined);
	const highest = (row: DropRow) => Math.max(...row.drops.map((drop) => drop.dropHeightM));
	return candidates.reduce<DropRow | null>(
		(best, row) => (best === null || highest(row) > highest(best) ? row : best),
		null,
	);
}
