/**
 * Whether what recorders noted of a leg holds a shock beyond what pack and board were judged for, shows that there was none, or
 * does not tell. A shock counts only where it lies on the leg by the clock at its worst; none is told only where one recorder on
 * the item ran the whole leg and would have seen it.
 */
import { type Sentence, sentence } from "../../judged.ts";
import type { Against, RecorderPlace } from "./event-against-pack.ts";
import type { TimedSpan } from "./event-place.ts";

/** One impact, set against pack and board. */
export interface NotedImpact {
	readonly impactNumber: number;
	/** Milliseconds since 1970; null where the recording has no clock. */
	readonly atMs: number | null;
	readonly peakGn: number;
	readonly peak: Against["verdict"];
	readonly drop: Against["verdict"];
	/** Of the fall that it would take; lower and upper end. */
	readonly dropBandM: readonly [low: number, high: number];
	/** Whether the board's response passes what the rule on boards allows; null where nothing is known of it. */
	readonly isBeyondBoard: boolean | null;
}

export interface NotedTrip {
	readonly place: RecorderPlace;
	readonly device: "recorder" | "phone";
	readonly axesSeen: number;
	/** By its clock; null without one. */
	readonly span: TimedSpan | null;
	readonly clockUncertaintyS: number | null;
	readonly slowestHz: number;
	readonly gaps: number;
	readonly fullScaleGn: number | null;
	readonly thresholdGn: number;
	/** All that were found; the greatest are kept. */
	readonly eventsFound: number;
	readonly impacts: readonly NotedImpact[];
}

/** What the newest sealed pack was judged by; null without one. */
export interface JudgedPack {
	readonly limitGn: number;
	readonly protectedDropHeightM: number | null;
	/** The drop that a pack for this trip is judged for. */
	readonly designDropHeightM: number | null;
}

export interface RecordedShock {
	readonly state: "present" | "absent" | "unknown";
	readonly says: Sentence;
	/** Place among the leg's recordings of the one that says so, counted from 1. */
	readonly recordingNumber: number;
}

/** Five samples in a half sine of 10 ms, ten in a period of its frequency. Source: transit-hazards page, section 6, for the ten; the 10 ms are our choice. */
const LEAST_HZ = 500;

/**
 * @param trips of the leg, oldest first; null for one that was not read yet
 * @param way the leg without the stays at its ends; null where the line does not reach so far
 * @returns null where no recorder travelled
 */
export function recordedShock(
	trips: readonly (NotedTrip | null)[],
	way: TimedSpan | null,
	pack: JudgedPack | null,
): RecordedShock | null {
	const told = trips.map((trip, index) => ({ ...ofTrip(trip, way, pack, index + 1), recordingNumber: index + 1 }));
	const first = (isOne: (one: OfTrip) => boolean) => told.find(isOne);
	// None is told only where no other recording leaves it open whether an impact went beyond.
	const found =
		first(({ state }) => state === "present") ??
		first(({ hasOpenImpact }) => hasOpenImpact) ??
		first(({ state }) => state === "absent") ??
		told[0];
	return found === undefined ? null : { state: found.state, says: found.says, recordingNumber: found.recordingNumber };
}

type OfTrip = Omit<RecordedShock, "recordingNumber"> & { readonly hasOpenImpact: boolean };

function ofTrip(trip: NotedTrip | null, way: TimedSpan | null, pack: JudgedPack | null, recording: number): OfTrip {
	const silent = (why: string, hasOpenImpact = false): OfTrip => ({
		state: "unknown",
		says: sentence(`origin.recorder-silent-${why}`, { recording }),
		hasOpenImpact,
	});
	if (trip === null) return silent("unread");
	if (pack === null) return silent("no-pack");
	if (trip.span === null || trip.clockUncertaintyS === null) return silent("clock");
	if (way === null) return silent("no-line");
	const offMs = trip.clockUncertaintyS * 1000;
	const mayBeOnWay = trip.impacts.filter(
		({ atMs }) => atMs !== null && atMs + offMs >= way.startsMs && atMs - offMs <= way.endsMs,
	);
	const beyond = mayBeOnWay.filter((impact) => isBeyond(impact, trip) === true);
	const onWay = beyond.filter(
		({ atMs }) => atMs !== null && atMs - offMs >= way.startsMs && atMs + offMs <= way.endsMs,
	);
	const worst = greatestOf(onWay);
	if (worst !== undefined) {
		return { state: "present", says: shockWords(worst, trip, pack, recording), hasOpenImpact: false };
	}
	if (beyond.length > 0) return silent("elsewhere", true);
	if (mayBeOnWay.some((impact) => isBeyond(impact, trip) === null)) return silent("open", true);
	const why = whyNotAbsent(trip, way, offMs, pack);
	if (why !== null) return silent(why);
	return { state: "absent", says: sentence("origin.recorded-none", { recording }), hasOpenImpact: false };
}

/** Null where the figures do not tell. What the recorder on the item says of its peak goes before the fall that it took. */
function isBeyond({ peak, drop, isBeyondBoard }: NotedImpact, { place }: NotedTrip): boolean | null {
	if (peak === "above" || (place === "on-item" && isBeyondBoard === true)) return true;
	if (peak === "below") return false;
	if (drop === "above") return true;
	return drop === "below" ? false : null;
}

function greatestOf(impacts: readonly NotedImpact[]): NotedImpact | undefined {
	return impacts.reduce<NotedImpact | undefined>(
		(one, other) => (one === undefined || other.peakGn > one.peakGn ? other : one),
		undefined,
	);
}

function shockWords(impact: NotedImpact, trip: NotedTrip, pack: JudgedPack, recording: number): Sentence {
	const { impactNumber, peakGn, peak, dropBandM } = impact;
	const [lowM, highM] = dropBandM.map((metres) => Math.round(metres * 1000) / 1000) as [number, number];
	const { limitGn, protectedDropHeightM, designDropHeightM } = pack;
	const which = { recording, impact: impactNumber };
	if (peak === "above") {
		const values = { ...which, peakGn: Math.round(peakGn * 10) / 10, limitGn };
		const isWithin = impact.drop !== "not-comparable" && designDropHeightM !== null && highM <= designDropHeightM;
		return isWithin
			? sentence("origin.recorded-peak-within-design", { ...values, lowM, highM, designM: designDropHeightM })
			: sentence("origin.recorded-peak", values);
	}
	if (trip.place === "on-item" && impact.isBeyondBoard === true) return sentence("origin.recorded-board", which);
	return sentence("origin.recorded-drop", { ...which, lowM, highM, protectedM: protectedDropHeightM ?? 0 });
}

/** Why a recording without a shock does not show that there was none; null where it does. */
function whyNotAbsent(trip: NotedTrip, way: TimedSpan, offMs: number, { limitGn }: JudgedPack): string | null {
	const { place, device, axesSeen, span, slowestHz, gaps, fullScaleGn, thresholdGn, eventsFound, impacts } = trip;
	if (device === "phone") return "phone";
	if (place !== "on-item") return "place";
	if (!(axesSeen === 3)) return "axes";
	if (span === null || !(span.startsMs + offMs <= way.startsMs && span.endsMs - offMs >= way.endsMs)) return "part";
	if (gaps > 0) return "gaps";
	if (!(slowestHz >= LEAST_HZ)) return "slow";
	if (!(fullScaleGn !== null && fullScaleGn >= limitGn && thresholdGn <= limitGn)) return "range";
	return eventsFound > impacts.length ? "kept" : null;
}
