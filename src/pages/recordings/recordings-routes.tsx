/** `/orders/{id}/consignments/{id}/recordings`: the shop brings and confirms recorders' files; it and the order's links read them. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { recordingReading } from "../../contract/transit-recordings.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrderLine } from "../../operations/orders/order-line.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import {
	bringRecording,
	confirmReading,
	previewRecording,
	readRecordingCurves,
	readTransitRecording,
	readTransitRecordings,
} from "../../operations/transit-recordings/transit-recordings.ts";
import { uploadedRecording } from "../../operations/uploads/uploaded-files.ts";
import { validate } from "../../operations/validate.ts";
import { readBody } from "../record-form/read-body.ts";
import { uploadedIds } from "../record-form/uploaded-files.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { columnsForm, readColumnsForm } from "./columns-form.ts";
import { ColumnsPage } from "./columns-page.tsx";
import { RecordingPage } from "./recording-page.tsx";
import { RecordingsPage } from "./recordings-page.tsx";

interface Params {
	readonly id: string;
	readonly consignment: string;
	readonly recording: string;
}
const paramsOf = (request: FastifyRequest) => request.params as Params;

export function registerRecordings(app: FastifyInstance, deps: Deps): void {
	const readers = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	const shop = { ...openTo("account"), schema: { hide: true } };
	const list = "/orders/:id/consignments/:consignment/recordings";
	const one = `${list}/:recording`;
	const addressOf = ({ id, consignment }: Params) => `/orders/${id}/consignments/${consignment}/recordings`;

	/** The order of the path, if the leg is one of its own. */
	async function orderOf(request: FastifyRequest) {
		const { id, consignment } = paramsOf(request);
		const order = await readOrder(deps, callerOf(request), id);
		if (!order.consignments.some((leg) => leg.id === consignment)) throw fault("not-found");
		return order;
	}
	async function recordingOf(request: FastifyRequest) {
		const { consignment, recording } = paramsOf(request);
		const found = await readTransitRecording(deps, callerOf(request), recording);
		if (found.consignmentId !== consignment) throw fault("not-found");
		return found;
	}
	async function listPage(request: FastifyRequest, values = {}, errors = {}) {
		const order = await orderOf(request);
		const recordings = await readTransitRecordings(deps, callerOf(request), paramsOf(request).consignment);
		const address = addressOf(paramsOf(request));
		const consignmentId = paramsOf(request).consignment;
		return <RecordingsPage {...{ request, order, recordings, consignmentId, address, values, errors }} />;
	}

	app.get(list, readers, async (request, reply) => sendPage(reply, await listPage(request)));
	app.post(list, shop, async (request, reply) => {
		await orderOf(request);
		const { form, files } = await readBody(request.body);
		const pasted = form.pasted ?? "";
		const file = files[0] ?? {
			fileName: "pasted.csv",
			// A text field's last line has no end; what was pasted is whole.
			bytes: Buffer.from(pasted.trim() === "" ? "" : `${pasted.trimEnd()}\n`, "utf8"),
		};
		try {
			const [uploaded] = uploadedIds(form, "file");
			const leg = paramsOf(request).consignment;
			const id =
				uploaded === undefined
					? (await bringRecording(deps, callerOf(request), leg, file)).recording.id
					: await uploadedRecording(deps, callerOf(request), leg, uploaded);
			return reply.redirect(`${addressOf(paramsOf(request))}/${id}/columns`, 303);
		} catch (error) {
			return sendPage(reply, await listPage(request, form, errorsOfFault(error)), 400);
		}
	});

	app.get(one, readers, async (request, reply) => {
		await orderOf(request);
		const recording = await recordingOf(request);
		const [found, curves] = await Promise.all([
			readOrderLine(deps, callerOf(request), paramsOf(request).id),
			readRecordingCurves(deps, callerOf(request), recording.id),
		]);
		const address = `${addressOf(paramsOf(request))}/${recording.id}`;
		// Without script as well: nothing is typed on this page that a new one would take away.
		if (recording.pending?.status === "being-read") reply.header("Refresh", "5");
		return sendPage(reply, <RecordingPage {...{ request, found, recording, curves, address }} />);
	});

	app.get(`${one}/columns`, shop, async (request, reply) => {
		const order = await orderOf(request);
		const recording = await recordingOf(request);
		const preview = await previewRecording(deps, callerOf(request), recording.id);
		const values = columnsForm(preview, recording.reading);
		const address = `${addressOf(paramsOf(request))}/${recording.id}`;
		return sendPage(reply, <ColumnsPage {...{ request, order, recording, preview, address, values }} errors={{}} />);
	});
	app.post(`${one}/columns`, shop, async (request, reply) => {
		const order = await orderOf(request);
		const recording = await recordingOf(request);
		const { form } = await readBody(request.body);
		const read = readColumnsForm(form);
		const address = `${addressOf(paramsOf(request))}/${recording.id}`;
		const again = async (errors: Readonly<Record<string, string | undefined>>) => {
			const preview = await previewRecording(deps, callerOf(request), recording.id);
			const page = <ColumnsPage {...{ request, order, recording, preview, address, errors }} values={form} />;
			return sendPage(reply, page, 400);
		};
		try {
			// The shape is asked even where a field is wrong already, so that all is told at once.
			const reading = validate(recordingReading, read.reading);
			if (Object.keys(read.errors).length > 0) return await again(read.errors);
			await confirmReading(deps, callerOf(request), recording.id, reading);
			return reply.redirect(address, 303);
		} catch (error) {
			return again({ ...errorsOfFault(error, read.fieldOf), ...read.errors });
		}
	});
}
