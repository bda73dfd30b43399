/** A comparison as the API gives it: sentences in words, checks by name, nothing of it stored. */
import { endOf, ruleOf } from "../../calculations/comparison/check-rule.ts";
import { endInterval } from "../../calculations/comparison/end-interval.ts";
import type { ComparisonRow } from "../../calculations/comparison/types.ts";
import { FINDING_RULES } from "../../catalogue/origins/findings.ts";
import type { ComparisonView } from "../../contract/comparison.ts";
import { isTextKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import type { ShockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import { nameOf } from "./check-name.ts";
import type { ConsignmentComparison } from "./compare-consignment.ts";
import { firstStateOf } from "./first-state-of.ts";
import { leadScreen } from "./lead-screen.ts";
import { type GivenFindings, type OriginOf, originOf } from "./origin-of.ts";
import { type Handled, NOTHING_HANDLED } from "./what-next.ts";

export function comparisonViewOf(
	found: ConsignmentComparison,
	shock: ShockOnLeg | null,
	given: GivenFindings,
	speaker: Speaker = ENGLISH,
	handled: Handled = NOTHING_HANDLED,
): ComparisonView {
	const { comparison, departure, arrival } = found;
	return speaker.speak({
		consignmentId: found.consignment.id,
		departureRecordId: departure?.view.id ?? null,
		arrivalRecordId: arrival?.view.id ?? null,
		outcome: comparison.outcome,
		why: comparison.why,
		lead: departure === null || arrival === null ? null : leadScreen(found, (at) => at, speaker, handled),
		identity: comparison.identity,
		firstState: firstStateOf(found),
		betterOnArrival: comparison.betterOnArrival,
		adjustedFor: comparison.adjustedFor,
		checks: comparison.rows.map((row) => ({
			check: row.check.id,
			name: nameOf(row.check, row.departure?.definitionName ?? row.arrival?.definitionName, speaker),
			unit: row.check.unitSymbol ?? null,
			departure: endViewOf(row, "departure"),
			arrival: endViewOf(row, "arrival"),
			comparison: row.comparison,
		})),
		link: found.link,
		custodyLine: found.line,
		records: found.records.map(({ view, statement }) => ({
			recordId: view.id,
			stage: view.stage,
			holderId: view.holderId,
			consignmentId: view.consignmentId,
			provenance: view.provenance,
			observedAt: statement.observed.at,
			sealedAt: view.sealed?.at ?? "",
			state: statement.state,
		})),
		origin: originView(originOf(found, shock, given)),
		disclaimer: { sentence: "comparison-page.disclaimer" },
	}) as unknown as ComparisonView;
}

/** What one end says of a check, with the interval in which the true value lies. */
function endViewOf(row: ComparisonRow, end: "departure" | "arrival") {
	const reading = row[end];
	if (reading === null) return null;
	const { condition, provenance, instrument, values, count, exposure, trials, successes, notTested } = reading;
	return {
		condition,
		provenance: provenance ?? null,
		instrumentId: instrument?.id ?? null,
		values: values ?? null,
		count: count ?? null,
		exposure: exposure ?? null,
		trials: trials ?? null,
		successes: successes ?? null,
		notTested: notTested ?? null,
		estimate: endInterval(ruleOf(row.check, row.departure), endOf(row.check, reading, undefined)),
	};
}

function originView(origin: OriginOf | null) {
	if (origin === null) return null;
	const { judged, findings } = origin;
	const absent = new Set(findings.filter(({ state }) => state === "absent").map(({ id }) => id));
	// What was looked for and not found says so wherever it counts; where something is missing, it is named plainly.
	// A recorder says what it saw, or why it does not tell.
	const own = (id: string) => findings.find((finding) => finding.id === id)?.says ?? null;
	const named = (id: string) => ({ id, says: own(id) ?? { sentence: `origin.finding-${id}` } });
	const words = (id: string) => {
		const key = `origin.absent-${id}`;
		return absent.has(id) && isTextKey(key) ? { id, says: { sentence: key } } : named(id);
	};
	const missing = (ids: readonly string[], ...sides: readonly string[]) =>
		ids.filter((id) => sides.includes(FINDING_RULES.find((rule) => rule.id === id)?.side ?? "either")).map(named);
	return {
		findings: findings.map((finding) => ({
			...words(finding.id),
			state: finding.state,
			recordIds: finding.recordIds,
			recordingIds: finding.recordingIds,
			given: finding.given,
		})),
		origins: (judged.result?.origins ?? []).map((one) => ({
			id: one.id,
			name: { sentence: `origin.${one.id}` },
			support: one.support,
			why: one.why,
			for: one.for.map(words),
			against: one.against.map(words),
			missing: {
				departure: missing(one.missing, "departure", "either"),
				transit: missing(one.missing, "transit"),
				arrival: missing(one.missing, "arrival", "either"),
			},
			countedFor: one.countedFor,
			countedAgainst: one.countedAgainst,
		})),
		nextTests: (judged.result?.nextTests ?? []).map((test) => ({
			id: test.id,
			says: { sentence: `origin.test-${test.id}` },
			destructive: test.destructive,
			breaksCustody: test.breaksCustody,
			why: test.why,
		})),
		turnsOn: judged.result?.turnsOn == null ? null : words(judged.result.turnsOn),
		cautions: judged.cautions,
		sources: judged.sources,
	};
}
