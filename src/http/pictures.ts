/** Pictures among the exhibits: thumbnails, copies, what others get, photos for the carrier, codes beside the board. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../access/callers.ts";
import {
	blackOutInput,
	carrierPhotoList,
	carrierPhotoQuery,
	exhibitFileList,
	exhibitFileView,
	handOutInput,
	photoCodeList,
	photoCodeQuery,
	photoCodeView,
} from "../contract/pictures.ts";
import { fault } from "../faults.ts";
import type { Deps } from "../operations/deps.ts";
import { fetchCarrierPhoto, readCarrierPhotos } from "../operations/pictures/carrier-photos.ts";
import { blackOut, chooseHandOut } from "../operations/pictures/choose-hand-out.ts";
import {
	type FileBytes,
	fetchCopy,
	fetchThumbnail,
	readExhibitFile,
	readExhibitFiles,
} from "../operations/pictures/exhibit-file-views.ts";
import { findPhotoCode, givePhotoCode } from "../operations/pictures/photo-codes.ts";
import { validate } from "../operations/validate.ts";
import { SHOP_AND_LINKS } from "./orders.ts";
import { pathId } from "./parts.ts";

const FILE = "/api/v1/records/:id/exhibits/:sha256";
const SHOP_AND_RECORD = openTo("account", "link:record");
/** The taker may be a party with any link of its own. */
const TAKERS = openTo("account", "link:record", "link:settle");

export function registerPictures(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/records/:id/files",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "The files of a record with what they claim, their copies, and what others get of them.",
				response: { 200: exhibitFileList },
			},
		},
		async (request) => ({ files: await readExhibitFiles(deps, callerOf(request), pathId(request, "rec")) }),
	);
	app.get(
		FILE,
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "A file of a record: what it claims, its copies, what others get.",
				response: { 200: exhibitFileView },
			},
		},
		async (request) => readExhibitFile(deps, callerOf(request), pathId(request, "rec"), pathSha256(request, "sha256")),
	);
	app.get(
		`${FILE}/thumbnail`,
		{ ...SHOP_AND_LINKS, schema: { summary: "A small JPEG of what the caller may see." } },
		async (request, reply) =>
			sendPicture(
				request,
				reply,
				await fetchThumbnail(deps, callerOf(request), pathId(request, "rec"), pathSha256(request, "sha256")),
			),
	);
	app.get(
		`${FILE}/copies/:copy`,
		{ ...SHOP_AND_LINKS, schema: { summary: "A copy by its own SHA-256: a JPEG without metadata." } },
		async (request, reply) => {
			const [sha256, copy] = [pathSha256(request, "sha256"), pathSha256(request, "copy")];
			const file = await fetchCopy(deps, callerOf(request), pathId(request, "rec"), sha256, copy);
			return sendPicture(request, reply, file);
		},
	);
	app.post(
		`${FILE}/hand-out`,
		{
			...TAKERS,
			schema: {
				summary: "Say what others get of a file from now on; its taker alone.",
				body: handOutInput,
				response: { 200: exhibitFileView },
			},
		},
		async (request) => {
			const input = validate(handOutInput, request.body);
			const sha256 = pathSha256(request, "sha256");
			return chooseHandOut(deps, callerOf(request), pathId(request, "rec"), sha256, input);
		},
	);
	app.post(
		`${FILE}/copies`,
		{
			...TAKERS,
			schema: {
				summary: "Make a copy of a picture with parts blacked out; its taker alone.",
				body: blackOutInput,
				response: { 201: exhibitFileView },
			},
		},
		async (request, reply) => {
			const input = validate(blackOutInput, request.body);
			const id = pathId(request, "rec");
			const sha256 = pathSha256(request, "sha256");
			const { copySha256, file } = await blackOut(deps, callerOf(request), id, sha256, input);
			const place = `/api/v1/records/${id}/exhibits/${sha256}/copies/${copySha256}`;
			return reply.status(201).header("Location", place).send(file);
		},
	);
	app.post(
		"/api/v1/records/:id/photo-code",
		{
			...SHOP_AND_RECORD,
			schema: {
				summary: "A code from the newest checkpoint, to be written beside the board in a draft's photos.",
				response: { 200: photoCodeView },
			},
		},
		async (request) => givePhotoCode(deps, callerOf(request), pathId(request, "rec")),
	);
	app.get(
		"/api/v1/orders/:id/photo-codes",
		{
			...SHOP_AND_LINKS,
			schema: {
				summary: "The checkpoint that a code seen in a photo of this order was made from.",
				querystring: photoCodeQuery,
				response: { 200: photoCodeList },
			},
		},
		async (request) => {
			const { code } = validate(photoCodeQuery, request.query);
			return { codes: await findPhotoCode(deps, callerOf(request), pathId(request, "ord"), code) };
		},
	);
	app.get(
		"/api/v1/orders/:id/carrier-photos",
		{
			...openTo("account"),
			schema: {
				summary: "The photos for the carrier, numbered as in its report.",
				querystring: carrierPhotoQuery,
				response: { 200: carrierPhotoList },
			},
		},
		async (request) => {
			const of = validate(carrierPhotoQuery, request.query);
			return readCarrierPhotos(deps, callerOf(request), pathId(request, "ord"), of);
		},
	);
	app.get(
		"/api/v1/orders/:id/carrier-photos/:name",
		{
			...openTo("account"),
			schema: {
				summary: "One of them, `E1.jpg`: a JPEG without metadata of at most 2 MB.",
				querystring: carrierPhotoQuery,
			},
		},
		async (request, reply) => {
			const of = validate(carrierPhotoQuery, request.query);
			const { name } = request.params as { name: string };
			const number = /^(E[1-9][0-9]{0,3})\.jpg$/.exec(name)?.[1];
			if (number === undefined) throw fault("not-found");
			const { bytes } = await fetchCarrierPhoto(deps, callerOf(request), pathId(request, "ord"), number, of);
			return reply
				.type("image/jpeg")
				.header("Content-Disposition", `attachment; filename="${name}"`)
				.header("Cache-Control", "private, no-cache")
				.send(bytes);
		},
	);
}

function pathSha256(request: FastifyRequest, name: "sha256" | "copy"): string {
	const value = (request.params as Readonly<Record<string, string | undefined>>)[name] ?? "";
	if (!/^[0-9a-f]{64}$/.test(value)) throw fault("not-found");
	return value;
}

/** What others get may change, so a browser asks again; the same bytes are not sent twice. */
function sendPicture(
	request: FastifyRequest,
	reply: FastifyReply,
	{ bytes, sha256, fileName }: FileBytes,
): FastifyReply {
	const tag = `"${sha256}"`;
	reply.header("ETag", tag).header("Cache-Control", "private, no-cache");
	if (request.headers["if-none-match"] === tag) return reply.status(304).send();
	return reply
		.type("image/jpeg")
		.header("Content-Disposition", `inline; filename*=UTF-8''${encodeURIComponent(fileName)}`)
		.send(bytes);
}
