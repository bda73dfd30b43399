/** Requests of the packaging side that are refused, each with the member to mend: physically impossible, or incomplete. */
import { describe, expect, it } from "vitest";
import { Fault } from "../../../src/faults.ts";
import { CALCULATIONS } from "../../../src/operations/calculations/list.ts";
import { validate } from "../../../src/operations/validate.ts";

const CUSHION = { thicknessM: 0.05, dropHeightM: 0.762, staticStressKPa: 0.66, limitGn: 12 };
const ROOM = { roomTemperatureDegC: 22, roomHumidityPercent: 35, parcelTemperatureDegC: -20 };

const SOAK = { hours: 24, failures: 0, coldStarts: 5, coldStartFailures: 0, confidence: 0.95 };
const EUR = { amount: 2, currency: "EUR" };
const FOUND = { id: "found", state: "present" };
const READING = {
	kind: "measured",
	comparability: "any-bench",
	betterIs: "lower",
	departure: { values: [1] },
	arrival: { values: [1] },
};

function pathsOf(name: string, request: unknown): string[] {
	const operation = CALCULATIONS.find((candidate) => candidate.name === name);
	if (operation === undefined) throw new Error(name);
	try {
		operation.assess(validate(operation.request, request));
	} catch (error) {
		if (error instanceof Fault) return error.members.map((member) => member.path);
		throw error;
	}
	return [];
}

describe("refused, with the member named", () => {
	it.each([
		// e·a·b = 0.0027: better than a constant force over the whole thickness, which energy forbids.
		[
			"a set better than any foam can be",
			"cushion",
			{ ...CUSHION, foam: { model: "stress-energy", aKPa: 1, bPerKPa: 0.001 } },
			"/foam/bPerKPa",
		],
		["a foam that the catalogue does not have", "cushion", { ...CUSHION, foam: { id: "none-such" } }, "/foam/id"],
		["a mass of nothing", "drop-height", { massKg: 0 }, "/massKg"],
		["a mass below nothing", "drop-height", { massKg: -2 }, "/massKg"],
		["a rebound faster than the fall", "impact", { dropHeightM: 1, restitution: 1.1 }, "/restitution"],
		["a fall given twice", "impact", { dropHeightM: 1, freeFallTimeS: 0.4, restitution: 0 }, "/dropHeightM"],
		["air more than saturated", "condensation", { ...ROOM, roomHumidityPercent: 101 }, "/roomHumidityPercent"],
		["a trapezoid without its ramps", "pulse", { shape: "trapezoid", peakGn: 50, durationMs: 11 }, "/rampShare"],
		["points that are not there", "pulse", { shape: "points", peakGn: 50, durationMs: 11 }, "/points"],
		["a member that does not exist", "drop-height", { massKg: 2, height: 1 }, "/height"],
		["more failed starts than starts", "soak", { ...SOAK, coldStarts: 2, coldStartFailures: 3 }, "/coldStartFailures"],
		["a failure under load in no hours", "soak", { ...SOAK, hours: 0, failures: 1 }, "/failures"],
		[
			"costs in two currencies",
			"soak",
			{ ...SOAK, costPerH: EUR, costOfReturn: { ...EUR, currency: "CHF" } },
			"/costOfReturn",
		],
		["an hour that costs nothing", "soak", { ...SOAK, costPerH: 0 }, "/costPerH"],
		["certainty", "soak", { ...SOAK, confidence: 1 }, "/confidence"],
		["a finding given twice", "fault-origin", { findings: [FOUND, FOUND] }, "/findings/1/id"],
		[
			"priors that do not add up",
			"fault-origin",
			{ findings: [], priors: { "set-up": 0.5, unseated: 0.4 } },
			"/priors",
		],
		[
			"an origin that is not in the list",
			"fault-origin",
			{ findings: [], tests: [{ id: "t", outcomes: { carrier: 1 }, destructive: false, breaksCustody: false }] },
			"/tests/0/outcomes/carrier",
		],
		[
			"numbers over other origins than the priors",
			"fault-origin",
			{
				findings: [FOUND],
				likelihoods: { found: { "set-up": 0.1, unseated: 0.2 } },
				priors: { "set-up": 0.5, moisture: 0.5 },
			},
			"/priors",
		],
		[
			"a probability over one",
			"fault-origin",
			{ findings: [FOUND], likelihoods: { found: { "set-up": 1.1, unseated: 0.2 } } },
			"/likelihoods/found/set-up",
		],
		["a lifetime counter that is no count", "reading-comparison", { ...READING, counter: "lifetime" }, "/counter"],
		[
			"more bursts than events",
			"reading-comparison",
			{ ...READING, kind: "count", departure: { count: 1, bursts: 2 }, arrival: { count: 1 } },
			"/departure/bursts",
		],
	] as const)("%s (%s)", (_, name, request, path) => {
		expect(pathsOf(name, request)).toEqual([path]);
	});
});

describe("a set of one's own", () => {
	it("in gas form is not assessed outside the strains it was checked for, 0.25 to 0.8", () => {
		const operation = CALCULATIONS.find((candidate) => candidate.name === "cushion");
		const foam = { model: "gas-compression", yieldStressKPa: 50, relativeDensity: 0.037 };
		const ask = (staticStressKPa: number) =>
			operation?.assess({ foam, thicknessM: 0.05, dropHeightM: 0.6, staticStressKPa, limitGn: 1000 }).result;
		// Energies of 12 and of 48 kJ/m³: strains of 0.19 and of 0.52.
		expect(ask(1)).toMatchObject({ verdict: "not-assessed", verdictCode: "outside-range" });
		expect(ask(4)).toMatchObject({ verdict: "provisional" });
	});
});
