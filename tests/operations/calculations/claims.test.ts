/** The claims in the API: holidays by country and region, refusals by name, words. */
import { describe, expect, it } from "vitest";
import { Fault } from "../../../src/faults.ts";
import { publicHolidays } from "../../../src/operations/calculations/holidays.ts";
import { CALCULATIONS } from "../../../src/operations/calculations/list.ts";
import { validate } from "../../../src/operations/validate.ts";
import { speak } from "../../../src/texts/say.ts";

const eur = (amount: number) => ({ amount, currency: "EUR" });

function ask(name: string, request: unknown) {
	const operation = CALCULATIONS.find((candidate) => candidate.name === name);
	if (operation === undefined) throw new Error(name);
	const answer = speak(operation.assess(validate(operation.request, request)));
	if (answer.status === "assessed") expect(operation.result.safeParse(answer.result).error).toBeUndefined();
	return answer;
}
function wrongIn(name: string, request: unknown): string[] {
	try {
		ask(name, request);
	} catch (error) {
		if (error instanceof Fault) return error.members.map((member) => member.path);
		throw error;
	}
	return [];
}
const PERIODS = { rules: ["CMR-DMG-CONCEALED"], damage: "not-apparent", events: { delivered: "2025-03-03" } };
const firstOf = (request: unknown) => {
	const { result } = ask("claim-periods", request) as unknown as {
		result: { periods: { endsOn: string; skipped: string[]; what: string }[] };
	};
	return result.periods[0];
};

describe("holidays", () => {
	it("are those of the whole country, or of the region named", () => {
		// 6 January 2026, a Tuesday, is a holiday in Bavaria and not in Hamburg.
		const events = { delivered: "2026-01-02" };
		expect(firstOf({ ...PERIODS, events, holidays: { country: "DE" } })?.endsOn).toBe("2026-01-10");
		expect(firstOf({ ...PERIODS, events, holidays: { country: "DE", region: "HH" } })?.endsOn).toBe("2026-01-10");
		expect(firstOf({ ...PERIODS, events, holidays: { country: "DE", region: "BY" } })?.endsOn).toBe("2026-01-12");
	});
	it("without a region, where regions have further ones, that is said", () => {
		const said = (holidays: object) => JSON.stringify(ask("claim-periods", { ...PERIODS, holidays }).cautions);
		expect(said({ country: "DE" })).toContain("without a region");
		expect(said({ country: "DE", region: "BY" })).not.toContain("without a region");
		expect(said({ country: "PL" })).not.toContain("without a region");
	});
	it("can be added, removed, or given as dates", () => {
		const added = { country: "DE", add: ["2025-03-05"], remove: [] };
		expect(firstOf({ ...PERIODS, holidays: added })?.endsOn).toBe("2025-03-12");
		const removed = {
			...PERIODS,
			events: { delivered: "2025-12-22" },
			holidays: { country: "DE", remove: ["2025-12-26"] },
		};
		expect(firstOf(removed)?.endsOn).toBe("2025-12-31");
		expect(firstOf({ ...PERIODS, holidays: { dates: ["2025-03-04"] } })?.skipped).toEqual(["2025-03-04", "2025-03-09"]);
	});
	it("do not depend on the machine's time zone", () => {
		const zone = process.env.TZ;
		const all = ["UTC", "Pacific/Auckland", "America/Los_Angeles"].map((name) => {
			process.env.TZ = name;
			return publicHolidays({ country: "DE" }, [2025]).dates;
		});
		if (zone === undefined) delete process.env.TZ;
		else process.env.TZ = zone;
		expect(all[0]).toContain("2025-10-03");
		expect(all[1]).toEqual(all[0]);
		expect(all[2]).toEqual(all[0]);
	});
	it("of Germany in 2025 are the nine of the whole country (statutory list, from memory)", () => {
		expect(publicHolidays({ country: "DE" }, [2025])).toEqual({
			dates: [
				"2025-01-01",
				"2025-04-18",
				"2025-04-21",
				"2025-05-01",
				"2025-05-29",
				"2025-06-09",
				"2025-10-03",
				"2025-12-25",
				"2025-12-26",
			],
			doubtful: [],
			regionsDiffer: true,
		});
	});
});

describe("claims in words", () => {
	it("a regime without a rule for the damage named is not assessed, and says so", () => {
		expect(ask("claim-periods", { regime: "uk-sale", damage: "loss", events: {} })).toMatchObject({
			status: "not-assessed",
			reason: { code: "no-rule" },
		});
	});
	it("events centuries apart do not ask for the holidays of all years between (the event loop waits for them)", () => {
		const events = { delivered: "1971-03-01", claimed: "2199-01-01", discovered: "2199-01-01" };
		const begun = process.cpuUsage();
		expect(firstOf({ ...PERIODS, events, holidays: { country: "DE" } })?.endsOn).toBe("1971-03-09");
		// 230 years take seconds of the processor; two take some milliseconds.
		const { user, system } = process.cpuUsage(begun);
		expect((user + system) / 1000).toBeLessThan(500);
	});
	it("a regime gives all of its rules for the damage named, each with article and consequence", () => {
		const answer = ask("claim-periods", { regime: "cmr", damage: "not-apparent", events: { delivered: "2025-03-03" } });
		const { periods } = answer.result as unknown as { periods: { ruleId: string; what: string; readOn: string }[] };
		expect(periods.map(({ ruleId }) => ruleId)).toEqual(["CMR-DMG-CONCEALED", "CMR-DMG-JOINTCHECK", "CMR-SUIT"]);
		for (const { what, readOn } of periods) {
			expect(what).not.toContain("claims.");
			expect(readOn).toBe("2017-05-10");
		}
		expect(answer.cautions[0]).toContain("not legal advice");
	});
	it("amounts come in words and money", () => {
		const request = {
			regime: "nl-road",
			packages: [{ grossMassKg: 2.4, affected: true }],
			loss: "total",
			eventDate: "2026-01-02",
		};
		expect(ask("claim-cap", request).result).toMatchObject({ capAmount: eur(8.16), total: null });
	});
});

describe("refused, with the member named", () => {
	const cap = {
		regime: "cmr",
		packages: [{ grossMassKg: 2.4, affected: true }],
		loss: "total",
		eventDate: "2026-01-02",
		value: eur(1200),
	};
	const offer = { value: eur(1200), damageProbability: 0.01 };
	it.each([
		["neither regime nor rules", "claim-periods", { ...PERIODS, rules: undefined }, ["/regime"]],
		["both", "claim-periods", { ...PERIODS, regime: "cmr" }, ["/regime"]],
		["a rule that is not there", "claim-periods", { ...PERIODS, rules: ["CMR-SUIT", "X-1"] }, ["/rules/1"]],
		[
			"a day that is not there",
			"claim-periods",
			{ ...PERIODS, events: { delivered: "2025-02-29" } },
			["/events/delivered"],
		],
		[
			"a time instead of a date",
			"claim-periods",
			{ ...PERIODS, events: { delivered: "2025-03-03T10:00:00Z" } },
			["/events/delivered"],
		],
		[
			"a year out of range",
			"claim-periods",
			{ ...PERIODS, events: { delivered: "2201-01-01" } },
			["/events/delivered"],
		],
		[
			"a rejection before the claim",
			"claim-periods",
			{ ...PERIODS, events: { claimed: "2025-03-03", rejected: "2025-03-02" } },
			["/events/rejected"],
		],
		[
			"a country that is not there",
			"claim-periods",
			{ ...PERIODS, holidays: { country: "XX" } },
			["/holidays/country"],
		],
		[
			"a region that is not there",
			"claim-periods",
			{ ...PERIODS, holidays: { country: "DE", region: "ZZ" } },
			["/holidays/region"],
		],
		["no package affected", "claim-cap", { ...cap, packages: [{ grossMassKg: 1, affected: false }] }, ["/packages"]],
		["no mass", "claim-cap", { ...cap, packages: [{ grossMassKg: 0, affected: true }] }, ["/packages/0/grossMassKg"]],
		["two currencies", "claim-cap", { ...cap, freight: { amount: 1, currency: "USD" } }, ["/value"]],
		["more left than there was", "claim-cap", { ...cap, residualValue: eur(1300) }, ["/residualValue"]],
		[
			"interest backwards",
			"claim-cap",
			{ ...cap, interest: { from: "2025-02-01", to: "2025-01-01" } },
			["/interest/to"],
		],
		["tenths of a cent", "claim-cap", { ...cap, value: eur(0.001) }, ["/value/amount"]],
		["a regime without a rule on amounts", "claim-cap", { ...cap, regime: "de-sale" }, ["/regime"]],
		["a probability over 1", "insurance", { ...offer, damageProbability: 1.1 }, ["/damageProbability"]],
		["half a leg", "insurance", { ...offer, legs: 0.5 }, ["/legs"]],
		[
			"an aversion of both kinds",
			"insurance",
			{ ...offer, riskAversion: 0.001, relativeRiskAversion: 0.5, wealth: eur(9000) },
			["/relativeRiskAversion"],
		],
		["a relative aversion without a wealth", "insurance", { ...offer, relativeRiskAversion: 0.5 }, ["/wealth"]],
		["a wealth without the item", "insurance", { ...offer, wealth: eur(1) }, ["/wealth"]],
		["two currencies in an offer", "insurance", { ...offer, premium: { amount: 1, currency: "USD" } }, ["/value"]],
	] as const)("%s (%s)", (_, name, request, paths) => {
		expect(wrongIn(name, request)).toEqual(paths);
	});
});
