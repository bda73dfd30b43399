/** The catalogue of checks as the API gives it: names and hints in words. */
import { CATALOGUE_VERSION, checksOf } from "../catalogue/checks/checks.ts";
import type { ItemClass } from "../catalogue/codes.ts";
import type { CatalogueView } from "../contract/catalogue.ts";
import { isTextKey, say } from "../texts/say.ts";

export function readCatalogue(itemClass: ItemClass): CatalogueView {
	const words = (key: string) => (isTextKey(key) ? say(key) : key);
	return {
		itemClass,
		version: CATALOGUE_VERSION,
		checks: checksOf(itemClass).map((check) => ({
			id: check.id,
			kind: check.kind,
			name: words(check.nameKey),
			hint: words(check.hintKey),
			condition: check.condition ?? null,
			typedUnits: [...check.typedUnits],
			exposureUnits: [...check.exposureUnits],
			comparability: check.comparability,
			betterIs: check.betterIs,
			limits:
				check.limits === undefined
					? null
					: { low: check.limits.low ?? null, high: check.limits.high ?? null, source: check.limits.source },
			limitsFromItem: check.limitsFromItem === true,
			margin:
				check.margin === undefined
					? null
					: {
							absolute: check.margin.absolute ?? null,
							percentOfDeparture: check.margin.percentOfDeparture ?? null,
							source: check.margin.source,
						},
			plausible:
				check.plausible === undefined
					? null
					: {
							low: check.plausible.low ?? null,
							high: check.plausible.high ?? null,
							source: check.plausible.source,
						},
			stopBelow: check.stopBelow ?? null,
			duration:
				check.duration === undefined
					? null
					: { ...check.duration, releaseMinutes: check.duration.releaseMinutes ?? null },
			stop: check.stopKey === undefined ? null : words(check.stopKey),
			whoCan: check.whoCan,
			cautions: check.cautionKeys.map(words),
			short: check.short,
			source: check.source,
		})),
	};
}
