/** Pages of photos and files: one file with its taker's choices, the code in a photo, the photos for the carrier. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { carrierPhotoQuery, handOutInput } from "../../contract/pictures.ts";
import { Fault, fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readCarrierPhotos } from "../../operations/pictures/carrier-photos.ts";
import { blackOut, chooseHandOut } from "../../operations/pictures/choose-hand-out.ts";
import { readExhibitFile } from "../../operations/pictures/exhibit-file-views.ts";
import { findPhotoCode } from "../../operations/pictures/photo-codes.ts";
import { readRecord } from "../../operations/records/read-record.ts";
import { validate } from "../../operations/validate.ts";
import { itemName } from "../../texts/item-name.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import type { Crumb } from "../layout.tsx";
import { legsOf } from "../papers/legs-of.ts";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "../shop/form-errors.ts";
import { handsOutAtOnce, readRectangles } from "./black-out-tool.tsx";
import { CarrierPhotosPage } from "./carrier-photos-page.tsx";
import { ExhibitPage } from "./exhibit-page.tsx";
import { exhibitPath } from "./exhibit-thumb.tsx";
import { PhotoCodePage } from "./photo-code-page.tsx";

const READERS = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
const TAKERS = { ...openTo("account", "link:record", "link:settle"), schema: { hide: true } };
const SHOP = { ...openTo("account"), schema: { hide: true } };

export function registerPicturePages(app: FastifyInstance, deps: Deps): void {
	app.get("/records/:id/exhibits/:sha256", READERS, (request, reply) => sendFile(request, reply, {}, {}, 200));
	app.post("/records/:id/exhibits/:sha256/hand-out", TAKERS, async (request, reply) => {
		const { id, sha256 } = placeOf(request);
		const { form } = await readBody(request.body);
		const { choice, copySha256 } = form;
		const input = validate(handOutInput, { choice, ...(copySha256 === undefined ? {} : { copySha256 }) });
		await chooseHandOut(deps, callerOf(request), id, sha256, input);
		return reply.redirect(exhibitPath(id, sha256), 303);
	});
	app.post("/records/:id/exhibits/:sha256/black-out", TAKERS, async (request, reply) => {
		const { id, sha256 } = placeOf(request);
		const { form } = await readBody(request.body);
		const read = readRectangles(form);
		if ("errors" in read) return sendFile(request, reply, form, read.errors, 400);
		const { copySha256, file } = await blackOut(deps, callerOf(request), id, sha256, read.input);
		if (handsOutAtOnce(file)) {
			await chooseHandOut(deps, callerOf(request), id, sha256, { choice: "blacked-out", copySha256 });
		}
		return reply.redirect(`${exhibitPath(id, sha256)}?made=${copySha256}`, 303);
	});

	app.get("/orders/:id/photo-code", READERS, async (request, reply) => {
		const caller = callerOf(request);
		const order = await readOrder(deps, caller, (request.params as { id: string }).id);
		const { code } = request.query as { code?: unknown };
		const values = typeof code === "string" ? { code } : {};
		const common = { order, crumbs: [orderCrumb(request, order)], values };
		if (values.code === undefined) return sendPage(reply, <PhotoCodePage {...common} found={null} errors={{}} />);
		try {
			const found = await findPhotoCode(deps, caller, order.id, values.code);
			return sendPage(reply, <PhotoCodePage {...common} found={found} errors={{}} />);
		} catch (error) {
			if (!(error instanceof Fault) || error.code !== "bad-input") throw error;
			return sendPage(reply, <PhotoCodePage {...common} found={null} errors={errorsOfFault(error)} />, 400);
		}
	});

	app.get("/orders/:id/carrier-photos", SHOP, async (request, reply) => {
		const caller = callerOf(request);
		const order = await readOrder(deps, caller, (request.params as { id: string }).id);
		const found = await readCarrierPhotos(deps, caller, order.id, validate(carrierPhotoQuery, request.query));
		const leg = legsOf(order).find((one) => one.leg === found.leg);
		return sendPage(
			reply,
			<CarrierPhotosPage
				crumbs={[orderCrumb(request, order)]}
				leg={leg === undefined ? null : say("papers.carrier-leg", leg)}
				found={found}
			/>,
		);
	});

	async function sendFile(
		request: FastifyRequest,
		reply: FastifyReply,
		values: FormValues,
		errors: FieldErrors,
		status: number,
	): Promise<FastifyReply> {
		const { id, sha256 } = placeOf(request);
		const caller = callerOf(request);
		const file = await readExhibitFile(deps, caller, id, sha256);
		const record = await readRecord(deps, caller, id);
		const order = await readOrder(deps, caller, record.orderId);
		const isOwn = caller.kind === "link" && caller.recordId === id;
		const up: readonly Crumb[] = [
			orderCrumb(request, order),
			...(caller.kind === "account" ? [{ href: `/records/${id}`, label: say("picture.back") }] : []),
		];
		const crumbs = isOwn ? [{ href: `/guided/${id}`, label: say("picture.back") }] : up;
		const formToken = formTokenFor(request);
		const { made } = request.query as { made?: unknown };
		return sendPage(reply, <ExhibitPage {...{ file, crumbs, formToken, values, errors, made }} />, status);
	}
}

/** @throws not-found where it is no SHA-256 */
function placeOf(request: FastifyRequest): { readonly id: string; readonly sha256: string } {
	const place = request.params as { id: string; sha256: string };
	if (!/^[0-9a-f]{64}$/.test(place.sha256)) throw fault("not-found");
	return place;
}

function orderCrumb(
	request: FastifyRequest,
	order: { readonly id: string; readonly item: { readonly maker: string; readonly model: string } },
): Crumb {
	const isShop = callerOf(request).kind === "account";
	return {
		href: `/orders/${order.id}${isShop ? "" : "/comparison"}`,
		label: itemName(order.item),
	};
}
