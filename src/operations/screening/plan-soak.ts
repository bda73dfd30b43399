/** A soak as someone plans it: what it excludes so far, and how the chance that a fault passes unseen falls with the hours. */
import type { Judged } from "../../calculations/judged.ts";
import { type Soak, soak } from "../../calculations/screening/soak.ts";
import type { EscapePoint } from "../../charts/escape-curve.ts";
import { amountOf, type SoakRequest } from "../../contract/soak.ts";

export interface SoakPlan {
	readonly judged: Judged<Soak>;
	/** Over hours under load, the starts as they are; none where the fault is not described by hours. */
	readonly curve: readonly EscapePoint[];
}

const SAMPLES = 121;
/** The plot reaches this factor beyond the hours that are there and those that are asked for. */
const REACH = 1.5;

export function planSoak(request: SoakRequest): SoakPlan {
	const at = (hours: number) =>
		soak({
			...request,
			hours,
			costPerH: amountOf(request.costPerH),
			costOfReturn: amountOf(request.costOfReturn),
		});
	const judged = at(request.hours);
	const { result } = judged;
	const described = request.meanTimeToShowH !== undefined || request.reproduced !== undefined;
	if (result === null || !described || request.failures > 0) return { judged, curve: [] };
	const asked = [request.hours, result.hoursForConfidence, result.hoursForTarget, result.hoursEconomic];
	const mostH = REACH * Math.max(1, ...asked.flatMap((hours) => hours ?? []));
	const curve = Array.from({ length: SAMPLES }, (_, index) => (mostH * index) / (SAMPLES - 1)).flatMap(
		(hours): EscapePoint[] => {
			const unseen = at(hours).result?.escapeProbability ?? null;
			return unseen === null ? [] : [{ hours, probability: unseen }];
		},
	);
	return { judged, curve };
}
