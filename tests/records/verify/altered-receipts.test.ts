/** Nobody alters a receipt unseen: every byte changed, every truncation, and bytes that are no receipt at all. */
import { randomBytes } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHECK_IDS } from "../../../src/records/verify/finding.ts";
import { type Verification, verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { isTextKey } from "../../../src/texts/say.ts";
import { orderLog, RECORD, written } from "./independent-maker.ts";

const log = orderLog();
const value = log.receipt(RECORD, { earlier: [3] });
const bytes = written(value);
const failures = (verification: Verification) => verification.checks.filter(({ outcome }) => outcome === "failed");

/** Which check has to see a change in the text that stands here, as a JSON Pointer; `form` sees any that breaks a form. */
const GUARDS: readonly (readonly [RegExp, readonly string[]])[] = [
	[/^\/about$/, ["form"]],
	[/^\/checkpoint$/, ["checkpoint-signature"]],
	[/^\/earlier\/\d+\//, ["earlier-checkpoints"]],
	[/^\/entries\/\d+\/entry$/, ["inclusion"]],
	[/^\/entries\/\d+\/statement$/, ["statement-hash"]],
	[/^\/entries\/\d+\/openings\//, ["openings"]],
	[/^\/entries\/\d+\/proof\//, ["inclusion"]],
	[/^\/keys\/\d+\//, ["checkpoint-signature"]],
];

/** Byte offsets of every text in the receipt, by its JSON Pointer. */
function textsOf(): { pointer: string; start: number; end: number }[] {
	const found: { pointer: string; start: number; end: number }[] = [];
	let at = 0;
	const skip = (text: string) => {
		at += Buffer.byteLength(text);
	};
	const walk = (node: unknown, pointer: string): void => {
		if (node === null || typeof node !== "object") {
			const text = JSON.stringify(node);
			found.push({ pointer, start: at + 1, end: at + Buffer.byteLength(text) - 1 });
			skip(text);
			return;
		}
		const isList = Array.isArray(node);
		const members = Object.entries(node);
		if (!isList) members.sort(([a], [b]) => (a < b ? -1 : 1));
		skip(isList ? "[" : "{");
		members.forEach(([name, member], index) => {
			if (index > 0) skip(",");
			if (!isList) skip(`${JSON.stringify(name)}:`);
			walk(member, `${pointer}/${name}`);
		});
		skip(isList ? "]" : "}");
	};
	walk(value, "");
	expect(at).toBe(bytes.length);
	return found;
}

describe("a good receipt", () => {
	it("is verified, every check told in the words of a text", () => {
		const verification = verifyReceipt(bytes);
		expect(failures(verification)).toEqual([]);
		expect(verification.outcome).toBe("verified");
		expect(verification.checks.map(({ id }) => id)).toEqual(CHECK_IDS);
		for (const { why } of verification.checks) expect(isTextKey(why?.sentence ?? "")).toBe(true);
	});
});

describe("every change of one byte", () => {
	it("is refused, by the check that guards the place, and the place is told", () => {
		const texts = textsOf();
		const unguarded = new Set<string>();
		for (let at = 0; at < bytes.length; at += 1) {
			const altered = Buffer.from(bytes);
			// Another bit at every place, so that letters become other letters as well as signs.
			altered[at] = (altered[at] ?? 0) ^ (1 << (at % 8));
			const failed = failures(verifyReceipt(altered));
			expect(failed.length, `byte ${at}`).toBeGreaterThan(0);
			expect(
				failed.every(({ where, why }) => where !== undefined && isTextKey(why?.sentence ?? "")),
				`byte ${at}`,
			).toBe(true);
			if (failed[0]?.id === "form") continue;
			const place = texts.find(({ start, end }) => at >= start && at < end);
			const guards = GUARDS.find(([pattern]) => pattern.test(place?.pointer ?? ""))?.[1] ?? [];
			const named = failed.map(({ id }) => id as string);
			if (!guards.every((guard) => named.includes(guard)) || guards.length === 0) {
				unguarded.add(`${place?.pointer} at ${at}: ${named.join(", ")}`);
			}
		}
		expect([...unguarded]).toEqual([]);
	}, 120_000);
	it("that leaves letters letters is still refused", () => {
		for (let at = 0; at < bytes.length; at += 5) {
			const old = String.fromCharCode(bytes[at] ?? 0);
			if (!/[0-9A-Za-z]/.test(old)) continue;
			const altered = Buffer.from(bytes);
			altered[at] = (/[0-8a-yA-Y]/.test(old) ? old.charCodeAt(0) + 1 : old.charCodeAt(0) - 1) & 0xff;
			expect(verifyReceipt(altered).outcome, `byte ${at}, ${old}`).toBe("not-verified");
		}
	}, 120_000);
});

describe("bytes that are no receipt", () => {
	it("are refused at every truncation, with the place where the file ends", () => {
		for (let length = 0; length < bytes.length; length += 1) {
			const [form, ...others] = verifyReceipt(bytes.subarray(0, length)).checks;
			expect(form?.outcome, `${length} bytes`).toBe("failed");
			expect(form?.where).toMatch(/^byte \d+$/);
			expect(Number(form?.where?.slice(5))).toBeLessThanOrEqual(length);
			expect(others.every(({ outcome }) => outcome === "not-possible")).toBe(true);
		}
	});
	it.each([
		["nothing", Buffer.alloc(0)],
		["a byte", Buffer.of(0)],
		["noise", randomBytes(5000)],
		["another JSON text", Buffer.from('{"a":1}')],
		["a list", Buffer.from("[]")],
		["a picture's beginning", Buffer.from("89504e470d0a1a0a0000000d49484452", "hex")],
		["endless nesting", Buffer.from('{"a":'.repeat(200_000))],
		["a receipt of a form that is not known", Buffer.from('{"$format":"handover-risk/receipt/3"}')],
		["a receipt after a byte order mark", Buffer.concat([Buffer.from("efbbbf", "hex"), bytes])],
		["two receipts", Buffer.concat([bytes, bytes])],
		["a receipt and a line end", Buffer.concat([bytes, Buffer.from("\n")])],
	])("are refused: %s", (_, other) => {
		const verification = verifyReceipt(other);
		expect(verification.outcome).toBe("not-verified");
		expect(verification.checks[0]).toMatchObject({ id: "form", outcome: "failed" });
		expect(verification.about).toBeNull();
	});
	it("never throw, whatever they are and whatever is given along", () => {
		fc.assert(
			fc.property(
				fc.uint8Array({ maxLength: 400 }),
				fc.array(fc.string()),
				fc.array(fc.uint8Array({ maxLength: 400 })),
				(any, keys, earlier) => {
					const given = { keys, earlier: earlier.map((file) => ({ name: "any", bytes: file })) };
					expect(verifyReceipt(any, given).outcome).toBe("not-verified");
					expect(verifyReceipt(bytes, given).checks.length).toBeGreaterThanOrEqual(CHECK_IDS.length);
				},
			),
			{ numRuns: 100 },
		);
	});
	it("never throw either where values of a receipt are replaced by others", () => {
		const bend = (node: unknown, path: readonly (string | number)[], by: unknown): unknown => {
			const [step, ...rest] = path;
			if (step === undefined) return by;
			if (Array.isArray(node)) return node.with(Number(step), bend(node[Number(step)], rest, by));
			return { ...(node as object), [step]: bend((node as Record<string, unknown>)[step], rest, by) };
		};
		const paths: (string | number)[][] = [];
		const collect = (node: unknown, path: (string | number)[]): void => {
			paths.push(path);
			if (node === null || typeof node !== "object") return;
			for (const [name, member] of Object.entries(node))
				collect(member, [...path, Array.isArray(node) ? Number(name) : name]);
		};
		collect(value, []);
		for (const path of paths) {
			for (const by of [null, true, 0, -1, 1.5, "", "x", "AAAA", [], [[]], {}, { a: 1 }]) {
				const verification = verifyReceipt(written(bend(value, path, by)));
				const isList = /^\/(earlier|openings|timeStamps)|\/openings$/.test(`/${path.join("/")}`);
				if (!(isList && Array.isArray(by) && by.length === 0)) {
					expect(verification.outcome, `${path.join("/")} ${JSON.stringify(by)}`).toBe("not-verified");
				}
			}
		}
	}, 60_000);
});
