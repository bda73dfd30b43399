/** What a leg's recordings say of a shock on the way. Own expectations: each case changes one thing of a trip that is known. */
import { describe, expect, it } from "vitest";
import {
	type NotedImpact,
	type NotedTrip,
	recordedShock,
} from "../../../src/calculations/shock/recording/recorded-shock.ts";
import { isReportKey } from "../../../src/texts/say.ts";

const HOUR_MS = 3_600_000;
const WAY = { startsMs: 10 * HOUR_MS, endsMs: 50 * HOUR_MS };
const PACK = { limitGn: 30, protectedDropHeightM: 0.4, designDropHeightM: 0.8 };
const HARD: NotedImpact = {
	impactNumber: 2,
	atMs: 20 * HOUR_MS,
	peakGn: 103.3,
	peak: "above",
	drop: "above",
	dropBandM: [0.5314, 0.5368],
	isBeyondBoard: null,
};
const SOFT: NotedImpact = { ...HARD, impactNumber: 1, peakGn: 17.9, peak: "below", dropBandM: [0.04, 0.16] };
/** It ran the whole way on the item, and everything that it kept lay below. */
const QUIET: NotedTrip = {
	place: "on-item",
	device: "recorder",
	axesSeen: 3,
	span: { startsMs: 9 * HOUR_MS, endsMs: 51 * HOUR_MS },
	clockUncertaintyS: 120,
	slowestHz: 2000,
	gaps: 0,
	fullScaleGn: 200,
	thresholdGn: 5,
	eventsFound: 1,
	impacts: [SOFT],
};
const hit = (impact: Partial<NotedImpact>, trip: Partial<NotedTrip> = {}): NotedTrip => ({
	...QUIET,
	eventsFound: 2,
	impacts: [SOFT, { ...HARD, ...impact }],
	...trip,
});
const of = (...trips: (NotedTrip | null)[]) => recordedShock(trips, WAY, PACK);
const key = (shock: ReturnType<typeof recordedShock>) => [shock?.state, shock?.says.sentence.replace("origin.", "")];

describe("a shock beyond the design", () => {
	it("is present where its peak on the item passes the limit, with its figures and the drop that the pack is judged for", () => {
		expect(of(hit({}))).toEqual({
			state: "present",
			recordingNumber: 1,
			says: {
				sentence: "origin.recorded-peak-within-design",
				values: { recording: 1, impact: 2, peakGn: 103.3, limitGn: 30, lowM: 0.531, highM: 0.537, designM: 0.8 },
			},
		});
		expect(key(of(hit({ dropBandM: [0.7, 0.9] }))), "the drop may have been higher").toEqual([
			"present",
			"recorded-peak",
		]);
		expect(key(of(hit({ drop: "not-comparable" }))), "no drop is told").toEqual(["present", "recorded-peak"]);
	});

	it("is present elsewhere in the parcel by the drop alone", () => {
		const outside = { place: "on-outer-box", impacts: [{ ...HARD, peak: "not-comparable" }] } as const;
		expect(key(of(hit({}, outside)))).toEqual(["present", "recorded-drop"]);
	});

	it("is that of the greatest of several, whatever their order", () => {
		const more = (...peaks: number[]) => {
			const impacts = peaks.map((peakGn, place) => ({ ...HARD, peakGn, impactNumber: place + 1 }));
			return of({ ...QUIET, eventsFound: 3, impacts })?.says.values?.impact;
		};
		expect([more(60, 103.3, 40), more(103.3, 60, 40), more(40, 60, 103.3)]).toEqual([2, 1, 3]);
	});

	it("is present by the board's own response, though its peak stayed below the limit; on the item alone", () => {
		const response = { peak: "below", drop: "below", isBeyondBoard: true } as const;
		expect(key(of(hit(response)))).toEqual(["present", "recorded-board"]);
		expect(key(of(hit(response, { place: "on-outer-box" })))).toEqual(["unknown", "recorder-silent-place"]);
	});

	it("counts what gaps, slow sampling or a part of the way leave, since it was seen", () => {
		const partial = { gaps: 54, slowestHz: 1, span: { startsMs: 15 * HOUR_MS, endsMs: 30 * HOUR_MS } };
		expect(of(hit({}, partial))?.state).toBe("present");
	});

	it("is none where the item met less than its limit, though the drop passed what the pack protects from", () => {
		expect(key(of(hit({ peak: "below" })))).toEqual(["absent", "recorded-none"]);
	});

	it.each([
		["at the border of the way, by its clock at its worst", hit({ atMs: WAY.startsMs + 60_000 }), "elsewhere"],
		["at its other border", hit({ atMs: WAY.endsMs - 60_000 }), "elsewhere"],
		["just outside it", hit({ atMs: WAY.startsMs - 60_000 }), "elsewhere"],
		["with figures that reach to both sides", hit({ peak: "not-decided", drop: "not-decided" }), "open"],
		["where nothing may be compared", hit({ peak: "not-comparable", drop: "not-comparable" }), "open"],
		["without a clock", hit({}, { span: null }), "clock"],
		["with a clock nobody vouches for", hit({}, { clockUncertaintyS: null }), "clock"],
		["in a file that was not read", null, "unread"],
	])("is unknown %s, and says why", (_, trip, why) => {
		const shock = of(trip);
		expect(key(shock)).toEqual(["unknown", `recorder-silent-${why}`]);
		expect(isReportKey(shock?.says.sentence ?? "")).toBe(true);
	});

	it("is unknown without a sealed pack, and without a way between two records", () => {
		expect(key(recordedShock([hit({})], WAY, null))).toEqual(["unknown", "recorder-silent-no-pack"]);
		expect(key(recordedShock([hit({})], null, PACK))).toEqual(["unknown", "recorder-silent-no-line"]);
	});
});

describe("no shock beyond the design", () => {
	it("is told of a whole way on the item, and not of what lay before or after it", () => {
		expect(key(of(QUIET))).toEqual(["absent", "recorded-none"]);
		expect(key(of(hit({ atMs: 9 * HOUR_MS })))).toEqual(["absent", "recorded-none"]);
		const bare = { fullScaleGn: PACK.limitGn, thresholdGn: PACK.limitGn, slowestHz: 500 };
		expect(key(of({ ...QUIET, ...bare })), "just enough of each").toEqual(["absent", "recorded-none"]);
	});

	it.each([
		["phone", { device: "phone" }],
		["place", { place: "on-outer-box", impacts: [{ ...SOFT, drop: "below" }] }],
		["axes", { axesSeen: 1 }],
		["part", { span: { startsMs: 9 * HOUR_MS, endsMs: WAY.endsMs } }],
		["gaps", { gaps: 1 }],
		["slow", { slowestHz: 499 }],
		["slow", { slowestHz: Number.NaN }],
		["range", { fullScaleGn: null }],
		["range", { fullScaleGn: 16 }],
		["range", { thresholdGn: 50 }],
		["kept", { eventsFound: 51 }],
	] as const)("is not told where %s", (why, change) => {
		const shock = of({ ...QUIET, ...change } as NotedTrip);
		expect(key(shock)).toEqual(["unknown", `recorder-silent-${why}`]);
		expect(isReportKey(shock?.says.sentence ?? "")).toBe(true);
	});

	it("yields to another recording that leaves it open, and to one that saw a shock", () => {
		expect(key(of(QUIET, hit({ peak: "not-decided", drop: "not-decided" })))).toEqual([
			"unknown",
			"recorder-silent-open",
		]);
		const atBorder = hit({ atMs: WAY.startsMs + 60_000 });
		expect(key(of(QUIET, atBorder))).toEqual(["unknown", "recorder-silent-elsewhere"]);
		expect(of(QUIET, hit({}))).toMatchObject({ state: "present", recordingNumber: 2 });
		expect(of(null, QUIET)).toMatchObject({ state: "absent", recordingNumber: 2 });
	});
});

it("nothing is said where no recorder travelled", () => {
	expect(of()).toBeNull();
});
