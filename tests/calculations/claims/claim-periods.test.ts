/** Rules as a whole: each has words, a source and a consequence; what is missing is named; nothing is dropped in silence. */
import { describe, expect, it } from "vitest";
import { type ClaimEvents, claimPeriods } from "../../../src/calculations/claims/claim-periods.ts";
import { CLAIM_EVENTS, type DAMAGES } from "../../../src/calculations/claims/claim-rule.ts";
import { CLAIM_RULES } from "../../../src/catalogue/claim-rules.ts";
import { isTextKey } from "../../../src/texts/say.ts";

const EVERY: ClaimEvents = Object.fromEntries(CLAIM_EVENTS.map((event) => [event, "2025-03-03"]));
const ruleOf = (id: string) => CLAIM_RULES.filter((rule) => rule.id === id);
const ask = (ids: readonly string[], events: ClaimEvents, damage: (typeof DAMAGES)[number] = "apparent") =>
	claimPeriods({ rules: ids.flatMap(ruleOf), damage, events, holidays: null });

describe("every rule", () => {
	it.each(CLAIM_RULES.map((rule) => [rule.id, rule] as const))("%s", (_, rule) => {
		expect(ruleOf(rule.id)).toHaveLength(1);
		expect(isTextKey(`claims.what-${rule.id.toLowerCase()}`)).toBe(true);
		for (const reading of rule.otherReadings ?? []) expect(isTextKey(`claims.reading-${reading}`)).toBe(true);
		// What nobody read has no state of a copy; what is published and has none was quoted by others.
		if (rule.source.standing === "from-memory") expect(rule.readOn).toBeNull();
		for (const damage of rule.damage) {
			const period = claimPeriods({ rules: [rule], damage, events: EVERY, holidays: null }).result?.periods[0];
			expect(period?.missing).toEqual([]);
			if (rule.period.unit === "promptly") expect(period?.safeDate).toBe("2025-03-03");
			else if (rule.period.unit === "contract") expect(period?.safeDate).toBeNull();
			else {
				expect(period?.endsOn).not.toBeNull();
				if (rule.consequence !== "deemed-lost") expect((period?.safeDate ?? "") <= (period?.endsOn ?? "")).toBe(true);
			}
			const none = claimPeriods({ rules: [rule], damage, events: {}, holidays: null }).result?.periods[0];
			expect(none).toMatchObject({ endsOn: null, safeDate: null });
			if (rule.period.unit !== "contract") expect(none?.missing.length).toBeGreaterThan(0);
		}
	});
});

describe("consequences are never flattened (section 1 of the claims page)", () => {
	it.each([
		["presumption", ["CMR-DMG-APPARENT", "CMR-DMG-CONCEALED", "DE-HGB438-1", "DE-HGB438-2"]],
		["burden-shift", ["US-NMFC-300135"]],
		["extinction", ["MC99-DMG", "CIM-APPARENT", "CIM-CONCEALED", "FR-L133-3", "CH-OR452", "DE-HGB438-3", "CMR-DELAY"]],
		["extinction", ["DE-HGB451F-APPARENT", "DE-HGB451F-CONCEALED"]],
		["no-liability", ["UPU-INQUIRY", "UPU-RESERVE"]],
		["contractual", ["US-CARMACK-CLAIM", "US-CARMACK-SUIT", "UK-DOMESTIC", "NL-BW8-ROAD"]],
		["incontestable", ["CMR-DMG-JOINTCHECK"]],
	] as const)("%s", (consequence, ids) => {
		for (const id of ids) expect(ruleOf(id)[0]?.consequence, id).toBe(consequence);
	});
});

describe("notices, missing events and cautions", () => {
	it("a notice that was sent is held against both dates, where sending in time suffices", () => {
		const sent = (noticeSent: string) =>
			ask(["MC99-DMG"], { delivered: "2025-02-20", noticeSent }).result?.periods[0]?.notice;
		expect(sent("2025-03-05")).toBe("by-safe-date");
		expect(sent("2025-03-06")).toBe("by-end");
		expect(sent("2025-03-07")).toBe("after-end");
		const swiss = ask(["CH-OR452"], { delivered: "2025-02-20", noticeSent: "2025-02-21" }, "not-apparent");
		expect(swiss.result?.periods[0]?.notice).toBeNull();
	});
	it("names the events of which one is missing", () => {
		expect(ask(["CMR-LOSS-PRESUMED"], { delivered: "2025-03-03" }, "loss").result?.periods[0]?.missing).toEqual([
			"agreedLimit",
			"takenOver",
		]);
	});
	it("says that holidays were not given, that a rule is of another damage, and that one was recalled", () => {
		const cautions = ask(["CMR-DMG-CONCEALED"], { delivered: "2025-03-03" }).cautions.map(({ sentence }) => sentence);
		expect(cautions).toContain("claims.no-holidays");
		expect(cautions).toContain("claims.other-damage");
		const recalled = ask(["FR-L133-6"], { delivered: "2025-03-03" });
		expect(recalled.validity.within).toBe(false);
		expect(recalled.validity.notes.map(({ sentence }) => sentence)).toEqual(["claims.from-memory"]);
		expect(ask(["CMR-SUIT"], { delivered: "2025-03-03" }).validity).toEqual({ within: true, notes: [] });
	});
});
