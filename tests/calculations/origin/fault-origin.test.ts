/**
 * What findings support. Case ids are those of the reference page on measurement, section 3: worked by sequential
 * updating and by the joint product there, so an independent recomputation. E03 and E04 are not here: the page lacks the
 * probabilities of E03, on which both rest.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	entropyBits,
	informationBits,
	jointLikelihoods,
	likelihoodRatio,
	posterior,
} from "../../../src/calculations/origin/evidence.ts";
import { faultOrigin } from "../../../src/calculations/origin/fault-origin.ts";
import { ORIGINS, type Origin } from "../../../src/calculations/origin/origins.ts";
import type { FaultOriginInput, Finding, FindingRule } from "../../../src/calculations/origin/types.ts";
import { verbal } from "../../../src/calculations/origin/verbal-scale.ts";
import { FINDING_RULES } from "../../../src/catalogue/origins/findings.ts";
import { ORIGIN_TEST_RULES } from "../../../src/catalogue/origins/tests.ts";
import { isTextKey, speak } from "../../../src/texts/say.ts";

const within = (got: number | null | undefined, wanted: number, tolerance: number) =>
	expect(Math.abs((got ?? Number.NaN) - wanted)).toBeLessThanOrEqual(tolerance);
const NAMED = ["missed-before-dispatch", "transit-shock", "receiver-handling", "set-up", "other-item"] as const;
const table = (...values: readonly number[]) =>
	Object.fromEntries(NAMED.map((origin, index) => [origin, values[index] ?? 0]));
const E01 = {
	priors: table(0.15, 0.4, 0.2, 0.2, 0.05),
	likelihoods: {
		one: table(0.1, 0.55, 0.1, 0.1, 0.1),
		two: table(0.98, 0.98, 0.98, 0.98, 0.02),
		three: table(0.9, 0.9, 0.9, 0.05, 0.6),
	},
};
const present = (...ids: readonly string[]): Finding[] => ids.map((id) => ({ id, state: "present" }));

function judged(input: Partial<FaultOriginInput>) {
	const answer = faultOrigin({ findings: [], rules: FINDING_RULES, testRules: ORIGIN_TEST_RULES, ...input });
	if (answer.status !== "assessed") throw new Error(answer.reason.code);
	return { ...answer.result, answer, of: (id: Origin) => answer.result.origins.find((origin) => origin.id === id) };
}

describe("numbers (reference page, section 3)", () => {
	test("E01: posteriors after each finding, 1e-7; entropies, 1e-7", () => {
		const steps = [
			[0.05357143, 0.78571429, 0.07142857, 0.07142857, 0.01785714],
			[0.05452522, 0.79970326, 0.0727003, 0.0727003, 0.00037092],
			[0.05855278, 0.85877407, 0.07807037, 0.00433724, 0.00026555],
		];
		const ids = ["one", "two", "three"];
		steps.forEach((wanted, index) => {
			const got = posterior(jointLikelihoods(present(...ids.slice(0, index + 1)), E01.likelihoods), E01.priors);
			wanted.forEach((probability, place) => {
				within(got?.get(NAMED[place] ?? "set-up"), probability, 1e-7);
			});
		});
		within(entropyBits(Object.values(E01.priors)), 2.08418372, 1e-7);
		within(entropyBits(steps[2] ?? []), 0.7527759, 1e-6);
	});
	test("E01 through the calculation, and no posterior without priors", () => {
		const got = judged({ findings: present("one", "two", "three"), ...E01 });
		within(got.of("transit-shock")?.posteriorProbability, 0.85877407, 1e-7);
		expect(got.origins[0]?.id).toBe("transit-shock");
		const without = judged({ findings: present("one", "two", "three"), likelihoods: E01.likelihoods });
		expect(without.origins.some(({ posteriorProbability }) => posteriorProbability !== undefined)).toBe(false);
	});
	test("E02: against the others weighed by their priors, 1e-6; pairwise 5.5", () => {
		const joint = jointLikelihoods(present("one", "two", "three"), E01.likelihoods);
		within(likelihoodRatio("transit-shock", joint, E01.priors), 9.1212786, 1e-6);
		within((joint.get("transit-shock") ?? 0) / (joint.get("missed-before-dispatch") ?? 1), 5.5, 1e-9);
		within(likelihoodRatio("transit-shock", joint), 5.5, 1e-9);
		within(
			judged({ findings: present("one", "two", "three"), ...E01 }).of("transit-shock")?.likelihoodRatio,
			9.1212786,
			1e-6,
		);
	});
	test("E05, E06: expected information of a binary test, 1e-9 (E05: the capacity of a symmetric channel, textbook)", () => {
		within(informationBits([0.5, 0.5], [0.9, 0.1]), 0.531004406, 1e-9);
		within(informationBits([0.1, 0.9], [0.9, 0.1]), 0.211081452, 1e-9);
	});
	test("E07: a clean soak of three mean times", () => {
		const likelihoods = { "clean-soak": { "missed-before-dispatch": Math.exp(-3), "transit-shock": 1 } };
		const priors = { "missed-before-dispatch": 0.15 / 0.55, "transit-shock": 0.4 / 0.55 };
		const got = judged({ findings: present("clean-soak"), likelihoods, priors });
		within(got.of("missed-before-dispatch")?.likelihoodRatio, 0.049787068, 1e-9);
		within(got.of("missed-before-dispatch")?.posteriorProbability, 0.018328, 1e-6);
		within(got.of("transit-shock")?.posteriorProbability, 0.981672, 1e-6);
	});
	test("thresholds: above 2 supports, below 1/2 does not, between is neutral", () => {
		const supportAt = (likelihood: number) =>
			judged({
				findings: present("one"),
				likelihoods: { one: { "transit-shock": likelihood, "set-up": 0.2 } },
			}).of("transit-shock")?.support;
		expect([0.41, 0.39, 0.11, 0.09].map(supportAt)).toEqual(["supports", "neutral", "neutral", "does-not-support"]);
	});
	test("words: an edge belongs to the band below it, and the cap cuts them", () => {
		const word = (ratio: number, cap = 1e9) => verbal(ratio, cap).sentence;
		expect([1.5, 10, 10.1, 1e6, 0.05].map((ratio) => word(ratio))).toEqual([
			"origin.scale-none",
			"origin.scale-weak",
			"origin.scale-moderate",
			"origin.scale-very-strong",
			"origin.scale-other-moderate",
		]);
		expect(word(1e5, 100)).toBe("origin.scale-moderate");
		const strong = { one: { "transit-shock": 0.9, "set-up": 0.0001 } };
		expect(
			judged({ findings: present("one"), likelihoods: strong }).answer.cautions.map(({ sentence }) => sentence),
		).toContain("origin.capped-judgement");
	});
});

describe("findings that tell of one fact count once", () => {
	test("rules: a damaged parcel, a tripped indicator and a logged shock are one blow", () => {
		const got = judged({ findings: present("parcel-damaged", "indicator-tripped", "shock-beyond-design") });
		expect(got.of("transit-shock")).toMatchObject({ countedFor: 1, support: "supports" });
		expect(got.of("transit-shock")?.for).toHaveLength(3);
	});
	test("property: a second finding of the same group with the same numbers changes nothing", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { minLength: 5, maxLength: 5 }),
				(values) => {
					const likelihoods = { one: table(...values), again: table(...values) };
					const alone = judged({ findings: [{ id: "one", state: "present", group: "g" }], likelihoods });
					const twice = judged({
						findings: ["one", "again"].map((id) => ({ id, state: "present", group: "g" })),
						likelihoods,
					});
					expect(twice.origins.map(({ likelihoodRatio: ratio }) => ratio)).toEqual(
						alone.origins.map(({ likelihoodRatio: ratio }) => ratio),
					);
				},
			),
		);
	});
	test("the two ends of one group cancel: neutral, counted on neither side", () => {
		const got = judged({ findings: present("parcel-damaged", "no-shock-recorded") });
		expect(got.of("transit-shock")).toMatchObject({ support: "neutral", countedFor: 0, countedAgainst: 0 });
	});
});

describe("support by rules", () => {
	test("nothing found: nothing is tested, and everything is missing", () => {
		const got = judged({});
		expect(new Set(got.origins.map(({ support }) => support))).toEqual(new Set(["not-tested"]));
		expect(got.origins).toHaveLength(ORIGINS.length);
		expect(got.of("unseated")?.missing).toContain("reseating-cured");
		expect(got.turnsOn).toBeNull();
	});
	test("an unknown finding is missing, not against", () => {
		const got = judged({ findings: [{ id: "reseating-cured", state: "unknown" }] });
		expect(got.of("unseated")).toMatchObject({ support: "not-tested", against: [] });
		expect(got.of("unseated")?.missing).toContain("reseating-cured");
	});
	test("agreeing marks leave no room for another item, whatever else is found", () => {
		const got = judged({ findings: present("marks-agree") });
		expect(got.of("other-item")).toMatchObject({
			support: "does-not-support",
			why: { sentence: "origin.why-ruled-out" },
		});
	});
	test("a shock and a weak joint both stand", () => {
		const got = judged({ findings: present("shock-beyond-design", "fault-at-repaired-spot") });
		expect(got.of("transit-shock")?.support).toBe("supports");
		expect(got.of("missed-before-dispatch")?.support).toBe("supports");
		expect(got.answer.cautions.map(({ sentence }) => sentence)).toContain("origin.caution-both-can-stand");
	});
	test("the order turns on the finding without which another origin leads", () => {
		const got = judged({ findings: present("reseating-cured", "fault-at-repaired-spot", "start-missed-before") });
		expect(got.origins[0]?.id).toBe("missed-before-dispatch");
		expect(got.turnsOn).toBe("fault-at-repaired-spot");
	});
	test("and never on a finding of the same group that says nothing", () => {
		const got = judged({ findings: [{ id: "parcel-damaged", state: "absent" }, ...present("shock-beyond-design")] });
		expect(got.turnsOn).toBe("shock-beyond-design");
	});
	test("a finding without rule and number says nothing, and says so", () => {
		const got = judged({ findings: present("phase-of-the-moon") });
		expect(speak(got.answer.validity.notes)).toEqual([
			"For the finding phase-of-the-moon there is no rule and no number, so it says nothing here.",
		]);
	});
});

describe("next tests", () => {
	const tests = [
		{ id: "dye", outcomes: table(0.99, 0.01, 0.01, 0.01, 0.01), destructive: true, breaksCustody: true },
		{ id: "small", outcomes: table(0.5, 0.6, 0.5, 0.5, 0.5), destructive: false, breaksCustody: false },
		{ id: "dear", outcomes: table(0.1, 0.9, 0.1, 0.1, 0.1), cost: 50, destructive: false, breaksCustody: false },
		{ id: "cheap", outcomes: table(0.1, 0.9, 0.1, 0.1, 0.1), cost: 5, destructive: false, breaksCustody: false },
	];
	test("by information, the cheaper of two alike first, the destructive one last whatever it tells", () => {
		const got = judged({ findings: [], priors: E01.priors, tests });
		expect(got.nextTests.map(({ id }) => id)).toEqual(["cheap", "dear", "small", "dye"]);
		expect(got.nextTests[3]?.informationBits ?? 0).toBeGreaterThan(got.nextTests[2]?.informationBits ?? 1);
		within(got.nextTests[0]?.informationBits, informationBits([0.4, 0.6], [0.9, 0.1]), 1e-12);
		within(got.nextTests[0]?.bitsPerCost, (got.nextTests[0]?.informationBits ?? 0) / 5, 1e-15);
	});
	test("after findings the posterior is what a test is held against", () => {
		const got = judged({ findings: present("one", "two", "three"), ...E01, tests });
		within(got.nextTests[0]?.informationBits, informationBits([0.85877407, 0.14122593], [0.9, 0.1]), 1e-6);
	});
	test("without probabilities: by pairs told apart, no bits invented, custody-breaking after all others", () => {
		const got = judged({ findings: present("marks-agree") });
		expect(got.nextTests.length).toBeGreaterThan(5);
		expect(got.nextTests.some(({ informationBits: bits }) => bits !== undefined)).toBe(false);
		const last = got.nextTests.map(({ destructive, breaksCustody }) => Number(destructive) * 2 + Number(breaksCustody));
		expect(last).toEqual([...last].sort((a, b) => a - b));
		expect(
			got.nextTests.some(({ id }) => id === "identity-marks"),
			"another item is ruled out",
		).toBe(false);
	});
	test("property: information lies between 0 and the entropy", () => {
		const pair = fc.tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
		fc.assert(
			fc.property(fc.array(pair, { minLength: 2, maxLength: 6 }), (pairs) => {
				const total = pairs.reduce((sum, [weight]) => sum + weight, 0);
				const weights = pairs.map(([weight]) => weight / total);
				const bits = informationBits(
					weights,
					pairs.map(([, positive]) => positive),
				);
				expect(bits).toBeGreaterThanOrEqual(0);
				expect(bits).toBeLessThanOrEqual(entropyBits(weights) + 1e-9);
			}),
		);
	});
});

describe("the catalogue", () => {
	const bears = (rule: FindingRule) => [...Object.keys(rule.whenPresent), ...Object.keys(rule.whenAbsent ?? {})];
	test("ids are unique, every rule bears on an origin and has a source and words", () => {
		expect(new Set(FINDING_RULES.map(({ id }) => id)).size).toBe(FINDING_RULES.length);
		for (const rule of FINDING_RULES) {
			expect(bears(rule).length, rule.id).toBeGreaterThan(0);
			expect(rule.source.locator, rule.id).not.toBe("");
			expect(isTextKey(`origin.finding-${rule.id}`), rule.id).toBe(true);
			// A finding that counts when it was looked for and not found has words for that too.
			expect(isTextKey(`origin.absent-${rule.id}`), rule.id).toBe(rule.whenAbsent !== undefined);
		}
		for (const rule of ORIGIN_TEST_RULES) expect(isTextKey(`origin.test-${rule.id}`), rule.id).toBe(true);
		for (const id of ORIGINS) expect(isTextKey(`origin.${id}`), id).toBe(true);
	});
	test("no finding rules an origin out but agreeing marks and the departure bench", () => {
		const final = FINDING_RULES.filter((rule) =>
			Object.values({ ...rule.whenPresent, ...rule.whenAbsent }).includes("rules-out"),
		);
		expect(final.map(({ id }) => id)).toEqual(["marks-agree", "bad-on-departure-bench"]);
	});
	test("every origin but none-of-these has a finding for it and a test that bears on it", () => {
		for (const origin of ORIGINS.filter((id) => id !== "none-of-these")) {
			expect(
				FINDING_RULES.some((rule) => bears(rule).includes(origin)),
				origin,
			).toBe(true);
		}
	});
	test("no rule lets a shock on the way speak against a fault that was there before", () => {
		const shocks = FINDING_RULES.filter((rule) => rule.whenPresent["transit-shock"] === "for");
		expect(shocks.every((rule) => rule.whenPresent["missed-before-dispatch"] === undefined)).toBe(true);
	});
});
