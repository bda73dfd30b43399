/** The check `moisture`: desiccant in a sealed barrier. A finished board that is only powered needs none of it. */
import { sentence } from "../judged.ts";
import { desiccant } from "../moisture/desiccant.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import type { PackagingCheck } from "./types.ts";
import { atLeast, unassessed } from "./verdicts.ts";

/** Vapour through a barrier bag, g/(m²·day). Source: published, MIL-B-81705C as quoted on a data sheet: 0.02 g/(100 in²·day). */
const BARRIER_GRAM_PER_M2_DAY = 0.31;
const BARRIER = cite("mil-b-81705", "0.02 g/(100 in²·day) at 37 °C and 90 %", "published");
/** A bag is larger than the item in it. Source: our choice: the item laid flat, its height added to both sides. */
const BAG = cite(
	"our-choice",
	"bag of the item's sides plus its height, both faces; as much air as the item's volume",
	"our-choice",
);

export function moistureCheck({ input }: CheckContext): PackagingCheck {
	const { item, pack, route } = input;
	const barrier = pack.bagLayers.find((layer) => layer.kind === "moisture-barrier");
	const sealed = barrier?.closed === true && barrier.intact && barrier.stapled !== true;
	if (barrier === undefined)
		return unassessed("moisture", sentence("packaging.no-barrier"), sentence("packaging.mend-barrier"));
	const base = { id: "moisture" as const, unit: null };
	if (!sealed)
		return {
			...base,
			verdict: "falls-short",
			value: null,
			limit: null,
			margin: null,
			why: sentence("packaging.barrier-open"),
			mend: sentence("packaging.mend-barrier"),
			sources: [BARRIER],
		};
	const { lengthM, widthM, heightM } = item;
	const answer = desiccant({
		method: "din-55474",
		barrierAreaM2: 2 * (lengthM + heightM) * (widthM + heightM),
		barrierVolumeM3: lengthM * widthM * heightM,
		waterVapourGramPerM2Day: BARRIER_GRAM_PER_M2_DAY,
		days: route.transitDays,
		dunnage: pack.dunnage,
	});
	const sources = [...answer.sources, BARRIER, BAG];
	if (answer.status !== "assessed" || pack.desiccantUnits === undefined)
		return unassessed(
			"moisture",
			sentence("packaging.no-desiccant"),
			sentence("packaging.mend-desiccant", { units: answer.result?.unitsRounded ?? answer.result?.units ?? 0 }),
			sources,
		);
	const { units, unitsRounded } = answer.result;
	const paper = (pack.dunnage ?? []).some((one) => one.kind === "cellulose" && one.massKg > 0);
	const held = atLeast(pack.desiccantUnits, units, "provisional");
	return {
		...base,
		verdict: held,
		value: pack.desiccantUnits,
		limit: units,
		margin: units > 0 ? (pack.desiccantUnits - units) / units : null,
		why: sentence(held === "falls-short" ? "packaging.desiccant-short" : "packaging.desiccant-holds", {
			given: pack.desiccantUnits,
			units,
		}),
		mend:
			held === "provisional"
				? paper
					? sentence("packaging.mend-paper")
					: null
				: sentence(paper ? "packaging.mend-paper" : "packaging.mend-desiccant", { units: unitsRounded ?? units }),
		sources,
	};
}
