/** Bringing a recorder's file to a leg, saying how it is to be read, and what it then says. */
import type { Caller } from "../../access/caller.ts";
import {
	type RecorderMapping,
	type RecordingPreview,
	type RecordingReading,
	type RecordingView,
	recordingReading,
} from "../../contract/transit-recordings.ts";
import { consignmentById, ownerOfOrder } from "../../database/orders.ts";
import { endRead, readsOf } from "../../database/recording-reads.ts";
import {
	eventsOfRecordings,
	insertRecording,
	putReading,
	type RecordingRow,
	recordingById,
	recordingsOfConsignment,
	rememberedMapping,
	rememberMapping,
} from "../../database/transit-recordings.ts";
import { fault, invalid } from "../../faults.ts";
import { BEGINNING_BYTES, type RecorderPreview } from "../../importers/recorder/recorder-preview.ts";
import { sha256Hex } from "../../records/canonical.ts";
import type { Deps } from "../deps.ts";
import { needRoom } from "../exhibits/room.ts";
import { contentBytes, openContent, storeContent, wholeContent } from "../exhibits/stored-content.ts";
import { callerId, mustBeShop, mustReadOrder } from "../may.ts";
import { readOrderLine } from "../orders/order-line.ts";
import { readAssessments } from "../packaging/assessments.ts";
import { parseStrictJson } from "../strict-json.ts";
import { validate } from "../validate.ts";
import { pendingOf, readInBackground } from "./long-read.ts";
import { previewedFile } from "./previewed-file.ts";
import { curvesOf, type RecordingCurves } from "./recording-curves.ts";
import { LONG_BYTES, readRecorderFile } from "./recording-reader.ts";
import { recordingViewOf } from "./recording-view.ts";
import { type StoredEvent, storedRecording } from "./stored-recording.ts";

/** The largest file that is taken in one request; larger ones come by upload. Source: the contract page. */
export const RECORDING_MOST_BYTES = 20 * 1024 * 1024;

/**
 * Keeps a recorder's file. With `reading` it is read at once, and a file that cannot be read is not kept; without, it waits until
 * someone has looked at its columns.
 * @throws bad-input with line and reason where it is no recorder's table
 */
export async function bringRecording(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	file: { readonly fileName: string; readonly bytes: Uint8Array; readonly reading?: string | undefined },
): Promise<{ readonly recording: RecordingView; readonly preview: RecordingPreview }> {
	mustBeShop(caller);
	const consignment = await consignmentById(deps.database, consignmentId);
	if (consignment === null) throw fault("not-found");
	if (file.bytes.length > RECORDING_MOST_BYTES) throw fault("too-large");
	if (file.bytes.length === 0) throw invalid([{ path: "/file", code: "empty-file" }]);
	const preview = previewedFile(file.bytes);
	const reading = file.reading === undefined ? null : validate(recordingReading, parseStrictJson(file.reading));
	const read = reading === null ? null : await readRecorderFile({ bytes: file.bytes }, preview, reading);
	const partyId = await ownerOfOrder(deps.database, consignment.order_id);
	await deps.database.transaction((transaction) =>
		needRoom(deps, transaction, consignment.order_id, file.bytes.length),
	);
	const stored = await storeContent(deps, partyId, file.bytes);
	const id = deps.newId("trc");
	await deps.database.transaction(async (transaction) => {
		await ownerOfOrder(transaction, consignment.order_id);
		await insertRecording(transaction, {
			id,
			consignment_id: consignmentId,
			order_id: consignment.order_id,
			...stored,
			party_id: partyId,
			size_bytes: file.bytes.length,
			file_name: file.fileName,
			brought_by: callerId(caller),
		});
		if (reading === null || read === null) return;
		await putReading(transaction, id, { reading, ...storedRecording(read) });
		await rememberMapping(transaction, headerSha256(preview), reading.mapping);
	});
	return { recording: await readTransitRecording(deps, caller, id), preview: await previewView(deps, preview) };
}

/**
 * Reads a file that was brought, as someone confirmed it; again where it was read before. A long one is read in the
 * background, and its view says how far.
 * @throws bad-input with line and reason; already-there where it is being read
 */
export async function confirmReading(
	deps: Deps,
	caller: Caller,
	id: string,
	reading: RecordingReading,
): Promise<RecordingView> {
	mustBeShop(caller);
	const row = await recordingById(deps.database, id);
	if (row === null) throw fault("not-found");
	const preview = await previewOf(deps, row);
	const content = await openContent(deps, row);
	const readAndKeep = async (told?: (bytesRead: number) => void) => {
		const read = await readRecorderFile(content, preview, reading, told);
		await deps.database.transaction(async (transaction) => {
			await ownerOfOrder(transaction, row.order_id);
			await putReading(transaction, id, { reading, ...storedRecording(read) });
			await rememberMapping(transaction, headerSha256(preview), reading.mapping);
			await endRead(transaction, id);
		});
	};
	if (row.size_bytes > LONG_BYTES) await readInBackground(deps, id, reading, readAndKeep);
	else await readAndKeep();
	return readTransitRecording(deps, caller, id);
}

/** The columns and first rows of a file that was brought. */
export async function previewRecording(deps: Deps, caller: Caller, id: string): Promise<RecordingPreview> {
	mustBeShop(caller);
	const row = await recordingById(deps.database, id);
	if (row === null) throw fault("not-found");
	return previewView(deps, await previewOf(deps, row));
}

/** The columns and first rows of a file that is not kept. */
export async function previewTable(deps: Deps, caller: Caller, bytes: Uint8Array): Promise<RecordingPreview> {
	mustBeShop(caller);
	if (bytes.length > RECORDING_MOST_BYTES) throw fault("too-large");
	if (bytes.length === 0) throw invalid([{ path: "/file", code: "empty-file" }]);
	return previewView(deps, previewedFile(bytes));
}

/** The recordings of a leg, oldest first. */
export async function readTransitRecordings(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
): Promise<RecordingView[]> {
	const consignment = await consignmentById(deps.database, consignmentId);
	if (consignment === null) throw fault("not-found");
	mustReadOrder(caller, consignment.order_id);
	return viewsOf(deps, caller, await recordingsOfConsignment(deps.database, consignmentId));
}

export async function readTransitRecording(deps: Deps, caller: Caller, id: string): Promise<RecordingView> {
	const row = await recordingById(deps.database, id);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	const [view] = await viewsOf(deps, caller, [row]);
	return view as RecordingView;
}

/** What the plots of a recording show; null where it was not read yet. */
export async function readRecordingCurves(deps: Deps, caller: Caller, id: string): Promise<RecordingCurves | null> {
	const row = await recordingById(deps.database, id);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	const packs = await readAssessments(deps, caller, row.consignment_id);
	return curvesOf(deps.database, row, packs.at(-1) ?? null);
}

/** The file as it was brought. */
export async function fetchRecordingFile(
	deps: Deps,
	caller: Caller,
	id: string,
): Promise<{
	readonly fileName: string;
	readonly sizeBytes: number;
	readonly sha256: string;
	/** From `start` up to `end`, which is left out. */
	readonly bytes: (start: number, end: number) => AsyncIterable<Uint8Array>;
}> {
	const row = await recordingById(deps.database, id);
	if (row === null) throw fault("not-found");
	mustReadOrder(caller, row.order_id);
	if (row.stored_sha256 === null) throw fault("erased");
	return {
		fileName: row.file_name,
		sizeBytes: row.size_bytes,
		sha256: row.sha256,
		bytes: (start, end) => contentBytes(deps, row, start, end),
	};
}

async function viewsOf(deps: Deps, caller: Caller, rows: readonly RecordingRow[]): Promise<RecordingView[]> {
	const [first] = rows;
	if (first === undefined) return [];
	const ids = rows.map(({ id }) => id);
	const [{ line }, packs, events, reads] = await Promise.all([
		readOrderLine(deps, caller, first.order_id),
		readAssessments(deps, caller, first.consignment_id),
		eventsOfRecordings(deps.database, ids),
		readsOf(deps.database, ids),
	]);
	return rows.map((row) =>
		recordingViewOf(
			row,
			events
				.filter((event) => event.recording_id === row.id)
				.map(({ number, facts }) => ({ number, facts: facts as StoredEvent })),
			line.spans,
			packs.at(-1) ?? null,
			pendingOf(
				reads.find(({ recording_id }) => recording_id === row.id),
				deps.now(),
			),
		),
	);
}

/** Of its beginning alone. */
async function previewOf(deps: Deps, row: RecordingRow): Promise<RecorderPreview> {
	return previewedFile(await wholeContent(deps, row, Math.min(row.size_bytes, BEGINNING_BYTES)));
}

function headerSha256({ headerLine }: RecorderPreview): string {
	return sha256Hex(Buffer.from(headerLine, "utf8"));
}

async function previewView(deps: Deps, preview: RecorderPreview): Promise<RecordingPreview> {
	return {
		columns: preview.columns.map((column, index) => ({ column: index + 1, ...column })),
		rows: preview.rows.map((fields) => [...fields]),
		remembered: (await rememberedMapping(deps.database, headerSha256(preview))) as RecorderMapping | null,
	};
}
