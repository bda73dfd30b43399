/** What each edition leaves out, and why, in sentences. */
import type { Edition } from "../../contract/report.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

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

export function leftOut(edition: Edition, { say }: Speaker = ENGLISH): string[] {
	return LEFT_OUT[edition].map((what) => say(`report.left-out.${what}` as ReportKey));
}
