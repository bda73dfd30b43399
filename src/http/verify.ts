/** Verification of a receipt for anyone. The body is the receipt's bytes, whatever its media type says. */
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../access/callers.ts";
import { verificationView, verifyQuery } from "../contract/verify.ts";
import { validate } from "../operations/validate.ts";
import { RECEIPT_LIMIT, type ReceiptVerifier } from "../operations/verify/receipt-verifier.ts";
import { speak } from "../texts/say.ts";
import { rawBody, takeRawBodies } from "./exhibits.ts";

export function registerVerify(app: FastifyInstance, verifyReceipt: ReceiptVerifier): void {
	app.register(async (raw) => {
		takeRawBodies(raw);
		raw.post(
			"/api/v1/verify",
			{
				...OPEN_TO_ALL,
				bodyLimit: RECEIPT_LIMIT,
				schema: {
					summary: "Verify a receipt, its bytes as the body; nothing is kept.",
					querystring: verifyQuery,
					response: { 200: verificationView },
				},
			},
			async (request) => {
				const { key, printed } = validate(verifyQuery, request.query);
				const given = {
					keys: key === undefined ? [] : [key],
					printed: printed === undefined ? [] : [printed],
				};
				return speak(await verifyReceipt(rawBody(request.body), given));
			},
		);
	});
}
