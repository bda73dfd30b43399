/** What the planner shows first: the item and the leg's cover as the order knows them, one foam on all faces, a bag of which nothing is said. */
import type { LegCover } from "../../../contract/leg-claim.ts";
import type { ConsignmentView, ItemView } from "../../../contract/orders.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import type { Form } from "../../record-form/field.ts";

export function firstPackForm(item: ItemView, leg: ConsignmentView, cover: LegCover): Form {
	const millimetres = (metres: number | undefined) => (metres === undefined ? undefined : inMillimetres(metres));
	const value = item.value ?? leg.facts.declaredValue;
	const known: Readonly<Record<string, unknown>> = {
		"item.massKg": item.massKg,
		"item.lengthMm": millimetres(item.lengthM),
		"item.widthMm": millimetres(item.widthM),
		"item.heightMm": millimetres(item.heightM),
		"item.cell": item.cell ?? "none",
		"item.gn": item.fragilityGn,
		"item.basis": item.fragilityBasis,
		"item.valueAmount": value?.amount,
		"item.valueCurrency": value?.currency,
		"pack.grossMassKg": leg.facts.parcelMassKg,
		"route.mode": leg.facts.mode,
		// An insurance pays in the carrier's place.
		"route.capAmount": (cover.insuredValue ?? cover.capAmount)?.amount,
		"route.capCurrency": (cover.insuredValue ?? cover.capAmount)?.currency,
	};
	return {
		"route.dropBasis": "din-55439",
		"route.transitDays": "2",
		"cushion.foam": "pe-plank-23c",
		"gap.foam": "pe-plank-23c",
		"bag.1.kind": "shielding-metal-in",
		"bag.1.evidence": "none",
		...Object.fromEntries(
			Object.entries(known).flatMap(([name, given]) => (given === undefined ? [] : [[name, String(given)]])),
		),
	};
}
