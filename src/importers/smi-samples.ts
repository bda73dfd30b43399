/** Rows of a log that a tool wrote once a second or so, as one reading for each check. */
import type { Printed } from "./collect-readings.ts";
import { type ImportCondition, type ImportWarning, warning } from "./import-result.ts";

/** A log's row under the condition asked for: enough is asked of the device at load, little at rest. */
export interface Sample {
	/** Percent of the device's time in use; null where the log does not say. */
	readonly usePercent: number | null;
	readonly line: number;
	cell(column: string): Printed | undefined;
}

/** From and to which use a row counts as load and as idle. Source: our choice. */
const LOAD_FROM_PERCENT = 50;
const IDLE_TO_PERCENT = 10;

/**
 * The rows in which the machine did what the caller says; all of them where the log does not tell, or where the caller
 * does not say. Says so where none did.
 */
export function samplesUnder<S extends Pick<Sample, "usePercent" | "line">>(
	samples: readonly S[],
	condition: ImportCondition,
	warnings: ImportWarning[],
): readonly S[] {
	if (condition === "unknown" || samples.every(({ usePercent }) => usePercent === null)) return samples;
	const fits = samples.filter(({ usePercent }) =>
		usePercent === null
			? false
			: condition === "load"
				? usePercent >= LOAD_FROM_PERCENT
				: usePercent <= IDLE_TO_PERCENT,
	);
	if (fits.length === 0) warnings.push(warning(`${condition}-contradicted`, samples[0]?.line ?? null));
	else if (fits.length < samples.length)
		warnings.push(warning("rows-left-out", null, { used: fits.length, rows: samples.length }));
	return fits;
}

/** The cell with the highest number; where none holds one, the first cell. */
export function highest(cells: readonly Printed[], pattern: RegExp): Printed | undefined {
	const number = (cell: Printed) => Number(pattern.exec(cell.raw)?.[1] ?? Number.NaN);
	return cells.reduce<Printed | undefined>(
		(best, cell) =>
			best === undefined || !(number(cell) <= number(best))
				? Number.isNaN(number(cell)) && best !== undefined
					? best
					: cell
				: best,
		undefined,
	);
}
