/** When a parcel may be opened, as times. The hours come from the calculation; here it is how they are shown. */
import { describe, expect, it } from "vitest";
import { assessed, notAssessed, sentence } from "../../src/calculations/judged.ts";
import { CALCULATIONS } from "../../src/operations/calculations/list.ts";
import { platformFinding } from "../../src/pages/customer/platform.ts";
import { waitOf } from "../../src/pages/customer/wait.ts";
import { offsetOf, showTime } from "../../src/texts/shown-time.ts";

const NOW = new Date("2026-03-05T12:00:00Z");
const COLD = {
	setUp: { ambient: { value: 22, unit: "degC" }, humidity: { value: 35, unit: "percent" } },
	parcel: {
		mass: { value: 2000, unit: "g" },
		temperature: { value: -20, unit: "degC" },
		temperatureBasis: "weather",
		inHandAt: "2026-03-05T10:00:00+01:00",
	},
} as const;

/** The worked example of the contract page: 22 °C, 35 %, −20 °C, time constant 1.75 h. */
const EXAMPLE = { dewPointDegC: 5.8, modelWaitH: 2.0, openAfterH: 4.1, powerAfterH: 12 };

describe("the wait", () => {
	it("gives the calculation what was entered, and counts from the time in hand", () => {
		let asked: unknown;
		const wait = waitOf(COLD, NOW, (request) => {
			asked = request;
			return assessed(EXAMPLE, { sources: [] });
		});
		expect(asked).toEqual({
			roomTemperatureDegC: 22,
			roomHumidityPercent: 35,
			parcelTemperatureDegC: -20,
			parcelTemperatureBasis: "weather",
			timeConstantH: 1.75,
			wetnessSeen: false,
		});
		expect(wait).toMatchObject({
			kind: "wait",
			openAt: new Date("2026-03-05T13:06:00Z"),
			powerAt: new Date("2026-03-05T21:00:00Z"),
			assumedHumidityPercent: null,
			frozen: true,
		});
	});

	it("counts from when the temperatures were entered where no time in hand was given, however late one looks", () => {
		const parcel = {
			temperature: { value: 5, unit: "degC" },
			temperaturesNotedAt: "2026-03-05T07:30:00.000Z",
		} as const;
		const content = { setUp: { ambient: { value: 20, unit: "degC" } }, parcel } as const;
		const wait = waitOf(content, NOW, () => assessed(EXAMPLE, { sources: [] }));
		expect(wait).toMatchObject({
			countedFrom: new Date("2026-03-05T07:30:00Z"),
			countedFromEntry: true,
			openAt: new Date("2026-03-05T11:36:00Z"),
		});
	});

	it("takes the damp room, the slow parcel and a guess where nothing was said, and says so", () => {
		let asked: Record<string, unknown> = {};
		const wait = waitOf(
			{ setUp: { ambient: { value: 20, unit: "degC" } }, parcel: { temperature: { value: 5, unit: "degC" } } },
			NOW,
			(request) => {
				asked = request as Record<string, unknown>;
				return assessed(EXAMPLE, { sources: [] });
			},
		);
		expect(asked).toMatchObject({ roomHumidityPercent: 70, parcelTemperatureBasis: "guess", timeConstantH: 4 });
		expect(wait).toMatchObject({ countedFrom: NOW, countedFromEntry: true, assumedHumidityPercent: 70 });
	});

	it("never turns a missing answer into no wait", () => {
		expect(waitOf({}, NOW).kind).toBe("not-entered");
		expect(waitOf(COLD, NOW, () => notAssessed("x", sentence("general.not-legal-advice"))).kind).toBe("not-assessed");
		const never = { ...EXAMPLE, openAfterH: null, powerAfterH: null };
		expect(waitOf(COLD, NOW, () => assessed(never, { sources: [] })).kind).toBe("never");
	});

	it.skipIf(!CALCULATIONS.some((calculation) => calculation.name === "condensation"))(
		"agrees with the contract page's example through the real calculation",
		() => {
			const wait = waitOf(COLD, NOW);
			if (wait.kind !== "wait") throw new Error(`it is ${wait.kind}`);
			// The page rounds to 0.1 h: half a unit of its last digit.
			const openAfterH = ((wait.openAt?.getTime() ?? 0) - wait.countedFrom.getTime()) / 3_600_000;
			const powerAfterH = ((wait.powerAt?.getTime() ?? 0) - wait.countedFrom.getTime()) / 3_600_000;
			expect(Math.abs(openAfterH - 4.1)).toBeLessThanOrEqual(0.05);
			expect(Math.abs(powerAfterH - 12)).toBeLessThanOrEqual(0.5);
			expect(Math.abs(wait.dewPointDegC - 5.8)).toBeLessThanOrEqual(0.05);
		},
	);
});

describe("did not start on this platform", () => {
	it("excludes only what a control excluded, and always leaves the board itself open", () => {
		expect(platformFinding({ state: "good" })).toBeNull();
		const alone = platformFinding({ state: "does-not-start" });
		expect(alone?.excluded).toEqual([]);
		expect(alone?.open).toContain("arrival.cause.supply");
		const controlled = platformFinding({
			state: "does-not-start",
			setUp: { controlBefore: true, controlAfter: true, platforms: 1 },
		});
		expect(controlled?.excluded).toContain("arrival.cause.slot");
		expect(controlled?.open).toEqual(["arrival.cause.seating", "arrival.cause.firmware", "arrival.cause.item"]);
	});
});

describe("times as shown", () => {
	it("stand on the person's own clock with the difference from UTC", () => {
		expect(showTime("2026-03-05T23:30:00Z", "+01:00")).toBe("6 Mar 2026, 00:30 (UTC+01:00)");
		expect(showTime("2026-03-05T00:10:00Z", "-03:30")).toBe("4 Mar 2026, 20:40 (UTC−03:30)");
		expect(showTime("2026-03-05T00:10:00Z")).toBe("5 Mar 2026, 00:10 (UTC)");
		expect(offsetOf(-210)).toBe("-03:30");
	});
});
