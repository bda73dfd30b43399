/** Rows of transit recordings and their events; the file's name is under the key of the order's owner. */
import type { Queryable } from "./connection.ts";

export interface RecordingRow {
	readonly id: string;
	readonly consignment_id: string;
	readonly order_id: string;
	readonly sha256: string;
	readonly party_id: string;
	readonly file_name: string;
	readonly brought_at: Date;
	readonly reading: unknown;
	readonly trip: unknown;
	readonly size_bytes: number;
	/** Null once the owner is erased. */
	readonly stored_sha256: string | null;
}

type StoredRecording = Omit<RecordingRow, "file_name"> & { readonly personal: Buffer };

export interface EventRow {
	readonly number: number;
	readonly facts: unknown;
	readonly trace: Buffer;
}

const recordingPlace = (id: string) => `transit_recording/${id}`;
const RECORDINGS = `SELECT r.id, r.consignment_id, r.order_id, sha256, party_id, r.personal, r.brought_at, r.reading, r.trip,
	e.size_bytes, e.stored_sha256 FROM transit_recording r JOIN exhibit e USING (sha256, party_id)`;

function openRecording(database: Queryable, { personal, ...plain }: StoredRecording): RecordingRow {
	return { ...plain, file_name: database.vault.of(plain.party_id).open(recordingPlace(plain.id), personal) };
}

/** Notes a stored file as an exhibit of its party; one that is there already is left as it is. */
export async function insertRecording(
	transaction: Queryable,
	row: Pick<RecordingRow, "id" | "consignment_id" | "order_id" | "sha256" | "party_id" | "file_name" | "size_bytes"> & {
		readonly stored_sha256: string;
		readonly crc32: number;
		readonly brought_by: string;
	},
): Promise<void> {
	await transaction.query(
		`INSERT INTO exhibit (sha256, party_id, stored_sha256, size_bytes, media_type, crc32)
		 VALUES ($1, $2, $3, $4, 'text/plain', $5)
		 ON CONFLICT (sha256, party_id) DO UPDATE SET stored_sha256 = excluded.stored_sha256, crc32 = excluded.crc32
		 WHERE exhibit.stored_sha256 IS NULL AND excluded.stored_sha256 IS NOT NULL`,
		[row.sha256, row.party_id, row.stored_sha256, row.size_bytes, row.crc32],
	);
	await transaction.query(
		`INSERT INTO transit_recording (id, consignment_id, order_id, sha256, party_id, personal, brought_by)
		 VALUES ($1, $2, $3, $4, $5, $6, $7)`,
		[
			row.id,
			row.consignment_id,
			row.order_id,
			row.sha256,
			row.party_id,
			transaction.vault.of(row.party_id).seal(recordingPlace(row.id), row.file_name),
			row.brought_by,
		],
	);
}

/** Replaces what was read of a recording. */
export async function putReading(
	transaction: Queryable,
	id: string,
	read: {
		readonly reading: unknown;
		readonly trip: unknown;
		readonly pyramids: Buffer;
		readonly events: readonly EventRow[];
	},
): Promise<void> {
	await transaction.query("UPDATE transit_recording SET reading = $2, trip = $3, pyramids = $4 WHERE id = $1", [
		id,
		JSON.stringify(read.reading),
		JSON.stringify(read.trip),
		read.pyramids,
	]);
	await transaction.query("DELETE FROM transit_event WHERE recording_id = $1", [id]);
	await transaction.query(
		`INSERT INTO transit_event (recording_id, number, facts, trace)
		 SELECT $1, number, facts, trace FROM unnest($2::int[], $3::jsonb[], $4::bytea[]) AS e (number, facts, trace)`,
		[
			id,
			read.events.map(({ number }) => number),
			read.events.map(({ facts }) => JSON.stringify(facts)),
			read.events.map(({ trace }) => trace),
		],
	);
}

export async function recordingById(database: Queryable, id: string): Promise<RecordingRow | null> {
	const [row] = await database.query<StoredRecording>(`${RECORDINGS} WHERE r.id = $1`, [id]);
	return row === undefined ? null : openRecording(database, row);
}

/** Oldest first. */
export async function recordingsOfConsignment(database: Queryable, consignmentId: string): Promise<RecordingRow[]> {
	const rows = await database.query<StoredRecording>(
		`${RECORDINGS} WHERE r.consignment_id = $1 ORDER BY r.brought_at, r.id COLLATE "C"`,
		[consignmentId],
	);
	return rows.map((row) => openRecording(database, row));
}

/** Facts of each recording's events, in order of time. */
export async function eventsOfRecordings(
	database: Queryable,
	ids: readonly string[],
): Promise<(Omit<EventRow, "trace"> & { readonly recording_id: string })[]> {
	return database.query(
		"SELECT recording_id, number, facts FROM transit_event WHERE recording_id = ANY ($1) ORDER BY recording_id, number",
		[ids],
	);
}

/** Traces of a recording's events, and its pyramids; null where it was not read. */
export async function curvesOfRecording(
	database: Queryable,
	id: string,
): Promise<{ readonly pyramids: Buffer; readonly traces: readonly Omit<EventRow, "facts">[] } | null> {
	const [row] = await database.query<{ pyramids: Buffer | null }>(
		"SELECT pyramids FROM transit_recording WHERE id = $1",
		[id],
	);
	if (row === undefined || row.pyramids === null) return null;
	const traces = await database.query<Omit<EventRow, "facts">>(
		"SELECT number, trace FROM transit_event WHERE recording_id = $1 ORDER BY number",
		[id],
	);
	return { pyramids: row.pyramids, traces };
}

export async function rememberedMapping(database: Queryable, headerSha256: string): Promise<unknown> {
	const [row] = await database.query<{ mapping: unknown }>(
		"SELECT mapping FROM recorder_mapping WHERE header_sha256 = $1",
		[headerSha256],
	);
	return row?.mapping ?? null;
}

export async function rememberMapping(transaction: Queryable, headerSha256: string, mapping: unknown): Promise<void> {
	await transaction.query(
		`INSERT INTO recorder_mapping (header_sha256, mapping) VALUES ($1, $2)
		 ON CONFLICT (header_sha256) DO UPDATE SET mapping = excluded.mapping`,
		[headerSha256, JSON.stringify(mapping)],
	);
}
