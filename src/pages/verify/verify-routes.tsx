/** `/verify`: a receipt brought by anyone, and the file that does the same without this server. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { formTokenFor, OPEN_TO_ALL, openToAllWithFiles } from "../../access/callers.ts";
import { fault } from "../../faults.ts";
import { RECEIPT_LIMIT, type ReceiptVerifier } from "../../operations/verify/receipt-verifier.ts";
import { sha256Of } from "../../records/verify/hashes.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { sendClosed } from "../customer/entry-routes.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { type Verified, VerifyPage } from "./verify-page.tsx";
import { verifyWords } from "./words.ts";

const OFFLINE_FILE = fileURLToPath(new URL("../../../dist/pages/browser/verify-offline.html", import.meta.url));
const UPLOAD = openToAllWithFiles({ fileSize: RECEIPT_LIMIT + 1, files: 1, fields: 5, fieldSize: 4000 });

export function registerVerifyPages(app: FastifyInstance, verifyReceipt: ReceiptVerifier): void {
	const offline = readFileSync(OFFLINE_FILE);
	app.register(async (pages) => {
		pages.setErrorHandler(sendClosed);
		pages.get("/verify", { ...OPEN_TO_ALL, schema: { hide: true } }, async (request, reply) =>
			send(request, reply, { values: {}, errors: {}, verified: null }),
		);
		pages.post("/verify", { ...UPLOAD, schema: { hide: true } }, async (request, reply) => {
			const { form, files } = await readBody(request.body);
			const values = { key: form.key?.trim(), size: form.size?.trim(), root: form.root?.trim() };
			const [file] = files;
			if (file === undefined) {
				return send(
					request,
					reply,
					{ values, errors: { receipt: verifyWords("verify.no-file") }, verified: null },
					400,
				);
			}
			if (file.bytes.length > RECEIPT_LIMIT) throw fault("too-large");
			const verification = await verifyReceipt(file.bytes, {
				keys: [values.key ?? ""].filter(isTyped),
				printed: [`${values.size ?? ""} ${values.root ?? ""}`].filter(isTyped),
			});
			const verified = { verification, file: { name: file.fileName, sha256: sha256Of(file.bytes) } };
			return send(request, reply, { values, errors: {}, verified });
		});
		pages.get("/verify/offline.html", { ...OPEN_TO_ALL, schema: { hide: true } }, async (_request, reply) =>
			reply
				.type("text/html; charset=utf-8")
				.header("Content-Disposition", 'attachment; filename="verify-receipts.html"')
				.send(offline),
		);
	});
}

function isTyped(text: string): boolean {
	return text.trim() !== "";
}

function send(
	request: FastifyRequest,
	reply: FastifyReply,
	shown: { readonly values: FormValues; readonly errors: FieldErrors; readonly verified: Verified | null },
	status = 200,
) {
	const { values, errors, verified } = shown;
	return sendPage(
		reply,
		<VerifyPage formToken={formTokenFor(request)} values={values} errors={errors} verified={verified} />,
		status,
	);
}
