/** Which own checks an order's records offer, each at its place `own-1` … `own-5`, and which of the catalogue's are left out. */
import { OWN_CHECK_IDS } from "../../catalogue/checks/checks.ts";
import type { ItemClass } from "../../catalogue/codes.ts";
import type { KeptCheck, OwnCatalogue } from "../../contract/own-catalogue.ts";

export interface OfferedCheck extends Omit<KeptCheck, "classes"> {
	/** The id that its reading is sealed under. */
	readonly id: (typeof OWN_CHECK_IDS)[number];
}

export interface OwnPart {
	readonly offered: readonly OfferedCheck[];
	/** Ids of the catalogue's checks. */
	readonly leftOut: readonly string[];
}

/** @param ownClassId the shop's class of the item, if it has one; one that this version does not have counts as none */
export function ownPartOf(
	catalogue: OwnCatalogue,
	item: { readonly class: ItemClass; readonly ownClassId?: string | undefined },
): OwnPart {
	const own = catalogue.classes.find((one) => one.id === item.ownClassId);
	const checks =
		own === undefined
			? catalogue.checks.filter((check) => check.classes.includes(item.class))
			: own.ownChecks.flatMap((id) => catalogue.checks.find((check) => check.id === id) ?? []);
	return {
		offered: OWN_CHECK_IDS.flatMap((id, place) => {
			const check = checks[place];
			if (check === undefined) return [];
			const { definition, how, whoCan, caution } = check;
			return [{ id, definition, how, whoCan, ...(caution === undefined ? {} : { caution }) }];
		}),
		leftOut: own?.leftOut ?? [],
	};
}

/** Whether someone with eyes, a kitchen scale and software can do it. */
export function needsNoInstruments({ whoCan }: Pick<OfferedCheck, "whoCan">): boolean {
	return whoCan === "no-instruments" || whoCan === "software";
}

/** Whether a reading is one of the offered check: a definition that was typed by hand at its place is another. */
export function isOf(
	{ id, definition }: Pick<OfferedCheck, "id" | "definition">,
	reading: { readonly check: string; readonly definition?: object | undefined },
): boolean {
	if (reading.check !== id || reading.definition === undefined) return false;
	const plain = (one: object) => JSON.stringify(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)));
	return plain(reading.definition) === plain(definition);
}
