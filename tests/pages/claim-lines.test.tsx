/** What an order's page says of a leg's claim in a line or two, from views as the service gives them. */
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { LegClaimView } from "../../src/contract/leg-claim.ts";
import { Countdown } from "../../src/pages/claims/countdown.tsx";
import { CoverLine } from "../../src/pages/claims/cover-section.tsx";

type Period = LegClaimView["periods"][number];

const notice = {
	ruleId: "R-NOTICE",
	what: "Notice of damage.",
	article: "Art. 1",
	form: "writing",
	consequence: "presumption",
	standing: "published",
	safeDate: "2026-03-10",
	leftDays: -3,
} as unknown as Period;
const court = { ...notice, ruleId: "R-COURT", what: "Court action.", form: "court-action", consequence: "time-bar" };
const later = { ...court, safeDate: "2027-03-03", leftDays: 355 } as unknown as Period;
const claim = {
	orderId: "ord_1",
	consignmentId: "con_1",
	question: "in-question",
	damageBasis: "chosen",
	regimeBasis: "chosen",
	otherReading: null,
	events: {},
	periods: [notice, later],
	nextRuleId: "R-COURT",
} as unknown as LegClaimView;
const lineOf = (changed: object) => renderToString(<Countdown claim={{ ...claim, ...changed } as LegClaimView} />);

describe("the line of dates", () => {
	it("tells a notice that was missed before the date that comes next", () => {
		const line = lineOf({});
		expect(line).toContain("Passed, and no notice is kept here: Notice of damage. Safe date 2026-03-10");
		expect(line.indexOf("Passed")).toBeLessThan(line.indexOf("Court action. Safe date 2027-03-03: 355 days left"));
	});
	it("tells nothing missed where a notice or a claim is kept, or the day is not over", () => {
		for (const events of [{ noticeSent: "2026-03-05" }, { claimed: "2026-03-05" }]) {
			expect(lineOf({ events })).not.toContain("Passed");
		}
		const today = { ...notice, leftDays: 0 };
		expect(lineOf({ periods: [today, later], nextRuleId: "R-NOTICE" })).not.toContain("no notice is kept");
	});
	it("says what was missed once, where nothing comes after it", () => {
		const line = lineOf({ periods: [notice], nextRuleId: "R-NOTICE" });
		expect(line.match(/Notice of damage/g)).toHaveLength(1);
	});
	it("is silent where an arrival is sealed and nothing speaks of a claim, and not before", () => {
		expect(lineOf({ question: "nothing-seen" })).toBe("");
		expect(lineOf({ question: "open" })).toContain("Court action");
	});
});

describe("the line of cover", () => {
	const cover = {
		capAmount: { amount: 30.49, currency: "EUR" },
		capSdr: 25.41,
		shareOfValue: 0.01051,
		insuredValue: null,
		source: { standing: "published" },
	};
	const of = (declaredValue: object | null) =>
		renderToString(<CoverLine claim={{ ...claim, cover: { ...cover, declaredValue } } as unknown as LegClaimView} />);
	it("does not hold a limit against a value that is declared above it", () => {
		const line = of({ amount: 2900, currency: "EUR" });
		expect(line).toContain("A value of 2900.00 EUR is noted as declared");
		expect(line).toContain("If the carrier did not agree to it, it pays at most 30.49 EUR, 1.1 % of the value");
	});
	it("says the limit plainly where nothing above it is declared", () => {
		for (const declared of [null, { amount: 20, currency: "EUR" }]) {
			expect(of(declared)).toContain("The carrier pays at most 30.49 EUR, 1.1 % of the value, if no more is declared.");
		}
	});
});
