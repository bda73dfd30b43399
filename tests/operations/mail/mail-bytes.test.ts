/**
 * A mail's bytes, read by Python's `email` (RFC 5322, RFC 2047, MIME): whatever stands in a name, no header is added or
 * ended, and what a person reads is what was meant. Addresses by the rule of `contract/mail-address.ts`, with names of RFC
 * 6531 and RFC 5890 on either side of it.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sendableAddress } from "../../../src/contract/mail-address.ts";
import { composeMail, type MailFacts, oneLine } from "../../../src/operations/mail/compose-mail.ts";
import { mailBytes } from "../../../src/operations/mail/mail-bytes.ts";
import { ENGLISH } from "../../../src/texts/speaker.ts";
import { readMailBytes } from "../../setup/mail-server.ts";

const HEADERS = [
	"Auto-Submitted",
	"Content-Transfer-Encoding",
	"Content-Type",
	"Date",
	"From",
	"MIME-Version",
	"Message-ID",
	"Subject",
	"To",
];
const facts = (over: Partial<MailFacts>): MailFacts => ({
	orderId: "ord_00000000000000000000",
	shop: "Werkbank Nord",
	item: "Ostwind Orca 24",
	reader: "Mara Quist",
	now: new Date("2026-03-02T09:00:00Z"),
	checkpoint: null,
	about: { kind: "code", code: "123456" },
	...over,
});
const bytesOf = (over: Partial<MailFacts>, name = "Post") =>
	mailBytes(composeMail(facts(over), ENGLISH), {
		id: "mal_00000000000000000000",
		from: { name: oneLine(name), address: "post@nord.example" },
		to: "mara@quist.example",
		date: new Date("2026-03-02T09:00:00Z"),
	});

describe("headers", () => {
	it("are the same whatever someone typed, line breaks and headers included", async () => {
		const nasty = fc.oneof(
			fc.string({ unit: "grapheme", maxLength: 80 }),
			fc.string({ unit: "binary", maxLength: 40 }),
			fc
				.tuple(
					fc.constantFrom("\r\n", "\n", "\r", "\u2028", "\u0085", "\r\n\r\n", "=?utf-8?q?=0d=0a?=", '", <'),
					fc.string(),
				)
				.map(([breaks, rest]) => `Mara${breaks}Bcc: all@example.org${breaks}${rest}`),
		);
		const samples = fc.sample(fc.record({ shop: nasty, item: nasty, reader: nasty }), { numRuns: 300, seed: 19 });
		const usable = samples.filter(({ shop, item, reader }) => `${shop}${item}${reader}`.isWellFormed());
		expect(usable.length).toBeGreaterThan(200);
		const read = readMailBytes(await Promise.all(usable.map((sample) => bytesOf(sample, sample.shop))));
		for (const [place, mail] of read.entries()) {
			expect([...mail.headers].sort(), JSON.stringify(usable[place])).toEqual(HEADERS);
			expect(mail.to).toBe("mara@quist.example");
			expect(mail.attachments).toEqual([]);
			expect(mail.text).toContain("\n123456\n");
		}
	});
	it("show names of other scripts as they were typed", async () => {
		const shop = "Werkbank Süd · 修理 ✓";
		// In an address this version of the parser puts a space between the parts of a long name (RFC 2047, 6.2, has none).
		const [mail] = readMailBytes([await bytesOf({ shop, reader: "Zoë Øst" }, "Süd 修理")]);
		expect(mail).toMatchObject({ subject: `${shop}: a code`, from: "Süd 修理 <post@nord.example>", defects: [] });
		expect(mail?.text).toContain("Hello Zoë Øst,");
	});
});

describe("addresses", () => {
	it.each([
		["mara@quist.example", "mara@quist.example"],
		["mara.q+card@QUIST.example", "mara.q+card@quist.example"],
		// The A-label of RFC 5890's own kind: the letters of `bücher`, a well-known value of the conversion.
		["mara@bücher.example", "mara@xn--bcher-kva.example"],
		["o'neil@quist.example", "o'neil@quist.example"],
	])("%s goes out as %s", (typed, sent) => {
		expect(sendableAddress(typed)).toBe(sent);
	});
	it.each([
		"mara",
		"@quist.example",
		"mara@",
		"mara@localhost",
		"mära@quist.example",
		"mara@@quist.example",
		".mara@quist.example",
		"ma..ra@quist.example",
		'"mara q"@quist.example',
		"mara@quist.example\r\nBcc: all@example.org",
		"mara@quist.example, all@example.org",
		"mara@[127.0.0.1]",
		"mara@127.0.0.1",
		"mara@quist.example/x",
		"mara@quist.example:25",
		"<mara@quist.example>",
		`${"m".repeat(65)}@quist.example`,
		`mara@${"q".repeat(64)}.example`,
		`mara@${`${"q".repeat(60)}.`.repeat(5)}example`,
	])("%j is refused", (typed) => {
		expect(sendableAddress(typed)).toBeNull();
	});
});
