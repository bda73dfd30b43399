/**
 * An event set against the pack that was sealed: its drop against the height that the pack protects from, its peak against what
 * the item was judged to take. What may be compared depends on where in the parcel the recorder sat: between the outer box and the
 * item lies the cushion, so a peak on the box says nothing of the item's.
 */
import { type Sentence, sentence } from "../../judged.ts";
import type { EventFacts } from "./event-facts.ts";

export const RECORDER_PLACES = ["on-item", "on-inner-box", "on-outer-box", "in-cushion", "not-known"] as const;
export type RecorderPlace = (typeof RECORDER_PLACES)[number];

export interface PackLimits {
	/** Null where the pack's cushions gave none. */
	readonly protectedDropHeightM: number | null;
	readonly limitGn: number;
}

export interface Against {
	/** `not-comparable`: not by this place, or by nothing that is known. `not-decided`: the figures reach to both sides. */
	readonly verdict: "below" | "above" | "not-decided" | "not-comparable";
	readonly why: Sentence;
}

export interface EventAgainstPack {
	readonly peak: Against;
	readonly drop: Against;
}

export function eventAgainstPack(event: EventFacts, place: RecorderPlace, pack: PackLimits | null): EventAgainstPack {
	return { peak: peakAgainst(event, place, pack), drop: dropAgainst(event, place, pack) };
}

function peakAgainst(event: EventFacts, place: RecorderPlace, pack: PackLimits | null): Against {
	if (place !== "on-item") return against("not-comparable", `peak-${place}`);
	if (pack === null) return against("not-comparable", "no-pack");
	if (event.peakDoubt === "phone") return against("not-comparable", "peak-phone");
	const values = { peakGn: event.peakGn, limitGn: pack.limitGn };
	if (event.peakGn > pack.limitGn) return against("above", "peak-above", values);
	// A lower bound that lies below the limit decides nothing.
	if (!(event.peakDoubt === null && event.peakGn <= pack.limitGn)) return against("not-decided", "peak-open", values);
	return against("below", "peak-below", values);
}

function dropAgainst(event: EventFacts, place: RecorderPlace, pack: PackLimits | null): Against {
	const protectedM = pack?.protectedDropHeightM ?? null;
	if (protectedM === null) return against("not-comparable", pack === null ? "no-pack" : "no-height");
	const band = event.freeFallDropBandM;
	// The whole parcel falls, wherever the recorder sits in it.
	if (band !== null) return compared(band, protectedM, true, "fall");
	if (place === "in-cushion" || place === "not-known") return against("not-comparable", `drop-${place}`);
	if (event.peakDoubt === "phone") return against("not-comparable", "drop-phone");
	// Of a pulse between the samples the area is not known either, to neither side.
	if (event.peakDoubt === "few-samples" || event.peakDoubt === "slow-sampling")
		return against("not-comparable", "drop-slow");
	const { restitution0, restitution1 } = event.equivalentDropHeightM;
	const whole = event.peakDoubt === null;
	return compared([restitution1, restitution0], protectedM, whole, "equivalent");
}

function compared(
	[low, high]: readonly [number, number],
	protectedM: number,
	whole: boolean,
	basis: "fall" | "equivalent",
): Against {
	// Millimetres: no recorder tells a drop more finely.
	const values = { lowM: millimetres(low), highM: millimetres(high), protectedM: millimetres(protectedM) };
	if (low > protectedM) return against("above", `${basis}-above`, values);
	if (whole && high <= protectedM) return against("below", `${basis}-below`, values);
	return against("not-decided", `${basis}-open`, values);
}

function millimetres(metres: number): number {
	return Math.round(metres * 1000) / 1000;
}

function against(verdict: Against["verdict"], key: string, values?: Record<string, number>): Against {
	return { verdict, why: sentence(`recording.${key}`, values) };
}
