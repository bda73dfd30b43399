/** Recorders' files of a leg: brought as raw bytes, read as someone confirmed, and what they say. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import {
	bringRecordingQuery,
	recordingBrought,
	recordingList,
	recordingPreview,
	recordingReading,
	recordingView,
} from "../contract/transit-recordings.ts";
import type { Deps } from "../operations/deps.ts";
import {
	bringRecording,
	confirmReading,
	fetchRecordingFile,
	previewRecording,
	RECORDING_MOST_BYTES,
	readTransitRecording,
	readTransitRecordings,
} from "../operations/transit-recordings/transit-recordings.ts";
import { validate } from "../operations/validate.ts";
import { rawBody, takeRawBodies } from "./exhibits.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { pathId } from "./parts.ts";
import { sendBytes } from "./send-bytes.ts";

export function registerTransitRecordings(app: FastifyInstance, deps: Deps): void {
	const ofLeg = "/api/v1/consignments/:id/transit-recordings";
	const one = "/api/v1/transit-recordings/:id";
	app.register(async (raw) => {
		takeRawBodies(raw);
		raw.post(
			ofLeg,
			{
				...openTo("account"),
				bodyLimit: RECORDING_MOST_BYTES,
				schema: {
					summary: "Bring a recorder's table, up to 20 MiB; read at once where `reading` says how.",
					querystring: bringRecordingQuery,
					response: { 201: recordingBrought },
				},
			},
			async (request, reply) => {
				const { fileName, reading } = validate(bringRecordingQuery, request.query);
				const file = { fileName, reading, bytes: rawBody(request.body) };
				const brought = await bringRecording(deps, callerOf(request), pathId(request, "con"), file);
				return reply.status(201).header("Location", `/api/v1/transit-recordings/${brought.recording.id}`).send(brought);
			},
		);
	});
	app.get(
		ofLeg,
		{ ...SHOP_AND_LINKS, schema: { summary: "The recordings of a leg.", response: { 200: recordingList } } },
		async (request) => ({
			recordings: await readTransitRecordings(deps, callerOf(request), pathId(request, "con")),
		}),
	);
	app.get(
		one,
		{ ...SHOP_AND_LINKS, schema: { summary: "One recording.", response: { 200: recordingView } } },
		async (request) => readTransitRecording(deps, callerOf(request), pathId(request, "trc")),
	);
	app.get(
		`${one}/preview`,
		{
			...openTo("account"),
			schema: { summary: "Columns and first rows of a recorder's file.", response: { 200: recordingPreview } },
		},
		async (request) => previewRecording(deps, callerOf(request), pathId(request, "trc")),
	);
	app.put(
		`${one}/reading`,
		{
			...openTo("account"),
			schema: {
				summary:
					"Say how a recorder's file is to be read, and read it; above 20 MiB in the background (202), `pending` says how far.",
				body: recordingReading,
				response: { 200: recordingView, 202: recordingView },
			},
		},
		async (request, reply) => {
			const reading = validate(recordingReading, request.body);
			const view = await confirmReading(deps, callerOf(request), pathId(request, "trc"), reading);
			return reply.status(view.pending?.status === "being-read" ? 202 : 200).send(view);
		},
	);
	app.get(
		`${one}/file`,
		{ ...SHOP_AND_LINKS, schema: { summary: "A recorder's file as it was brought." } },
		async (request, reply) => {
			const file = await fetchRecordingFile(deps, callerOf(request), pathId(request, "trc"));
			reply
				.type("text/plain; charset=utf-8")
				.header("Content-Disposition", `attachment; filename*=UTF-8''${encodeURIComponent(file.fileName)}`);
			return sendBytes(request, reply, file, `"${file.sha256}"`);
		},
	);
}
