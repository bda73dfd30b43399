/** What an operation refused, beside the fields of a page's form. */
import { type BadMember, Fault } from "../../faults.ts";
import { faultWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors } from "../components/form.tsx";
import { pageWords } from "./page-words.ts";

/**
 * The errors of a refused form by field name; `names` maps a JSON Pointer to the form's own field where they differ.
 * What belongs to no field stands under `form`. Anything but bad input is thrown on.
 */
export function errorsOfFault(error: unknown, names: Readonly<Record<string, string>> = {}): FieldErrors {
	if (
		!(error instanceof Fault) ||
		error.status >= 500 ||
		["not-found", "forbidden", "not-signed-in"].includes(error.code)
	) {
		throw error;
	}
	if (error.code === "idempotency-conflict") return { form: say("form.bad.sent-before") };
	if (error.members.length === 0) return { form: faultWords(error.code, error.facts) };
	return Object.fromEntries(error.members.map((member) => [fieldOf(member, names), pageWords(member)]));
}

function fieldOf({ path }: BadMember, names: Readonly<Record<string, string>>): string {
	return names[path] ?? path.slice(1).replaceAll("/", ".");
}

/** The fields of a posted form as texts; empty ones are left out, as a request leaves them out. */
export function filledIn(form: Readonly<Record<string, string>>): Record<string, string> {
	return Object.fromEntries(
		Object.entries(form)
			.map(([name, value]) => [name, value.trim().replaceAll("\r\n", "\n")] as const)
			.filter(([, value]) => value !== ""),
	);
}
