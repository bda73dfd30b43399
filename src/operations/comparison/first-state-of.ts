/** What the arrival record says of how the first test was made. */
import { type FirstState, firstState } from "../../calculations/comparison/first-state.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { showsSameItem } from "./same-item.ts";

/** Null where the later record is no arrival record: only that tells of the state in which it came. */
export function firstStateOf({ arrival, comparison, consignment }: ConsignmentComparison): FirstState | null {
	if (arrival === null || arrival.view.stage !== "arrival") return null;
	const { statement } = arrival;
	const { setUp, firstPowerOn, parcel, observed, readings } = statement;
	const inHand =
		parcel?.inHand?.at ?? consignment.facts.inHandAt ?? parcel?.delivered?.at ?? consignment.facts.deliveredAt;
	const powered = readings.some(
		({ check, notTested }) => !check.startsWith("visual-") && check !== "mass" && notTested === undefined,
	);
	return firstState({
		tested: statement.state !== "not-tested" || powered,
		works: statement.state === "good",
		startedAfterH: inHand === undefined ? undefined : (Date.parse(observed.at) - Date.parse(inHand)) / 3_600_000,
		firstAttemptEver: firstPowerOn?.firstAttemptEver,
		waitedH: firstPowerOn?.waitedH,
		wetnessSeen: firstPowerOn?.wetnessSeen,
		workDoneBefore: firstPowerOn?.workDoneBefore,
		otherItem: comparison.outcome === "identity-mismatch",
		sameItem: showsSameItem(comparison),
		controlBefore: setUp.controlBefore,
		controlAfter: setUp.controlAfter,
		platforms: setUp.platforms,
		setUpRecorded: [
			setUp.host ?? setUp.benchId,
			setUp.slot ?? setUp.benchId,
			setUp.supply ?? setUp.benchId,
			setUp.driver,
		].every((told) => told !== undefined),
		filmed: statement.exhibits.some(({ mediaType }) => mediaType.startsWith("video/")),
	});
}
