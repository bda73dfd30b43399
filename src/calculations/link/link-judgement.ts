/** Judges a card's link: does it run as wide and as fast as card and slot can, at the slowest point of the path? */
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { cite } from "../sources.ts";

export interface Link {
	/** GT/s; 0 where the register holds no speed. */
	readonly speedGTPerS: number;
	/** Lanes; 63 where the register reads all ones. */
	readonly width: number;
}

export interface LinkJudgementInput {
	/** What the card itself is capable of, from its capability register. */
	readonly card: Link;
	/** What the card's function reports of its link under load. A function behind a switch on the card does not see the slot. */
	readonly function?: Link | undefined;
	/** Links under load from the card's upstream port to the root port, in order. */
	readonly upstreamPath?: readonly Link[] | undefined;
	/** The link while nothing was asked of the card. */
	readonly idle?: Link | undefined;
	/** The link between card and slot under load. */
	readonly load?: Link | undefined;
	/** What the slot is capable of. */
	readonly slot?: Link | undefined;
	/** The link under load of another card, known to be good, in the same slot. */
	readonly control?: Link | undefined;
}

export type LinkVerdict =
	| "ok"
	| "ok-idle-saving"
	| "ok-card-limit"
	| "slot-limited"
	| "width-reduced"
	| "speed-reduced"
	| "unjudged-idle"
	| "unjudged-path-not-seen"
	| "bus-lost"
	| "no-link-data";

export interface LinkJudgement {
	readonly judgement: LinkVerdict;
	readonly why: Sentence;
	/** The slowest point of what was seen under load; null where nothing was. */
	readonly effective: Link | null;
	/** GB/s in one direction at the effective link, and at the card's capability. */
	readonly effectiveGBytePerS: number | null;
	readonly capabilityGBytePerS: number | null;
}

const SOURCES = [
	cite("link-rate-table", "rates by generation and width", "published"),
	cite("smi-help-query", "current generation and width may be reduced when the device is not in use", "published"),
	cite(
		"common-practice",
		"judged under load only, against the card's own capability, at the slowest point of the path",
		"common-practice",
	),
];

/**
 * The judgement. Speeds are told by table (`laneGBytePerS`, GB/s of one lane by GT/s), never by rounding.
 *
 * Idle values are not judged: both speed and width may be reduced to save power. What a function reports without the
 * path above it is `unjudged-path-not-seen`, unless the slot or a control card was seen. The slot's limit, or a control
 * card that reaches no more, makes it `slot-limited`.
 */
export function judgeLink(
	input: LinkJudgementInput,
	laneGBytePerS: Readonly<Record<number, number>>,
): Judged<LinkJudgement> {
	const seen = [
		input.card,
		input.function,
		input.idle,
		input.load,
		input.slot,
		input.control,
		...(input.upstreamPath ?? []),
	];
	const underLoad = [input.load, input.function, ...(input.upstreamPath ?? [])].filter((link) => link !== undefined);
	const answer = (judgement: LinkVerdict, effective: Link | null, values: Record<string, number> = {}) =>
		assessed<LinkJudgement>(
			{
				judgement,
				why: sentence(`link.${judgement}`, values),
				effective,
				effectiveGBytePerS: effective === null ? null : bandwidth(effective, laneGBytePerS),
				capabilityGBytePerS: isReal(input.card) ? bandwidth(input.card, laneGBytePerS) : null,
			},
			{ sources: SOURCES, cautions: [] },
		);

	if ([...underLoad, input.idle].some((link) => link !== undefined && isAllOnes(link))) return answer("bus-lost", null);
	if (!isReal(input.card) || (underLoad.length === 0 && input.idle === undefined)) return answer("no-link-data", null);
	const unknown = seen.find((link) => link !== undefined && laneGBytePerS[link.speedGTPerS] === undefined);
	if (unknown !== undefined) {
		return notAssessed("unknown-speed", sentence("link.unknown-speed", { speedGTPerS: unknown.speedGTPerS }), {
			sources: SOURCES,
		});
	}
	if (underLoad.length === 0) return answer("unjudged-idle", null);

	const slowest = underLoad.reduce(slower);
	const pathSeen = input.upstreamPath !== undefined || input.load !== undefined;
	const elsewhere = [input.slot, input.control].filter((link) => link !== undefined);
	const facts = {
		width: slowest.width,
		speedGTPerS: slowest.speedGTPerS,
		cardWidth: input.card.width,
		cardSpeedGTPerS: input.card.speedGTPerS,
	};
	const full = slowest.width >= input.card.width && slowest.speedGTPerS >= input.card.speedGTPerS;
	if (!pathSeen && elsewhere.length === 0) return answer("unjudged-path-not-seen", slowest, facts);
	if (full) {
		if (!pathSeen) return answer("unjudged-path-not-seen", slowest, facts);
		if (input.slot !== undefined && input.slot.width > input.card.width) return answer("ok-card-limit", slowest, facts);
		const saving =
			input.idle !== undefined && (input.idle.width < slowest.width || input.idle.speedGTPerS < slowest.speedGTPerS);
		return answer(saving ? "ok-idle-saving" : "ok", slowest, facts);
	}
	const narrow = slowest.width < input.card.width;
	const limit = (part: "width" | "speedGTPerS") => Math.min(...elsewhere.map((link) => link[part]));
	const slotExplains =
		elsewhere.length > 0 &&
		(!narrow || slowest.width >= limit("width")) &&
		(slowest.speedGTPerS >= input.card.speedGTPerS || slowest.speedGTPerS >= limit("speedGTPerS"));
	if (slotExplains) return answer("slot-limited", slowest, facts);
	// Without slot or control, a path that was seen to the root port still shows where it is narrow; a bare reading does not.
	if (elsewhere.length === 0 && input.upstreamPath === undefined)
		return answer("unjudged-path-not-seen", slowest, facts);
	return answer(narrow ? "width-reduced" : "speed-reduced", slowest, facts);
}

/** The slower of two links, by what they carry; the narrower where they carry the same. */
function slower(a: Link, b: Link): Link {
	const [rateA, rateB] = [a.width * a.speedGTPerS, b.width * b.speedGTPerS];
	return rateB < rateA || (rateB === rateA && b.width < a.width) ? b : a;
}

function bandwidth(link: Link, laneGBytePerS: Readonly<Record<number, number>>): number | null {
	const lane = laneGBytePerS[link.speedGTPerS];
	return lane === undefined ? null : lane * link.width;
}

function isAllOnes(link: Link): boolean {
	return link.width === 63;
}

function isReal(link: Link): boolean {
	return link.width > 0 && link.speedGTPerS > 0 && !isAllOnes(link);
}
