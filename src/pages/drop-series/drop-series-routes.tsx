/** `/foam-drops`: a foam characterised by the shop's own drops, and kept in the stock. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { recordingReading } from "../../contract/transit-recordings.ts";
import type { Deps } from "../../operations/deps.ts";
import { dropsOfRecording } from "../../operations/drop-series/drops-of-recording.ts";
import { keepInStock } from "../../operations/packaging/stock.ts";
import { parseStrictJson } from "../../operations/strict-json.ts";
import { previewTable } from "../../operations/transit-recordings/transit-recordings.ts";
import { say } from "../../texts/say.ts";
import { readBody } from "../record-form/read-body.ts";
import { columnsForm, readColumnsForm } from "../recordings/columns-form.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { DropSeriesPage, type FoamName, KeepFoamPage } from "./drop-series-page.tsx";
import { readDropsForm } from "./read-drops-form.ts";

export function registerDropSeriesPages(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	app.get("/foam-drops", shop, async (request, reply) =>
		sendPage(reply, <DropSeriesPage request={request} judged={null} values={{ device: "recorder" }} errors={{}} />),
	);
	app.post("/foam-drops", shop, async (request, reply) => {
		const { form, files } = await readBody(request.body);
		const page = (errors: Readonly<Record<string, string | undefined>>) =>
			sendPage(reply, <DropSeriesPage request={request} judged={null} values={form} errors={errors} />, 400);
		const { series, told, errors } = readDropsForm(form);
		if (Object.keys(errors).length > 0) return page(errors);
		try {
			const bytes = files[0]?.bytes ?? Buffer.alloc(0);
			const preview = await previewTable(deps, callerOf(request), bytes);
			const columns = readColumnsForm({
				...(columnsForm(preview, null) as Record<string, string>),
				device: form.device ?? "",
				place: "on-item",
				unitsConfirmed: "yes",
			});
			const reading = recordingReading.safeParse(columns.reading);
			if (!reading.success) return page({ file: say("drops.no-units") });
			const judged = await dropsOfRecording(bytes, reading.data, series, told);
			return sendPage(reply, <DropSeriesPage request={request} judged={judged} values={form} errors={{}} />);
		} catch (error) {
			return page(errorsOfFault(error, { "/drops": "lines" }));
		}
	});
	app.post("/foam-drops/keep", shop, async (request, reply) => {
		const { form } = await readBody(request.body);
		const name: FoamName = form.later === undefined ? "first" : "later";
		try {
			const thing = parseStrictJson(form.sheet ?? "");
			await keepInStock(deps, callerOf(request), "foams", { id: (form[name] ?? "").trim(), thing });
			return reply.redirect("/stock#foams", 303);
		} catch (error) {
			const errors = errorsOfFault(error, { "": name, "/id": name });
			return sendPage(
				reply,
				<KeepFoamPage {...{ request, name, errors }} sheet={form.sheet ?? ""} values={form} />,
				400,
			);
		}
	});
}
