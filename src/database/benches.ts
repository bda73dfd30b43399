/** Rows of instruments and benches. */
import type { Queryable } from "./connection.ts";

export interface InstrumentRow {
	readonly id: string;
	readonly label: string;
	readonly facts: unknown;
}

export interface BenchRow {
	readonly id: string;
	readonly label: string;
	readonly description: string;
}

export async function insertInstrument(database: Queryable, row: InstrumentRow): Promise<void> {
	await database.query("INSERT INTO instrument (id, label, facts) VALUES ($1, $2, $3)", [
		row.id,
		row.label,
		JSON.stringify(row.facts),
	]);
}

export async function listInstruments(database: Queryable): Promise<InstrumentRow[]> {
	return database.query<InstrumentRow>(
		'SELECT id, label, facts FROM instrument WHERE retired_at IS NULL ORDER BY label COLLATE "C", id COLLATE "C"',
	);
}

export async function instrumentsById(database: Queryable, ids: readonly string[]): Promise<InstrumentRow[]> {
	return database.query<InstrumentRow>("SELECT id, label, facts FROM instrument WHERE id = ANY ($1)", [ids]);
}

export async function insertBench(database: Queryable, row: BenchRow): Promise<void> {
	await database.query("INSERT INTO bench (id, label, description) VALUES ($1, $2, $3)", [
		row.id,
		row.label,
		row.description,
	]);
}

export async function listBenches(database: Queryable): Promise<BenchRow[]> {
	return database.query<BenchRow>(
		'SELECT id, label, description FROM bench WHERE retired_at IS NULL ORDER BY label COLLATE "C", id COLLATE "C"',
	);
}
