/** The second stage at the door: the shape. Every fault is told at once, each with the place of its member. */
import type { z } from "zod";
import { type BadMember, escapePointer, invalid } from "../faults.ts";

/** The value, if it has the shape. @throws Fault bad-input with a JSON Pointer for each fault */
export function validate<Shape>(schema: z.ZodType<Shape>, value: unknown): Shape {
	const outcome = schema.safeParse(value);
	const bad = [...foreignText(value, ""), ...(outcome.success ? [] : outcome.error.issues.flatMap(badMembers))];
	if (bad.length > 0) throw invalid(dedupe(bad));
	return outcome.data as Shape;
}

/** A schema's fault as bad members. */
export function badMembers(issue: z.core.$ZodIssue): BadMember[] {
	const path = issue.path.map((step) => `/${escapePointer(String(step))}`).join("");
	switch (issue.code) {
		case "unrecognized_keys":
			return issue.keys.map((key) => ({ path: `${path}/${escapePointer(key)}`, code: "unknown-member" }));
		case "invalid_type":
			return [
				issue.input === undefined && issue.message.includes("undefined")
					? { path, code: "missing" }
					: { path, code: "wrong-type", facts: { expected: issue.expected } },
			];
		case "too_small":
			return [{ path, code: "too-small", facts: { least: String(issue.minimum), of: ofWhat(issue) } }];
		case "too_big":
			return [{ path, code: "too-big", facts: { most: String(issue.maximum), of: ofWhat(issue) } }];
		case "invalid_value":
			return [{ path, code: "not-in-list", facts: { list: issue.values.map(String).join(", ") } }];
		case "invalid_format":
			return [{ path, code: "wrong-format", facts: { format: issue.format, pattern: issue.pattern ?? "" } }];
		case "invalid_union": {
			// The branch that got furthest says best what is wrong.
			const nearest = [...issue.errors].sort((a, b) => depthOf(b) - depthOf(a))[0] ?? [];
			const inner = nearest.flatMap((error) => badMembers({ ...error, path: [...issue.path, ...error.path] }));
			return inner.length > 0 ? inner : [{ path, code: "wrong-form" }];
		}
		default:
			return [{ path, code: "refused", facts: { why: issue.message } }];
	}
}

/** What a bound is of: `string`, `array`, or a number, which may have to be beyond the bound itself. */
function ofWhat({ origin, inclusive }: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
	if (origin === "string" || origin === "array" || origin === "set") return origin;
	return inclusive === false ? "number-beyond" : "number";
}

function depthOf(issues: readonly z.core.$ZodIssue[]): number {
	return Math.max(0, ...issues.map((issue) => issue.path.length)) - issues.length / 100;
}

/** U+0000 and lone surrogates anywhere, also in names and in free-form members: neither the database nor JCS takes them. */
function foreignText(value: unknown, path: string): BadMember[] {
	if (typeof value === "string") {
		if (value.includes("\u0000")) return [{ path, code: "null-character" }];
		return value.isWellFormed() ? [] : [{ path, code: "lone-surrogate" }];
	}
	if (Array.isArray(value)) return value.flatMap((entry, index) => foreignText(entry, `${path}/${index}`));
	if (value === null || typeof value !== "object") return [];
	return Object.entries(value).flatMap(([name, entry]) => foreignText(entry, `${path}/${escapePointer(name)}`));
}

/** One fault per member is enough to mend it. */
function dedupe(bad: readonly BadMember[]): BadMember[] {
	const seen = new Set<string>();
	return bad.filter((member) => !seen.has(member.path) && seen.add(member.path));
}
