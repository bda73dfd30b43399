/** How passphrases and codes are kept: at the service's own cost, as another implementation of RFC 7914 derives it. */
import { scrypt } from "@noble/hashes/scrypt.js";
import { expect, it } from "vitest";
import { hashSecret, SECRET_COST, secretMatches } from "../../src/access/secrets.ts";

it("derives the key that another library derives", async () => {
	const salt = Buffer.from("00112233445566778899aabbccddeeff", "hex");
	const hash = await hashSecret("several words are easy", salt, SECRET_COST);
	const key = scrypt("several words are easy", salt, { N: 2 ** 15, r: 8, p: 1, dkLen: 32 });
	expect(hash).toBe(`scrypt$32768$8$1$${salt.toString("hex")}$${Buffer.from(key).toString("hex")}`);
	expect(await secretMatches("several words are easy", hash)).toBe(true);
	expect(await secretMatches("several words are eas", hash)).toBe(false);
});
