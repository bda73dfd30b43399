/** Where a change may come from: the documented rules over what the records hold and what whoever asks adds. */
import { goodnessFrom } from "../../calculations/comparison/goodness.ts";
import type { Judged } from "../../calculations/judged.ts";
import { faultOrigin } from "../../calculations/origin/fault-origin.ts";
import type { FaultOrigin, OriginTestRule } from "../../calculations/origin/types.ts";
import { FINDING_RULES } from "../../catalogue/origins/findings.ts";
import { ORIGIN_TEST_RULES } from "../../catalogue/origins/tests.ts";
import { powerStop } from "../records/power-stop.ts";
import type { ShockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { type DerivedFinding, derivedFindings } from "./derived-findings.ts";

/** Findings that whoever asks adds; they go before what was derived and are kept nowhere. */
export interface GivenFindings {
	readonly present: readonly string[];
	readonly absent: readonly string[];
}

export interface OriginOf {
	readonly findings: readonly DerivedFinding[];
	readonly judged: Judged<FaultOrigin>;
}

/** Null where nothing is there to explain: nothing became worse, nothing is at odds, and nobody asks. */
export function originOf(
	found: ConsignmentComparison,
	shock: ShockOnLeg | null,
	given: GivenFindings,
): OriginOf | null {
	const own = { recordIds: [], recordingIds: [], says: null, given: true } as const;
	const added = [
		...given.present.map((id) => ({ id, state: "present", ...own }) as const),
		...given.absent.map((id) => ({ id, state: "absent", ...own }) as const),
	];
	const asked = added.some(({ state }) => state === "present");
	if (!asked && !asksForOrigin(found)) return null;
	const findings = [...derivedFindings(found, shock).filter(({ id }) => !added.some((one) => one.id === id)), ...added];
	return { findings, judged: faultOrigin({ findings, rules: FINDING_RULES, testRules: testsThatFit(found) }) };
}

/** None that powers an item that must not be powered, or asks a dead one to start; while two records name two items, only those that tell which it is. */
function testsThatFit({ comparison, arrival }: ConsignmentComparison): readonly OriginTestRule[] {
	if (comparison.outcome === "identity-mismatch") {
		return ORIGIN_TEST_RULES.filter(({ likely }) => likely.includes("other-item"));
	}
	const stopped = comparison.outcome === "moisture-hold" || (arrival !== null && powerStop(arrival.statement) !== null);
	if (stopped) return ORIGIN_TEST_RULES.filter(({ needsPower }) => !needsPower);
	const starts = arrival?.statement.state !== "does-not-start";
	return starts ? ORIGIN_TEST_RULES : ORIGIN_TEST_RULES.filter(({ needsStart }) => !needsStart);
}

function asksForOrigin({ comparison, departure, arrival, line }: ConsignmentComparison): boolean {
	if (departure === null || arrival === null) return false;
	if (comparison.outcome === "state-conflict" || comparison.outcome === "identity-mismatch") return true;
	const worse = comparison.rows.some(({ comparison: { result } }) => {
		if (result === null) return false;
		const lost =
			goodnessFrom(result.conformity.arrival) === "not-good" &&
			goodnessFrom(result.conformity.departure) !== "not-good";
		return lost || (result.verdict === "differs" && result.direction === "worse");
	});
	return worse || line.changes.some(({ kind, afterRecordId }) => kind === "lost" && afterRecordId !== null);
}
