/**
 * What the findings support. Directions come from documented rules; likelihood ratios only from the caller's numbers; a
 * posterior only from the caller's priors. Findings that tell of one fact count once. Two origins can both be supported:
 * a joint that broke under a shock may have been weak before.
 */
import { assessed, type Judged, type Sentence, sentence } from "../judged.ts";
import { cite, type Source } from "../sources.ts";
import { jointLikelihoods, likelihoodRatio, posterior } from "./evidence.ts";
import { rankedTests, separatingTests } from "./next-tests.ts";
import { ORIGINS, type Origin } from "./origins.ts";
import type {
	FaultOrigin,
	FaultOriginInput,
	Finding,
	FindingDirection,
	FindingRule,
	OriginJudgement,
	OriginSupport,
} from "./types.ts";
import { capOf, SCALE_NAME, verbal } from "./verbal-scale.ts";

/** Published (a reference page on reporting, read): a ratio up to 2, and down to 1/2, supports neither side. */
const NEUTRAL_UP_TO = 2;

export function faultOrigin(input: FaultOriginInput): Judged<FaultOrigin> {
	const origins = judgedOrigins(input, input.findings);
	const unruled = input.findings.filter(
		({ id }) => !input.rules.some((rule) => rule.id === id) && input.likelihoods?.[id] === undefined,
	);
	const notes = [
		...unruled.map(({ id }) => sentence("origin.note-no-rule", { finding: id })),
		...(input.priors !== undefined && input.priors["none-of-these"] === undefined
			? [sentence("origin.note-none-of-these")]
			: []),
	];
	return assessed<FaultOrigin>(
		{ origins, nextTests: nextTestsOf(input, origins), turnsOn: turningFinding(input, origins) },
		{ sources: sourcesOf(input), notes, cautions: cautionsOf(input, origins) },
	);
}

/** All origins, best supported first. */
function judgedOrigins(input: FaultOriginInput, findings: readonly Finding[]): OriginJudgement[] {
	const numbers = input.likelihoods !== undefined && findings.some((one) => isNumbered(input, one));
	const joint = numbers ? jointLikelihoods(findings, input.likelihoods ?? {}) : new Map<Origin, number>();
	const after = numbers && input.priors !== undefined ? posterior(joint, input.priors) : null;
	return ORIGINS.map((id) => {
		const spoken = spokenOf(id, findings, input.rules);
		const weighed = joint.has(id) && joint.size > 1;
		const ratio = weighed ? likelihoodRatio(id, joint, input.priors) : undefined;
		const support = supportOf(spoken, ratio);
		return {
			id,
			support,
			for: spoken.for,
			against: spoken.against,
			missing: spoken.missing,
			countedFor: spoken.countedFor,
			countedAgainst: spoken.countedAgainst,
			...(ratio === undefined
				? {}
				: { likelihoodRatio: ratio, scale: { name: SCALE_NAME, word: verbal(ratio, capOf(input.countedCases)) } }),
			...(after === null || !after.has(id) ? {} : { posteriorProbability: after.get(id) }),
			why: whyOf(support, spoken, ratio, input.priors !== undefined),
		};
	}).sort(byRank);
}

interface Spoken {
	readonly for: readonly string[];
	readonly against: readonly string[];
	readonly missing: readonly string[];
	readonly countedFor: number;
	readonly countedAgainst: number;
	readonly ruledOut: boolean;
}

/** What the rules say of one origin. */
function spokenOf(origin: Origin, findings: readonly Finding[], rules: readonly FindingRule[]): Spoken {
	const said = findings.flatMap((finding) => {
		const rule = rules.find(({ id }) => id === finding.id);
		const directions = finding.state === "present" ? rule?.whenPresent : rule?.whenAbsent;
		const direction = finding.state === "unknown" ? undefined : directions?.[origin];
		const group = finding.group ?? rule?.group ?? finding.id;
		return direction === undefined ? [] : [{ id: finding.id, group, direction }];
	});
	const byGroup = new Map<string, Set<FindingDirection>>();
	for (const { group, direction } of said) byGroup.set(group, (byGroup.get(group) ?? new Set()).add(direction));
	const groups = [...byGroup.values()];
	const isFor = (group: Set<FindingDirection>) => group.has("for") && group.size === 1;
	const isAgainst = (group: Set<FindingDirection>) =>
		group.has("rules-out") || (group.has("against") && !group.has("for"));
	return {
		for: said.filter(({ direction }) => direction === "for").map(({ id }) => id),
		against: said.filter(({ direction }) => direction !== "for").map(({ id }) => id),
		missing: rules
			.filter((rule) => rule.whenPresent[origin] !== undefined || rule.whenAbsent?.[origin] !== undefined)
			.filter(({ id }) => !findings.some((finding) => finding.id === id && finding.state !== "unknown"))
			.map(({ id }) => id),
		countedFor: groups.filter(isFor).length,
		countedAgainst: groups.filter(isAgainst).length,
		ruledOut: groups.some((group) => group.has("rules-out")),
	};
}

function supportOf(spoken: Spoken, ratio: number | null | undefined): OriginSupport {
	if (spoken.ruledOut) return "does-not-support";
	if (ratio !== undefined) {
		if (ratio === null || ratio > NEUTRAL_UP_TO) return "supports";
		return ratio < 1 / NEUTRAL_UP_TO ? "does-not-support" : "neutral";
	}
	const { countedFor, countedAgainst } = spoken;
	if (countedFor > 0 && countedAgainst > 0) return "neutral";
	if (countedFor > 0) return "supports";
	if (countedAgainst > 0) return "does-not-support";
	// Findings of one fact that point both ways say nothing, but were made.
	return spoken.for.length > 0 ? "neutral" : "not-tested";
}

const SUPPORT_ORDER: readonly OriginSupport[] = ["supports", "neutral", "not-tested", "does-not-support"];

/** Supported first; then by ratio, fewest findings against, most findings for. */
function byRank(one: OriginJudgement, other: OriginJudgement): number {
	return (
		SUPPORT_ORDER.indexOf(one.support) - SUPPORT_ORDER.indexOf(other.support) ||
		ratioOf(other) - ratioOf(one) ||
		one.countedAgainst - other.countedAgainst ||
		other.countedFor - one.countedFor ||
		ORIGINS.indexOf(one.id) - ORIGINS.indexOf(other.id)
	);
}

function ratioOf({ likelihoodRatio: ratio }: OriginJudgement): number {
	return ratio === undefined ? 0 : (ratio ?? Number.MAX_VALUE);
}

/** The origins that share the first place; none where nothing is supported. */
function leading(origins: readonly OriginJudgement[]): string {
	const first = origins.find(({ support }) => support === "supports");
	if (first === undefined) return "";
	const ties = origins.filter(
		(origin) =>
			origin.support === "supports" &&
			ratioOf(origin) === ratioOf(first) &&
			origin.countedAgainst === first.countedAgainst &&
			origin.countedFor === first.countedFor,
	);
	return ties
		.map(({ id }) => id)
		.sort()
		.join(" ");
}

/** The first finding without whose group another origin would lead. */
function turningFinding(input: FaultOriginInput, origins: readonly OriginJudgement[]): string | null {
	const now = leading(origins);
	if (now === "") return null;
	const groupOf = (finding: Finding) =>
		finding.group ?? input.rules.find(({ id }) => id === finding.id)?.group ?? finding.id;
	const turning = input.findings.find((finding) => {
		if (!speaks(finding, input)) return false;
		const rest = input.findings.filter((other) => groupOf(other) !== groupOf(finding));
		return leading(judgedOrigins(input, rest)) !== now;
	});
	return turning?.id ?? null;
}

/** Whether a finding bears on any origin, by its rule or by numbers. */
function speaks(finding: Finding, input: FaultOriginInput): boolean {
	if (finding.state === "unknown") return false;
	const rule = input.rules.find(({ id }) => id === finding.id);
	const directions = finding.state === "present" ? rule?.whenPresent : rule?.whenAbsent;
	return isNumbered(input, finding) || Object.keys(directions ?? {}).length > 0;
}

/** The caller's tests where given, else the catalogue's. */
function nextTestsOf(input: FaultOriginInput, origins: readonly OriginJudgement[]) {
	const open = origins.filter(({ support }) => support !== "does-not-support").map(({ id }) => id);
	if (input.tests === undefined) return separatingTests(input.testRules, open, input.findings);
	return rankedTests(input.tests, weightsOf(input, origins, open));
}

/** What is held of the origins now: the posterior, else the priors, else all open ones alike. */
function weightsOf({ priors }: FaultOriginInput, origins: readonly OriginJudgement[], open: readonly Origin[]) {
	if (priors === undefined) return new Map(open.map((id) => [id, 1]));
	const held = origins.map(({ id, posteriorProbability }) => [id, posteriorProbability] as const);
	const judged = held.some(([, probability]) => probability !== undefined);
	return new Map(held.map(([id, probability]) => [id, (judged ? probability : priors[id]) ?? 0]));
}

function isNumbered({ likelihoods }: FaultOriginInput, { id, state }: Finding): boolean {
	return state !== "unknown" && likelihoods?.[id] !== undefined;
}

function whyOf(
	support: OriginSupport,
	{ countedFor, countedAgainst, ruledOut }: Spoken,
	ratio: number | null | undefined,
	weighed: boolean,
): Sentence {
	if (ruledOut) return sentence("origin.why-ruled-out");
	if (ratio !== undefined && ratio !== null) {
		return sentence(weighed ? "origin.why-ratio-weighed" : "origin.why-ratio-best", { ratio });
	}
	if (ratio === null) return sentence("origin.why-ratio-unbounded");
	return sentence(`origin.why-${support}`, { countedFor, countedAgainst });
}

function cautionsOf(input: FaultOriginInput, origins: readonly OriginJudgement[]): Sentence[] {
	const cautions = [sentence("origin.caution-not-who")];
	const supported = origins.filter(({ support }) => support === "supports").map(({ id }) => id);
	if (supported.includes("transit-shock") || supported.includes("transit-vibration")) {
		cautions.push(sentence("origin.caution-both-can-stand"));
	}
	const cap = capOf(input.countedCases);
	if (origins.some(({ likelihoodRatio: ratio }) => ratio === null || (ratio ?? 0) > cap)) {
		cautions.push(
			sentence(input.countedCases === undefined ? "origin.capped-judgement" : "origin.capped-cases", { cap }),
		);
	}
	return cautions;
}

function sourcesOf(input: FaultOriginInput): Source[] {
	const cited = input.findings.flatMap(({ id }) => input.rules.find((rule) => rule.id === id)?.source ?? []);
	const once = cited.filter(
		(source, index) => cited.findIndex(({ id, locator }) => id === source.id && locator === source.locator) === index,
	);
	const numbers = [input.likelihoods, input.priors, input.tests].some((given) => given !== undefined);
	return numbers ? [...once, cite("user", "probabilities as given", "user")] : once;
}
