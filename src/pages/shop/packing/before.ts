/** What the planner showed before a number was changed, carried along in the form: nothing of a plan is kept. */
import { z } from "zod";
import type { SpokenPackaging } from "../../packaging/packaging-result.tsx";

const before = z.strictObject({
	dropM: z.number().nullable(),
	checks: z.record(z.string().max(40), z.tuple([z.string().max(20), z.number().nullable()])),
});
export type Before = z.infer<typeof before>;

/** Null where nothing was shown, and for anything that this page did not write. */
export function readBefore(sent: string | undefined): Before | null {
	if (sent === undefined || sent === "") return null;
	try {
		const outcome = before.safeParse(JSON.parse(sent));
		return outcome.success && Object.values(outcome.data.checks).every(([verdict]) => VERDICTS.has(verdict))
			? outcome.data
			: null;
	} catch {
		return null;
	}
}
const VERDICTS = new Set(["meets", "provisional", "marginal", "not-assessed", "falls-short"]);

export function writeBefore({ result }: SpokenPackaging): string {
	if (result === null) return "";
	const shown: Before = {
		dropM: result.protectedDropHeightM,
		checks: Object.fromEntries(result.checks.map(({ id, verdict, margin }) => [id, [verdict, margin]])),
	};
	return JSON.stringify(shown);
}
