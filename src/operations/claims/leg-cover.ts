/** What the carrier of a leg pays at most by the law that was chosen or suggested, and what of the item's value that is. */
import { claimCap } from "../../calculations/claims/claim-cap.ts";
import type { Regime } from "../../calculations/claims/claim-rule.ts";
import { insurance } from "../../calculations/insurance/insurance.ts";
import { packingBreakEven } from "../../calculations/insurance/packing-break-even.ts";
import { CLAIM_CAPS } from "../../catalogue/claim-caps.ts";
import type { LegCover } from "../../contract/leg-claim.ts";
import type { ConsignmentView, ItemView } from "../../contract/orders.ts";
import { say, speak } from "../../texts/say.ts";

/** Of a product in a parcel, any goods: 16 of 3,234. Source: `insurance.rates`, a press report of one study of 2013. */
const DAMAGE_PROBABILITY = 16 / 3234;
/** Money spent on better packing, in the value's currency, for which the break-even is said. Our choice. */
const PACKING_COST = 10;

export function legCover(
	item: ItemView,
	{ facts }: Pick<ConsignmentView, "facts">,
	/** Gross mass of the parcel; null where nobody weighed it. */
	massKg: number | null,
	regime: Regime | null,
	/** Units of the value's currency for one special drawing right. */
	currencyPerSdr: number | undefined,
	eventDate: string,
): LegCover {
	const value = item.value ?? facts.declaredValue ?? null;
	const known = {
		massKg,
		value,
		declaredValue: facts.declaredValue ?? null,
		insuredValue: facts.insuredValue ?? null,
		...worth(value),
	};
	const nothing = { capSdr: null, capAmount: null, shareOfValue: null, massCoveringValueKg: null, source: null };
	const rule = CLAIM_CAPS.find((cap) => cap.regime === regime);
	if (rule === undefined) return { ...known, ...nothing, notes: [say("cover.no-rule")] };
	if (massKg === null) return { ...known, ...nothing, notes: [say("cover.no-mass")] };
	const judged = speak(
		claimCap({
			rule,
			packages: [{ grossMassKg: massKg, affected: true }],
			loss: "total",
			eventDate,
			currencyPerSdr,
			value: value ?? undefined,
			currency: value?.currency ?? null,
		}),
	);
	const source = {
		document: rule.source.document,
		locator: rule.source.locator,
		standing: rule.source.standing,
	};
	const notes = [...judged.validity.notes, ...judged.cautions];
	if (judged.status === "not-assessed") {
		return { ...known, ...nothing, source, notes: [judged.reason.message, ...notes] };
	}
	const { capSdr, capAmount, shareOfValue, massCoveringValueKg } = judged.result as unknown as LegCover;
	return { ...known, capSdr, capAmount, shareOfValue, massCoveringValueKg, source, notes };
}

/** What damage costs on average at the measured rate, and what better packing has to achieve. */
function worth(value: LegCover["value"]): Pick<LegCover, "expectedLoss" | "packing"> {
	if (value === null || !(value.amount > 0)) return { expectedLoss: null, packing: null };
	const judged = insurance({ value, damageProbability: DAMAGE_PROBABILITY });
	return {
		expectedLoss: judged.status === "assessed" ? judged.result.expectedLoss : null,
		packing: {
			cost: { amount: PACKING_COST, currency: value.currency },
			probabilityDrop: packingBreakEven(PACKING_COST, value.amount),
		},
	};
}
