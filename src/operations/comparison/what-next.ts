/** What to do next after a comparison, the most pressing first; keys under `comparison-page.next`. */
import { powerStop } from "../records/power-stop.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { isTested } from "./is-tested.ts";
import { isReported } from "./told-second-hand.ts";

/** What was done about the leg beside its records. */
export interface Handled {
	/** A notice to the carrier is kept. */
	readonly carrierTold: boolean;
	/** Both sides agreed on a settlement that holds. */
	readonly settled: boolean;
}

export const NOTHING_HANDLED: Handled = { carrierTold: false, settled: false };

export function whatNext(found: ConsignmentComparison, { carrierTold, settled }: Handled): string[] {
	const { comparison, arrival, line, departure } = found;
	const statement = arrival?.statement;
	const stopped = statement === undefined ? null : powerStop(statement);
	const pressing = [
		...(comparison.outcome === "moisture-hold" || stopped === "wet" ? ["moisture"] : []),
		...(stopped === "sign" || stopped === "cell" ? ["stop"] : []),
	];
	const lost = line.changes.filter((change) => change.kind === "lost" && change.spans.length > 0);
	const onTheWay = lost.some(({ spans }) => spans.some((place) => line.spans[place]?.kind !== "stay"));
	const carrier = !carrierTold && (onTheWay || statement?.parcel?.outerDamage === "seen") ? ["carrier"] : [];
	// The carrier is no side of the settlement, and a stop sign stands whatever was agreed.
	if (settled) return ["settled", ...pressing, ...(comparison.outcome === "identity-mismatch" ? [] : carrier)];
	if (comparison.outcome === "identity-mismatch") return ["keep", "identity", "talk"];
	const starts = statement?.state !== "does-not-start";
	const next = [
		...(comparison.outcome === "state-conflict" ? ["conflict"] : []),
		...pressing,
		...(isReported(departure) || isReported(arrival) ? ["own-record"] : []),
		...(!starts && stopped === null ? triesElsewhere(statement?.setUp) : []),
		...carrier,
		...(comparison.rows.some(({ comparison: { result } }) => result?.verdict === "not-comparable")
			? ["same-instrument"]
			: []),
		...(stopped === null && comparison.rows.some((row) => isTested(row.departure) && !isTested(row.arrival))
			? ["untested"]
			: []),
	];
	const well = starts && lost.length === 0 && next.every((key) => key === "untested" || key === "same-instrument");
	return well ? ["all-well", ...next] : ["keep", ...next, "talk"];
}

function triesElsewhere(setUp: { readonly controlBefore?: boolean; readonly platforms?: number } | undefined) {
	return [
		...(setUp?.controlBefore === true ? [] : ["control"]),
		...((setUp?.platforms ?? 1) < 2 ? ["second-platform"] : []),
	];
}
