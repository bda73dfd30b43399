/** A sealed pack as a request, and its cushion curves computed anew with today's data. What was sealed stays beside them, unchanged. */
import { type AssessmentView, type PackagingRequest, packagingRequest } from "../../contract/packaging.ts";
import { Fault } from "../../faults.ts";
import { type PackCurve, planPack } from "./plan-pack.ts";

/** None for a pack that today's data no longer cover. */
export function curvesOfSealed(assessment: AssessmentView): readonly PackCurve[] {
	const request = requestOfSealed(assessment);
	if (request === null) return [];
	try {
		return planPack(request).curves;
	} catch (error) {
		// A foam that left the catalogue: the sealed values still stand.
		if (error instanceof Fault) return [];
		throw error;
	}
}

/** What was asked when it was sealed; null for a form that today's shape no longer takes. */
export function requestOfSealed(assessment: AssessmentView): PackagingRequest | null {
	const { item, pack, route } = withoutErased(assessment.statement) as Record<string, unknown>;
	const request = packagingRequest.safeParse({ item, pack, route });
	return request.success ? request.data : null;
}

/** An erased text is null where a request leaves it out. */
function withoutErased(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(withoutErased);
	if (value === null || typeof value !== "object") return value;
	return Object.fromEntries(
		Object.entries(value).flatMap(([name, entry]) => (entry === null ? [] : [[name, withoutErased(entry)]])),
	);
}
