/**
 * What of an item, of an order's terms and of a leg someone typed, apart from codes, numbers and times. The typed part is
 * encrypted and goes with an erasure; the other stays. An erased part reads as the placeholder, or as not noted.
 */
import type { ConsignmentFacts, ItemInput, OrderTerms } from "../../contract/orders.ts";

/** Stands where an erased text stood that must be there. */
export const ERASED = "[erased]";

export interface Parts<Plain, Personal> {
	readonly plain: Plain;
	readonly personal: Personal;
}

type ItemText = Pick<ItemInput, "maker" | "model" | "serialNumber">;
export type ItemParts = Parts<Omit<ItemInput, keyof ItemText>, ItemText>;

export function partsOfItem({ maker, model, serialNumber, ...plain }: ItemInput): ItemParts {
	return { plain, personal: { maker, model, ...(serialNumber === undefined ? {} : { serialNumber }) } };
}

export function itemOf({ plain, personal }: ItemParts): ItemInput {
	return { ...plain, ...personal };
}

export const ERASED_ITEM: ItemText = { maker: ERASED, model: ERASED };

interface TermsText {
	readonly reportedFault: string;
	readonly agreedWork: string;
	/** What a warranty covers; read only where there is one. */
	readonly covers: string;
}
interface PlainTerms {
	readonly carrierContract: OrderTerms["carrierContract"];
	readonly warrantyMonths: number | null;
}
export type TermsParts = Parts<PlainTerms, TermsText>;

export function partsOfTerms({ reportedFault, agreedWork, carrierContract, warranty }: OrderTerms): TermsParts {
	return {
		plain: { carrierContract, warrantyMonths: warranty?.months ?? null },
		personal: { reportedFault, agreedWork, covers: warranty?.covers ?? "" },
	};
}

export function termsOf({ plain, personal }: TermsParts): OrderTerms {
	const { reportedFault, agreedWork, covers } = personal;
	return {
		reportedFault,
		agreedWork,
		carrierContract: plain.carrierContract,
		...(plain.warrantyMonths === null ? {} : { warranty: { months: plain.warrantyMonths, covers } }),
	};
}

export const ERASED_TERMS: TermsText = { reportedFault: ERASED, agreedWork: ERASED, covers: ERASED };

/** The carrier's name is typed too, and a person may carry. */
type FactsText = Pick<ConsignmentFacts, "carrier" | "service" | "trackingNumber">;
export type FactsParts = Parts<Omit<ConsignmentFacts, keyof FactsText>, FactsText>;

export function partsOfFacts({ carrier, service, trackingNumber, ...plain }: ConsignmentFacts): FactsParts {
	return {
		plain,
		personal: {
			...(carrier === undefined ? {} : { carrier }),
			...(service === undefined ? {} : { service }),
			...(trackingNumber === undefined ? {} : { trackingNumber }),
		},
	};
}

export function factsOf({ plain, personal }: FactsParts): ConsignmentFacts {
	return { ...plain, ...personal };
}

export const ERASED_FACTS: FactsText = {};
