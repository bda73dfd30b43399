/** Checks that an end did not test, in groups that a reader can take in: where they lack, and of what kind they are. */
import type { ComparedCheck, ComparisonRow } from "../../calculations/comparison/types.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { isTested } from "./is-tested.ts";
import { rowName } from "./lead-screen.ts";

const WHERE = ["both", "departure", "arrival"] as const;
const KINDS = ["looked", "starts", "resistance", "voltage", "values", "counted"] as const;

/** Of those that lack at both ends, or at one alone. */
export interface UntestedChecks {
	readonly where: (typeof WHERE)[number];
	/** The kind by name, and its checks in one text. */
	readonly kinds: readonly (readonly [kind: string, checks: string])[];
}

export function untestedChecks(rows: readonly ComparisonRow[], speaker: Speaker = ENGLISH): UntestedChecks[] {
	const { say, between } = speaker;
	return WHERE.flatMap((where) => {
		const here = rows.filter((row) => lackOf(row) === where);
		const kinds = KINDS.flatMap((kind) => {
			const names = here.filter(({ check }) => kindOf(check) === kind).map((row) => named(row, speaker));
			return names.length === 0 ? [] : [[say(`comparison-page.untested-kind.${kind}`), names.join(between)] as const];
		});
		return kinds.length === 0 ? [] : [{ where, kinds }];
	});
}

function lackOf({ departure, arrival }: ComparisonRow): UntestedChecks["where"] | null {
	if (isTested(arrival)) return isTested(departure) ? null : "departure";
	return isTested(departure) ? "arrival" : "both";
}

function kindOf({ kind, unitSymbol }: ComparedCheck): (typeof KINDS)[number] {
	if (kind === "visual") return "looked";
	if (kind === "outcome") return "starts";
	if (kind === "count") return "counted";
	if (unitSymbol === "Ω") return "resistance";
	return unitSymbol === "V" ? "voltage" : "values";
}

/** With the reasons that were given. */
function named(row: ComparisonRow, speaker: Speaker): string {
	const given = [row.departure?.notTested, row.arrival?.notTested].flatMap((reason) =>
		reason === undefined || reason === "not-recorded" ? [] : [speaker.say(`arrival.not-tested.${reason}` as ReportKey)],
	);
	const name = rowName(row, speaker);
	return given.length === 0 ? name : `${name} (${[...new Set(given)].join(", ")})`;
}
