/** A device's signature of an act of its link. */
import { z } from "zod";
import { sha256 } from "./common.ts";

export const partySignatureInput = z.strictObject({
	leafSha256: sha256,
	/** Uncompressed point of P-256: 04, x, y. */
	publicKey: z.string().regex(/^04[0-9a-f]{128}$/),
	/** r and s. */
	signature: z.string().regex(/^[0-9a-f]{128}$/),
});
export type PartySignatureInput = z.infer<typeof partySignatureInput>;
