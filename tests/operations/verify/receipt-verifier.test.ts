/** Receipts on a thread of their own: one after the other, within a time, and not too many waiting. */
import { describe, expect, it } from "vitest";
import { makeReceiptVerifier } from "../../../src/operations/verify/receipt-verifier.ts";
import { orderLog, RECORD, written } from "../../records/verify/independent-maker.ts";

const NOTHING = { keys: [], printed: [] };
const receipt = written(orderLog().receipt(RECORD));

describe("a verifier of receipts", () => {
	it("gives up what takes too long, and goes on with the next", async () => {
		const verify = makeReceiptVerifier(1);
		await expect(verify(receipt, NOTHING)).rejects.toMatchObject({ code: "too-large", status: 413 });
		const patient = makeReceiptVerifier();
		expect((await patient(receipt, NOTHING)).outcome).toBe("verified");
		expect((await patient(Buffer.alloc(0), NOTHING)).outcome).toBe("not-verified");
	});
	it("lets a few wait, and sends the others away with the time after which to come back", async () => {
		const verify = makeReceiptVerifier();
		const asked = await Promise.allSettled(Array.from({ length: 12 }, () => verify(receipt, NOTHING)));
		expect(asked.filter(({ status }) => status === "fulfilled")).toHaveLength(8);
		const refused = asked.flatMap((one) => (one.status === "rejected" ? [one.reason] : []));
		expect(refused).toHaveLength(4);
		for (const reason of refused) expect(reason).toMatchObject({ code: "too-many", status: 429, retryAfterS: 10 });
	});
});
