/** The check `compression`: the outer box under the stack of a vehicle, after the days and the humidity of the trip. */
import { boxCompression } from "../box/box-compression.ts";
import { sentence } from "../judged.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import { outerSidesM } from "./face-stacks.ts";
import type { PackagingCheck } from "./types.ts";
import { atLeast, bestOf, unassessed } from "./verdicts.ts";

/** Freight in a vehicle, ASTM D4169-23, as quoted: density, height of a stack that is not known, and of small, light parcels. */
const FREIGHT_KG_PER_M3 = 192.2;
const STACK_M = 2.7;
const SMALL_LIGHT = { stackM: 1.4, massKg: 4.53, volumeM3: 0.056 };
/** What a box that was used keeps. Source: common practice, one shop's page: up to half is lost. */
const REUSED_KEEPS = 0.5;
const REUSED = cite("common-practice", "a box that was used before loses up to half", "common-practice");
/** Air of a trip of which nothing is known. Source: our choice. */
const HUMIDITY_PERCENT = 80;
const HUMID = cite("our-choice", "80 % relative humidity where none is given", "our-choice");

export function compressionCheck({ input }: CheckContext): PackagingCheck {
	const { item, pack, route } = input;
	const { box } = pack;
	if (box.edgeCrushKNPerM === undefined || box.caliperM === undefined)
		return unassessed("compression", sentence("packaging.no-board-data"), sentence("packaging.mend-board-data"));
	const { lengthM, widthM, heightM } = outerSidesM(box);
	const light =
		(pack.grossMassKg ?? item.massKg) <= SMALL_LIGHT.massKg && lengthM * widthM * heightM <= SMALL_LIGHT.volumeM3;
	const answer = boxCompression({
		edgeCrushKNPerM: box.edgeCrushKNPerM,
		caliperM: box.caliperM,
		perimeterM: 2 * (lengthM + widthM),
		days: route.transitDays,
		humidityPercent: route.humidityPercent ?? HUMIDITY_PERCENT,
		palletFactor: box.reused === true ? REUSED_KEEPS : undefined,
		stack: {
			lengthM,
			widthM,
			heightM,
			stackHeightM: light ? SMALL_LIGHT.stackM : STACK_M,
			densityKgPerM3: FREIGHT_KG_PER_M3,
			factor: 1,
		},
	});
	const sources = [
		...answer.sources,
		...(box.reused === true ? [REUSED] : []),
		...(route.humidityPercent === undefined ? [HUMID] : []),
	];
	if (answer.status !== "assessed" || answer.result.stackLoadN === null)
		return unassessed("compression", sentence("packaging.not-assessed"), null, sources);
	const { deratedStrengthN, stackLoadN, marginDerated } = answer.result;
	const held = atLeast(deratedStrengthN, stackLoadN, bestOf(sources));
	const verdict = held !== "falls-short" && !answer.validity.within ? "not-assessed" : held;
	return {
		id: "compression",
		verdict,
		value: deratedStrengthN,
		limit: stackLoadN,
		unit: "N",
		margin: marginDerated,
		why: sentence(
			verdict === "falls-short"
				? "packaging.box-short"
				: verdict === "not-assessed"
					? "packaging.box-outside"
					: "packaging.box-holds",
			{ strengthN: deratedStrengthN, loadN: stackLoadN, stackM: light ? SMALL_LIGHT.stackM : STACK_M },
		),
		mend: verdict === "falls-short" || verdict === "marginal" ? sentence("packaging.mend-box") : null,
		sources,
	};
}
