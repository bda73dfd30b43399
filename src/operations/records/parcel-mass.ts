/** Whether a parcel's mass can be, and what is odd about it. */
import { TYPED_UNITS, toReadingUnit } from "../../calculations/quantities.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordContentInput } from "../../contract/records.ts";

/** Above this parcel carriers take nothing on their usual terms. Source: from memory; one that takes freight takes more. */
const CARRIERS_MOST_KG = 70;

export type OddMass = "lighter-than-item" | "heavier-than-parcels";

/** What is odd about a parcel of this mass; null where nothing is, or the mass is not known. */
export function oddMass(parcelKg: number | undefined, itemKg: number | undefined): OddMass | null {
	if (parcelKg === undefined) return null;
	if (itemKg !== undefined && parcelKg < itemKg) return "lighter-than-item";
	return parcelKg > CARRIERS_MOST_KG ? "heavier-than-parcels" : null;
}

/** The same of a draft: the item's mass as weighed in it, else as the order says. */
export function oddMassOf(content: RecordContentInput, item: OrderView["item"]): OddMass | null {
	const weighed = content.readings?.find(({ check }) => check === "mass")?.values?.[0];
	return oddMass(kilograms(content.parcel?.mass), kilograms(weighed) ?? item.massKg);
}

function kilograms(mass: { readonly value: number; readonly unit: keyof typeof TYPED_UNITS } | undefined) {
	if (mass === undefined || TYPED_UNITS[mass.unit].unit !== "kg") return undefined;
	return toReadingUnit(mass.value, mass.unit).value;
}
