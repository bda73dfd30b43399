/** What each edition leaves out, and why, in sentences. */
import type { Edition } from "../../contract/report.ts";
import { say, type TextKey } from "../../texts/say.ts";

const LEFT_OUT: Readonly<Record<Edition, readonly string[]>> = {
	parties: ["planning", "damage-probability", "drafts", "method"],
	expert: ["planning", "damage-probability", "drafts"],
	carrier: [
		"comparison",
		"positions",
		"plans-carrier",
		"damage-probability",
		"readings",
		"recordings",
		"files",
		"addresses",
		"drafts",
	],
};

export function leftOut(edition: Edition): string[] {
	return LEFT_OUT[edition].map((what) => say(`report.left-out.${what}` as TextKey));
}
