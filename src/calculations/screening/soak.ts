/**
 * What a soak and a number of cold starts exclude, what they leave open, and how long to go on. Hours and starts are
 * counted apart: a fault may show under one and never under the other.
 */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { upperRate } from "../statistics/rates.ts";
import { upperShare } from "../statistics/shares.ts";
import {
	escapeByHours,
	escapeByHoursSeen,
	escapeByStarts,
	hoursEconomic,
	hoursForTarget,
	meanTimeUpperH,
	posteriorAfterClean,
	startsNeeded,
	testTimeFactor,
} from "./escape.ts";

export interface SoakInput {
	/** Hours under load since the last work on the item; work starts the clock again. */
	readonly hours: number;
	/** Times that the fault showed in them. */
	readonly failures: number;
	/** Starts from room temperature since the last work, and how many of them failed. */
	readonly coldStarts: number;
	readonly coldStartFailures: number;
	/** 0..1 exclusive, of all bounds. */
	readonly confidence: number;
	/** Mean hours under load until the fault that is looked for shows. */
	readonly meanTimeToShowH?: number | undefined;
	/** Or: how often it showed, and in how many hours, when it was reproduced before the work. */
	readonly reproduced?: { readonly shows: number; readonly hours: number } | undefined;
	/** Share of cold starts at which the fault that is looked for shows. */
	readonly startFaultProbability?: number | undefined;
	/** A party's own probability that the fault is still there, before this test. */
	readonly priorProbability?: number | undefined;
	/** The probability at which that party would stop. */
	readonly targetProbability?: number | undefined;
	/** Of one more hour on the bench, and of a return; in one currency. */
	readonly costPerH?: number | undefined;
	readonly costOfReturn?: number | undefined;
}

export interface Soak {
	/** What these hours can not exclude, events per hour; null without hours. */
	readonly rateUpperBoundPerH: number | null;
	readonly meanTimeLowerBoundH: number | null;
	/** Probability that the fault looked for passes this test unseen; null where it is not described, or showed. */
	readonly escapeProbability: number | null;
	/** What these starts can not exclude, share of starts; null without starts. */
	readonly coldStartFailureUpperBound: number | null;
	/** Hours in all that exclude the mean time looked for, with the failures seen. */
	readonly hoursForConfidence: number | null;
	/** Clean hours in all until the target is reached. */
	readonly hoursForTarget: number | null;
	/** Clean hours in all until one more costs more than it saves. */
	readonly hoursEconomic: number | null;
	/** Starts in all that exclude the share looked for, with the failures seen. */
	readonly coldStartsNeeded: number | null;
	/** From the party's own prior; null without it, or where the fault showed. */
	readonly posteriorProbability: number | null;
	/** The mean time used, and its 80 % upper limit where it was counted from shows. */
	readonly meanTimeToShowH: number | null;
	readonly meanTimeToShowUpperH: number | null;
	/** What this says and does not say, in words. */
	readonly says: readonly Sentence[];
}

/** Limit quoted for a mean time that was counted from a few shows; our choice after the reference page. */
const MEAN_TIME_CONFIDENCE = 0.8;

const SOURCES: readonly Source[] = [
	cite("nist-e-handbook", "8.3.1.1, test time factors χ²/2", "from-memory"),
	cite("our-derivation", "exp(−t/T), (1−p)ⁿ, Bayes' rule and the hour at which cost and saving meet", "our-choice"),
];

export function soak(input: SoakInput): Judged<Soak> {
	const { hours, failures, coldStarts, coldStartFailures, confidence } = input;
	const meanTimeH = meanTimeOf(input);
	const showed = failures > 0 || coldStartFailures > 0;
	const escapeProbability = showed ? null : escapeOf(input, meanTimeH);
	const { priorProbability, targetProbability, costPerH, costOfReturn, startFaultProbability, reproduced } = input;
	const rate = hours > 0 ? upperRate(failures, hours, confidence) : null;
	const counted = input.meanTimeToShowH === undefined && reproduced !== undefined && reproduced.shows > 0;
	const result = {
		rateUpperBoundPerH: rate,
		meanTimeLowerBoundH: rate === null ? null : 1 / rate,
		escapeProbability,
		coldStartFailureUpperBound: coldStarts > 0 ? upperShare(coldStartFailures, coldStarts, confidence) : null,
		hoursForConfidence: meanTimeH === null ? null : meanTimeH * testTimeFactor(failures, confidence),
		hoursForTarget:
			meanTimeH === null || showed || priorProbability === undefined || targetProbability === undefined
				? null
				: hoursForTarget(meanTimeH, priorProbability, targetProbability),
		hoursEconomic:
			meanTimeH === null ||
			showed ||
			priorProbability === undefined ||
			costPerH === undefined ||
			costOfReturn === undefined
				? null
				: hoursEconomic(meanTimeH, priorProbability, costPerH, costOfReturn),
		coldStartsNeeded:
			startFaultProbability === undefined ? null : startsNeeded(startFaultProbability, confidence, coldStartFailures),
		posteriorProbability:
			priorProbability === undefined || escapeProbability === null
				? null
				: posteriorAfterClean(priorProbability, escapeProbability),
		meanTimeToShowH: meanTimeH,
		meanTimeToShowUpperH: counted ? meanTimeUpperH(reproduced.shows, reproduced.hours, MEAN_TIME_CONFIDENCE) : null,
	};
	return assessed<Soak>(
		{ ...result, says: saysOf(input, result) },
		{ sources: [...SOURCES, ...ownFigures(input)], cautions: [sentence("soak.caution-attended")] },
	);
}

function meanTimeOf({ meanTimeToShowH, reproduced }: SoakInput): number | null {
	if (meanTimeToShowH !== undefined) return meanTimeToShowH;
	return reproduced !== undefined && reproduced.shows > 0 ? reproduced.hours / reproduced.shows : null;
}

/** Product over the conditions that the fault is described for; a condition that was not exercised has the factor 1. */
function escapeOf(input: SoakInput, meanTimeH: number | null): number | null {
	const { hours, coldStarts, startFaultProbability, reproduced } = input;
	if (meanTimeH === null && startFaultProbability === undefined) return null;
	let product = 1;
	if (input.meanTimeToShowH !== undefined) product *= escapeByHours(hours, input.meanTimeToShowH);
	else if (reproduced !== undefined) product *= escapeByHoursSeen(hours, reproduced.shows, reproduced.hours);
	if (startFaultProbability !== undefined) product *= escapeByStarts(coldStarts, startFaultProbability);
	return product;
}

function saysOf(
	{ hours, failures, coldStarts, coldStartFailures, confidence }: SoakInput,
	result: Omit<Soak, "says">,
): Sentence[] {
	const share = confidence * 100;
	const says: Sentence[] = [];
	if (hours === 0) says.push(sentence("soak.no-hours"));
	else if (failures > 0) says.push(sentence("soak.showed-in-hours", { hours, failures }));
	else if (result.meanTimeLowerBoundH !== null) {
		says.push(sentence("soak.hours-exclude", { hours, meanTimeH: result.meanTimeLowerBoundH, share }));
	}
	if (coldStarts === 0) says.push(sentence("soak.no-starts"));
	else if (coldStartFailures > 0) says.push(sentence("soak.showed-at-starts", { coldStarts, coldStartFailures }));
	else if (result.coldStartFailureUpperBound !== null) {
		const most = result.coldStartFailureUpperBound * 100;
		says.push(sentence("soak.starts-exclude", { coldStarts, most, share }));
	}
	if (result.escapeProbability !== null) {
		says.push(sentence("soak.escape", { percent: result.escapeProbability * 100 }));
	}
	says.push(sentence("soak.only-exercised"));
	return says;
}

function ownFigures(input: SoakInput): Source[] {
	const given = [input.meanTimeToShowH, input.startFaultProbability, input.priorProbability, input.costPerH];
	if (given.every((figure) => figure === undefined) && input.reproduced === undefined) return [];
	return [cite("user", "mean time, shares, probabilities and costs as given", "user")];
}
